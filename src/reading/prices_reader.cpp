#include "prices_reader.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

constexpr int most_valid_days = 1'000;
constexpr std::int64_t most_minutes = 10'000;  // of one operation

std::optional<Percent> percent(const Attribute& attribute)
{
    const auto thousandths = attribute.percent();
    return thousandths ? std::optional(Percent{*thousandths}) : std::nullopt;
}

Currency read_currency(const Attribute& attribute)
{
    if (!attribute.given()) return {};
    const auto known = find_currency(attribute.value());
    if (!known) attribute.fault(WrongValue{Unfit::currency, {attribute.called(), attribute.value()}});
    return known.value_or(Currency());
}

// One item: what it is for, and what it states.
class ItemReader {
public:
    ItemReader(Element& item, const Currency& currency)
        : item_(item), currency_(currency), part_(item.optional("part")), profile_(item.optional("profile")), series_(item.optional("series")), service_(item.optional("service")),
          closed_(item.optional("closed-length")), each_(item.optional("each")), metre_(item.optional("per-metre")), from_(item.optional("from")), to_(item.optional("to")),
          lead_days_(item.optional("lead-days")), tax_(item.optional("tax")), tax_note_(item.optional("tax-note"))
    {
    }

    void read(Prices& prices)
    {
        const bool sound = is_for_one_thing() && states_one_price();
        const Price price{amount(metre_.given() ? metre_ : each_), lead_days_.whole(0, most_lead_days), own_tax()};
        const PriceRange range{amount(from_), amount(to_), price.tax};
        if (sound && from_.given() && to_.given() && range.to < range.from) to_.fault(Contradiction::price_range);
        const auto closed = closed_.positive_length();
        const std::string part = part_.stated_text().value_or(""), profile = profile_.stated_text().value_or(""), series = series_.name().value_or(""), service = service_.name().value_or("");
        if (!sound) return;
        if (part_.given()) add(prices.parts, part, price, part_);
        if (profile_.given()) add(prices.profiles, profile, price, profile_);
        if (series_.given() && closed) add(prices.shafts, ShaftAsSold{series, *closed}, price, series_);
        if (service_.given() && each_.given()) add(prices.services, service, price, service_);
        if (service_.given() && from_.given()) add(prices.ranges, service, range, service_);
    }

private:
    Money amount(const Attribute& attribute) const { return attribute.money(currency_).value_or(Money()); }

    std::optional<OwnTax> own_tax() const
    {
        const auto rate = percent(tax_);
        const std::string note = tax_note_.text().value_or("");
        if (!tax_.given() && tax_note_.given()) tax_note_.fault(Contradiction::tax_note_alone);
        return rate ? std::optional(OwnTax{*rate, note}) : std::nullopt;
    }

    bool is_for_one_thing() const
    {
        const std::array given{part_.given(), profile_.given(), series_.given(), service_.given()};
        if (std::count(given.begin(), given.end(), true) == 1 && series_.given() == closed_.given()) return true;
        item_.fault(Contradiction::item_for_one_thing);
        return false;
    }

    // By the metre for a profile, from one amount to another for a service only, each for anything else.
    bool states_one_price() const
    {
        const bool range = from_.given() || to_.given();
        const int stated = (each_.given() ? 1 : 0) + (metre_.given() ? 1 : 0) + (range ? 1 : 0);
        const bool whole = from_.given() == to_.given();
        if (stated == 1 && whole && metre_.given() == profile_.given() && (!range || service_.given())) return true;
        item_.fault(Contradiction::item_price);
        return false;
    }

    template <class Name, class T>
    void add(std::map<Name, T>& there, const Name& name, const T& price, const Attribute& at) const
    {
        if (!there.emplace(name, price).second) at.fault(SecondNamed{SecondOf::price, at.value()});
    }

    Element& item_;
    const Currency& currency_;
    Attribute part_, profile_, series_, service_, closed_, each_, metre_, from_, to_, lead_days_, tax_, tax_note_;
};

void read_operation(Element& operation, Prices& prices)
{
    const Attribute name = operation.required("name");
    const auto work = name.word<PricedWork>();
    const auto minutes = operation.required("minutes").thousandths(most_minutes);
    if (!work || !minutes) return;
    if (!prices.minutes.emplace(*work, BilledQuantity{*minutes}).second) name.fault(SecondNamed{SecondOf::operation, name.value()});
}

}  // namespace

Prices read_prices(Element& element)
{
    Prices prices;
    prices.currency = read_currency(element.required("currency"));
    const auto amount = [&](const char* name) { return element.optional(name).money(prices.currency); };
    prices.tax = percent(element.required("tax")).value_or(Percent());
    prices.tax_name = element.required("tax-name").name().value_or("");
    prices.stated = element.required("stated").word<PricesStated>().value_or(PricesStated::without_tax);
    prices.hourly_rate = amount("hourly-rate");
    prices.minimum = amount("minimum");
    prices.valid_days = element.optional("valid-days").whole(1, most_valid_days);
    prices.deposit = percent(element.optional("deposit-percent"));
    prices.deposit_from = amount("deposit-from").value_or(Money());
    prices.binding = element.optional("binding").word<Binding>().value_or(Binding::estimate);
    const Attribute coin = element.optional("cash-rounding");
    prices.cash_rounding = coin.money(prices.currency);
    if (prices.cash_rounding == Money()) coin.fault(WrongValue{Unfit::no_coin, {coin.called(), coin.value()}});
    element.each("operation", [&](Element& operation) { read_operation(operation, prices); });
    element.each("item", [&](Element& item) { ItemReader(item, prices.currency).read(prices); });
    element.each("terms", [&](Element& terms) {
        if (!prices.terms.empty()) prices.terms += ' ';
        prices.terms += terms.required("text").stated_text().value_or("");
    });
    return prices;
}

}  // namespace shaftcut
