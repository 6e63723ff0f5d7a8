#include "quote_book/quote_book_words.hpp"

#include <array>

#include "money_words.hpp"

namespace shaftcut::quote_book_words {
namespace {

constexpr std::array captions{
    "&L&9Amounts follow the sheet Desk&R&9Page &P of &N", "&L&9Quote", "&L&9Quote&R&9For the desk only",
    "For the desk only. Change pale cells: every amount and total follows. Amounts are rounded once a line, half away from zero; taxes once a rate.",
    "Inputs", "Hourly rate", "Of all work that is counted in minutes.", "Discount, %", "Discount, an amount", "One of both, or none; taken off each tax rate's sum, an amount off the usual one's.",
    "Minimum charge", "What lacks to it is a line of its own, before the discount.", "Deposit, % of the total", "Deposit from a total of", "Due on order where parts are ordered or made; rounded down.",
    "Lines", "Nothing is billed.", "Totals", "Net, without tax", "Total with tax", "Total with tax, at most", "Deposit, due on order", "Deposit due on order", "Lines without a price", "With these inputs", "complete",
    "ONE DISCOUNT ONLY", "TOO GREAT", "NOT PRICED", "free of charge", "Discount",
    "What else is offered", "Offer", "With tax", "Working days", "not known", "CHEAPEST", "SOONEST", "From", "At most",
    "A number, 0 to 100000.", "An amount, 0 to 1000000000.", "A percentage, 0 to 100."};
static_assert(captions.size() == static_cast<std::size_t>(Caption::percent_range) + 1);

}  // namespace

std::string say(Caption caption, const Wording& w) { return w(captions[static_cast<std::size_t>(caption)]); }

std::string head(Column column, bool estimate, const Currency& currency, const Wording& w)
{
    const NamedValue code{"currency", currency.code};
    switch (column) {
    case Column::number: return w("No.");
    case Column::what: return w("Work and parts");
    case Column::quantity: return w("Quantity");
    case Column::unit: return w("Unit");
    case Column::price: return w("Price of one (work: of an hour), {currency}", {code});
    case Column::amount: return w("Amount, {currency}", {code});
    case Column::tax: return w("Tax, %");
    case Column::beside: return estimate ? w("At most, {currency}", {code}) : w("Remark");
    case Column::minor: return w("Amount, in the currency's least unit");
    case Column::rate: return w("Number of its tax rate");
    case Column::base: return w("Sum of a tax rate, in the least unit");
    case Column::most: return w("At most, in the least unit");
    case Column::most_tax: break;
    }
    return w("Tax at most, in the least unit");
}

std::string desk_title(const std::string& number, const Wording& w) { return w("Quote {number}: the desk's own", {{"number", number}}); }

std::string unit_name(QuoteUnit unit, const Wording& w)
{
    if (unit == QuoteUnit::flat) return {};
    return w("{unit:pieces|min|m}", {{"unit", unit}});
}

std::string rate_name(const Quote& quote, const OwnTax& rate, const Wording& w)
{
    const NamedValue name{"tax", quote.tax_name.empty() ? w("Tax") : quote.tax_name}, percent{"percent", shaftcut::say(rate.percent, w)};
    if (rate.note.empty()) return w("{tax} {percent}", {name, percent});
    return w("{tax} {percent} ({note})", {name, percent, {"note", rate.note}});
}

}  // namespace shaftcut::quote_book_words
