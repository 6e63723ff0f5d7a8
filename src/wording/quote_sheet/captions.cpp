// Captions of a quote, and what stands in its table of lines.
#include <array>

#include "money_words.hpp"
#include "quote/quote_words.hpp"
#include "quote_sheet/quote_sheet_words.hpp"

namespace shaftcut::quote_sheet {
namespace {

constexpr std::array captions{
    "Quote", "Number", "Date", "Valid until", "For",
    "What will be done", "Why this shaft is not cut", "What would serve instead", "What it comes to", "What was done is billed", "What it would come to", "What else would serve",
    "When and how", "Order",
    "Work and parts", "Count", "Each", "not priced", "free of charge", "Net, without tax", "without tax",
    "CHEAPEST", "SOONEST", "price still open", "time not known yet",
    "Name", "Date", "Signature", "or by telephone", "Taken by"};
static_assert(captions.size() == static_cast<std::size_t>(Caption::taken_by) + 1);

}  // namespace

std::string say(Caption caption, const Wording& w) { return w(captions[static_cast<std::size_t>(caption)]); }

std::string document_title(const std::string& number, const Wording& w) { return w("Quote {number}", {{"number", number}}); }
std::string document_subject(const Wording& w) { return w("What a job comes to, for the customer"); }

std::vector<std::string> firm_lines(const Firm& firm, const Wording& w)
{
    std::vector<std::string> lines;
    if (!firm.address.empty()) lines.push_back(firm.address);
    if (!firm.phone.empty() && !firm.mail.empty()) lines.push_back(w("Telephone {phone}, {mail}", {{"phone", firm.phone}, {"mail", firm.mail}}));
    else if (!firm.phone.empty()) lines.push_back(w("Telephone {phone}", {{"phone", firm.phone}}));
    else if (!firm.mail.empty()) lines.push_back(firm.mail);
    if (!firm.tax_number.empty()) lines.push_back(w("Tax number {number}", {{"number", firm.tax_number}}));
    if (!firm.register_number.empty()) lines.push_back(w("Register {number}", {{"number", firm.register_number}}));
    return lines;
}

std::string customer_phone(const Quote& quote, const Wording& w)
{
    return quote.phone.empty() ? std::string() : w("Telephone {phone}", {{"phone", quote.phone}});
}

std::string amount_head(const Currency& currency, const Wording& w) { return w("Amount, {currency}", {{"currency", currency.code}}); }

std::string line_text(const LineFor& what, const Wording& w)
{
    const auto* shaft = std::get_if<ShaftSold>(&what);
    return shaft ? w("new shaft {series}", {{"series", shaft->series}}) : shaftcut::say(what, w);
}

std::string count_of(const QuoteLine& line)
{
    if (line.unit != QuoteUnit::piece || line.up_to) return {};
    return decimal_text(line.quantity);
}

std::string amount_of(const QuoteLine& line, const Currency& currency, const Wording& w)
{
    if (!line.amount) return say(Caption::not_priced, w);
    if (line.up_to) return w("{from} to {to}", {{"from", bare_amount(*line.amount, currency)}, {"to", bare_amount(*line.up_to, currency)}});
    const bool is_free = line.each && line.each->minor() == 0;
    return is_free ? say(Caption::free_of_charge, w) : bare_amount(*line.amount, currency);
}

namespace {

std::string name_of_tax(const Quote& quote, const Wording& w) { return quote.tax_name.empty() ? w("Tax") : quote.tax_name; }

}  // namespace

std::string tax_line(const Quote& quote, const TaxSum& sum, const Wording& w)
{
    const bool within = quote.stated == PricesStated::with_tax;
    const NamedValue name{"tax", name_of_tax(quote, w)}, percent{"percent", shaftcut::say(sum.rate.percent, w)}, held{"within", within},
        base{"base", bare_amount(within ? sum.base + sum.amount : sum.base, quote.currency)};
    if (sum.rate.note.empty()) return w("{tax} {percent} {within:on|in} {base}", {name, percent, held, base});
    return w("{tax} {percent} {within:on|in} {base} ({note})", {name, percent, held, base, {"note", sum.rate.note}});
}

std::string total_name(const Quote& quote, const Wording& w)
{
    if (quote.stated == PricesStated::with_tax) return w("To pay, {tax} included", {{"tax", name_of_tax(quote, w)}});
    return w("Total with {tax}", {{"tax", name_of_tax(quote, w)}});
}

std::string total(const Quote& quote, const Wording& w)
{
    if (!quote.totals) return {};
    const std::string least = shaftcut::say(quote.totals->total, quote.currency, w);
    if (!quote.total_up_to || *quote.total_up_to == quote.totals->total) return least;
    return w("{from} to {to}", {{"from", bare_amount(quote.totals->total, quote.currency)}, {"to", shaftcut::say(*quote.total_up_to, quote.currency, w)}});
}

std::string by_telephone(const Firm& firm, const Wording& w)
{
    if (firm.phone.empty()) return say(Caption::by_telephone, w);
    return w("or by telephone, {phone}", {{"phone", firm.phone}});
}

}  // namespace shaftcut::quote_sheet
