#include "parse.hpp"

#include <charconv>
#include <numeric>
#include <optional>

namespace shaftcut {
namespace {

__extension__ typedef __int128 Wide;  // products of lengths and scales pass 64 bits

constexpr std::int64_t most_length_um = 100'000'000;  // 100 m: longer than any shaft or stock bar
constexpr std::int64_t um_in_mm = 1000;
constexpr std::int64_t um_in_inch = 25'400;

// A decimal number as digits: value = units / 10^places. Places past the twelfth are read and dropped: they are
// under a millionth of a micrometre and cannot move a rounding that goes half away from zero.
struct Decimal {
    Wide units = 0;
    Wide scale = 1;
};

std::string_view take_digits(std::string_view& text)
{
    std::size_t count = 0;
    while (count < text.size() && text[count] >= '0' && text[count] <= '9') ++count;
    const std::string_view digits = text.substr(0, count);
    text.remove_prefix(count);
    return digits;
}

// Whole numbers that matter here have at most 9 digits; longer ones saturate, to be refused as too large.
std::int64_t whole(std::string_view digits)
{
    std::int64_t value = 0;
    for (const char c : digits) value = value > 99'999'999 ? 999'999'999 : value * 10 + (c - '0');
    return value;
}

std::optional<Decimal> take_decimal(std::string_view& text)
{
    const std::string_view before = take_digits(text);
    if (before.empty()) return std::nullopt;
    Decimal number{whole(before), 1};
    if (text.empty() || text.front() != '.') return number;
    text.remove_prefix(1);
    const std::string_view after = take_digits(text);
    if (after.empty()) return std::nullopt;
    for (const char c : after.substr(0, 12)) {
        number.units = number.units * 10 + (c - '0');
        number.scale *= 10;
    }
    return number;
}

std::int64_t rounded(Wide numerator, Wide denominator)
{
    return static_cast<std::int64_t>((2 * numerator + denominator) / (2 * denominator));
}

struct Amount {
    Wide numerator = 0;
    Wide denominator = 1;
    bool fraction = false;
};

// "3/16" after an optional "29-". The caller has seen that a '/' follows somewhere.
std::optional<Amount> take_mixed_number(std::string_view& text)
{
    std::string_view digits = take_digits(text);
    std::int64_t integer = 0;
    bool has_integer = false;
    if (!digits.empty() && !text.empty() && text.front() == '-') {
        integer = whole(digits);
        has_integer = true;
        text.remove_prefix(1);
        digits = take_digits(text);
    }
    if (digits.empty() || text.empty() || text.front() != '/') return std::nullopt;
    text.remove_prefix(1);
    const std::int64_t top = whole(digits);
    const std::string_view bottom_digits = take_digits(text);
    const std::int64_t bottom = whole(bottom_digits);
    if (bottom_digits.empty() || bottom == 0 || bottom > 1000) return std::nullopt;
    if (has_integer && top >= bottom) return std::nullopt;
    return Amount{static_cast<Wide>(integer) * bottom + top, bottom, true};
}

std::optional<Amount> take_amount(std::string_view& text)
{
    if (text.find('/') != std::string_view::npos) return take_mixed_number(text);
    const auto number = take_decimal(text);
    if (!number) return std::nullopt;
    return Amount{number->units, number->scale, false};
}

// Nothing left means the file's own unit; one space before the unit is optional.
std::optional<Units> take_unit(std::string_view text, Units units)
{
    if (text.empty()) return units;
    if (text.front() == ' ') text.remove_prefix(1);
    if (text == "mm") return Units::mm;
    if (text == "in") return Units::in;
    return std::nullopt;
}

bool take_minus(std::string_view& text)
{
    if (text.empty() || text.front() != '-') return false;
    text.remove_prefix(1);
    return true;
}

ParseFault fault(NotRead why, std::string_view text, std::int64_t least = 0, std::int64_t most = 0) { return {why, std::string(text), least, most}; }

}  // namespace

Parsed<Length> parse_length(std::string_view text, Units units, Sign sign)
{
    std::string_view rest = text;
    const bool minus = take_minus(rest);
    if (minus && sign == Sign::none) return fault(NotRead::below_zero, text);
    const auto amount = take_amount(rest);
    if (!amount) return fault(NotRead::length, text);
    const auto unit = take_unit(rest, units);
    if (!unit) {
        if (rest.find_first_not_of(" ") != std::string_view::npos && rest.find_first_of("0123456789.,'") == std::string_view::npos)
            return fault(NotRead::unknown_unit, text);
        return fault(NotRead::length, text);
    }
    if (amount->fraction && *unit == Units::mm)
        return fault(NotRead::fraction_of_millimetre, text);
    const std::int64_t factor = *unit == Units::mm ? um_in_mm : um_in_inch;
    const std::int64_t um = rounded(amount->numerator * factor, amount->denominator);
    if (um > most_length_um) return fault(NotRead::over_100_metres, text);
    return Length::micrometres(minus ? -um : um);
}

Parsed<Angle> parse_angle(std::string_view text, Sign sign)
{
    std::string_view rest = text;
    const bool minus = take_minus(rest);
    const auto number = take_decimal(rest);
    if (!number || !rest.empty() || (minus && sign == Sign::none))
        return fault(NotRead::angle, text);
    const std::int64_t mdeg = rounded(number->units * 1000, number->scale);
    if (number->units > 180 * number->scale) return fault(NotRead::over_180_degrees, text);
    return Angle::millidegrees(minus ? -mdeg : mdeg);
}

Parsed<Fraction> parse_fraction(std::string_view text)
{
    std::string_view rest = text;
    const auto amount = take_amount(rest);
    const bool mixed = text.find('-') != std::string_view::npos;
    if (!amount || mixed || !rest.empty() || amount->denominator > 1'000'000) return fault(NotRead::fraction, text);
    if (amount->numerator == 0 || amount->numerator > amount->denominator) return fault(NotRead::fraction, text);
    const auto top = static_cast<std::int64_t>(amount->numerator);
    const auto bottom = static_cast<std::int64_t>(amount->denominator);
    const std::int64_t common = std::gcd(top, bottom);
    return Fraction{top / common, bottom / common};
}

Parsed<std::int64_t> parse_thousandths(std::string_view text, std::int64_t most)
{
    std::string_view rest = text;
    const auto number = take_decimal(rest);
    if (!number || !rest.empty() || number->units > static_cast<Wide>(most) * number->scale)
        return fault(NotRead::number, text, 0, most);
    return rounded(number->units * 1000, number->scale);
}

Parsed<std::int64_t> parse_percent(std::string_view text)
{
    constexpr int thousand = 1000, most = 100;
    std::string_view rest = text;
    const auto number = take_decimal(rest);
    if (!number || !rest.empty() || number->scale > thousand || number->units > most * number->scale) return fault(NotRead::number_of_3_decimals, text, 0, most);
    return static_cast<std::int64_t>(number->units * thousand / number->scale);
}

Parsed<std::int64_t> parse_millionths(std::string_view text, std::int64_t most)
{
    constexpr int million = 1'000'000;
    std::string_view rest = text;
    const auto number = take_decimal(rest);
    if (!number || !rest.empty() || number->scale > million || number->units > static_cast<Wide>(most) * number->scale)
        return fault(NotRead::number_of_6_decimals, text, 0, most);
    return static_cast<std::int64_t>(number->units * million / number->scale);
}

Parsed<Money> parse_money(std::string_view text, const Currency& currency)
{
    std::int64_t minor_units = 1;
    for (int i = 0; i < currency.digits; ++i) minor_units *= 10;
    std::string_view rest = text;
    const auto number = take_decimal(rest);
    if (!number || !rest.empty() || number->scale > minor_units || number->units > static_cast<Wide>(most_price) * number->scale)
        return fault(NotRead::money, text, currency.digits, most_price);
    return Money::minor_units(static_cast<std::int64_t>(number->units * minor_units / number->scale));
}

Parsed<std::int64_t> parse_whole(std::string_view text, std::int64_t least, std::int64_t most)
{
    std::string_view rest = text;
    const std::string_view digits = take_digits(rest);
    std::int64_t value = 0;
    const bool fits = std::from_chars(digits.data(), digits.data() + digits.size(), value).ec == std::errc();
    if (!fits || !rest.empty() || value < least || value > most)
        return fault(NotRead::whole_number, text, least, most);
    return value;
}

}  // namespace shaftcut
