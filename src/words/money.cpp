#include "shaftcut/words/money.hpp"

#include <limits>

namespace shaftcut {
namespace {

__extension__ using Wide = __int128;

constexpr std::int64_t thousand = 1000, hundred_percent = 100 * thousand;

Money narrow(Wide minor)
{
    if (minor > std::numeric_limits<std::int64_t>::max() || minor < -std::numeric_limits<std::int64_t>::max()) throw MoneyOverflow();
    return Money::minor_units(static_cast<std::int64_t>(minor));
}

// Half away from zero; `by` is above 0.
Wide divided(Wide number, Wide by)
{
    const Wide whole = number / by, rest = number % by, size = rest < 0 ? -rest : rest;
    if (2 * size < by) return whole;
    return number < 0 ? whole - 1 : whole + 1;
}

// Those whose minor unit is not a hundredth. No price is stated in units of account with four decimals: they are left out.
constexpr std::string_view without_decimals = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";
constexpr std::string_view with_three = "BHD IQD JOD KWD LYD OMR TND";
constexpr std::string_view with_two =
    "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL "
    "GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK "
    "NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VES WST XCD YER "
    "ZAR ZMW";

bool holds(std::string_view codes, std::string_view code) { return code.size() == 3 && code.find(' ') == code.npos && codes.find(code) % 4 == 0; }

void add_codes(std::vector<std::string>& list, std::string_view codes)
{
    for (std::size_t at = 0; at < codes.size(); at += 4) list.emplace_back(codes.substr(at, 3));
}

// The digits of `count` with a point before the last `decimals` of them.
std::string with_point(std::int64_t count, int decimals)
{
    std::string digits = std::to_string(count < 0 ? -count : count);  // narrow() lets no amount through that has no opposite
    const auto places = static_cast<std::size_t>(decimals);
    if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
    if (decimals > 0) digits.insert(digits.size() - places, 1, '.');
    return (count < 0 ? "-" : "") + digits;
}

std::string without_zeros_behind(std::string text)
{
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

}  // namespace

std::optional<Currency> find_currency(std::string_view code)
{
    if (holds(with_two, code)) return Currency{std::string(code), 2};
    if (holds(without_decimals, code)) return Currency{std::string(code), 0};
    if (holds(with_three, code)) return Currency{std::string(code), 3};
    return std::nullopt;
}

std::vector<std::string> currency_codes()
{
    std::vector<std::string> codes;
    for (const std::string_view some : {with_two, without_decimals, with_three}) add_codes(codes, some);
    return codes;
}

Money Money::operator-() const { return minor_units(-minor_); }
Money operator+(Money a, Money b) { return narrow(static_cast<Wide>(a.minor_) + b.minor_); }
Money operator-(Money a, Money b) { return narrow(static_cast<Wide>(a.minor_) - b.minor_); }

Money line_amount(Money each, BilledQuantity quantity, std::int64_t per)
{
    return narrow(divided(static_cast<Wide>(each.minor()) * quantity.thousandths, static_cast<Wide>(per) * thousand));
}

Money percent_of(Percent percent, Money base) { return narrow(divided(static_cast<Wide>(base.minor()) * percent.thousandths, hundred_percent)); }

Money percent_of_rounded_down(Percent percent, Money base) { return narrow(static_cast<Wide>(base.minor()) * percent.thousandths / hundred_percent); }

Money tax_within(Percent percent, Money gross)
{
    return narrow(divided(static_cast<Wide>(gross.minor()) * percent.thousandths, static_cast<Wide>(hundred_percent) + percent.thousandths));
}

Money rounded_to(Money amount, Money step) { return narrow(divided(amount.minor(), step.minor()) * step.minor()); }

std::string decimal_text(Money amount, const Currency& currency) { return with_point(amount.minor(), currency.digits); }
std::string decimal_text(BilledQuantity quantity) { return without_zeros_behind(with_point(quantity.thousandths, 3)); }
std::string decimal_text(Percent percent) { return without_zeros_behind(with_point(percent.thousandths, 3)); }

}  // namespace shaftcut
