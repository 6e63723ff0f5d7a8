#include "json/quote_json.hpp"

#include "json/json_parts.hpp"
#include "quote/quote_words.hpp"

namespace shaftcut {
namespace {

Json stated(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json amount(const std::optional<Money>& money, const Currency& currency) { return money ? Json(decimal_text(*money, currency)) : Json(nullptr); }

Json of_thousandths(std::int64_t thousandths) { return static_cast<double>(thousandths) / 1000; }

Json json_of(const QuoteLine& line, const Currency& currency, const Wording& w)
{
    return {{"text", say(line.what, w)},
            {"quantity", of_thousandths(line.quantity.thousandths)},
            {"unit", to_word(line.unit)},
            {"each", amount(line.each, currency)},
            {"per", line.per},
            {"amount", amount(line.amount, currency)},
            {"up_to", amount(line.up_to, currency)},
            {"tax_percent", of_thousandths(line.tax.percent.thousandths)},
            {"lead_days", line.lead_days ? Json(*line.lead_days) : Json(nullptr)},
            {"missing", line.missing ? Json(say_not_priced(line, w)) : Json(nullptr)}};
}

Json lines_of(const Quote& quote, const Wording& w)
{
    Json list = Json::array();
    for (const QuoteLine& line : quote.lines) list.push_back(json_of(line, quote.currency, w));
    return list;
}

Json tax_of(const Quote& quote)
{
    if (!quote.totals) return nullptr;
    Json list = Json::array();
    for (const TaxSum& sum : quote.totals->tax)
        list.push_back({{"percent", of_thousandths(sum.rate.percent.thousandths)}, {"base", amount(sum.base, quote.currency)}, {"amount", amount(sum.amount, quote.currency)}, {"note", stated(sum.rate.note)}});
    return list;
}

Json missing_of(const std::vector<QuoteLine>& lines, const Wording& w)
{
    Json list = Json::array();
    for (const QuoteLine& line : lines)
        if (line.missing) list.push_back(say_not_priced(line, w));
    return list;
}

Json json_of(const Alternative& one, const Currency& currency, const Wording& w)
{
    return {{"what", say(one, w)},
            {"kind", to_word(one.kind)},
            {"verdict", one.is_cut ? "cut" : "as-is"},
            {"series", stated(one.series)},
            {"closed_mm", number(one.closed)},
            {"total", amount(one.totals ? std::optional(one.totals->total) : std::nullopt, currency)},
            {"lead_days", one.lead_days ? Json(*one.lead_days) : Json(nullptr)},
            {"cheapest", one.cheapest},
            {"soonest", one.soonest},
            {"missing", missing_of(one.lines, w)}};
}

Json alternatives_of(const Quote& quote, const Wording& w)
{
    Json list = Json::array();
    for (const Alternative& one : quote.alternatives) list.push_back(json_of(one, quote.currency, w));
    return list;
}

// "held", "refused", "build", "cut", "fits"; null before it was measured.
Json verdict_of(const QuotedWork& work)
{
    if (work.held) return to_word(BuildVerdict::held);
    if (work.verdict) return to_word(*work.verdict);
    return work.made_to_order ? Json(to_word(BuildVerdict::build)) : Json(nullptr);
}

Json orders_of(const Quote& quote)
{
    Json list = Json::array();
    for (const QuotedWork& work : quote.work) list.push_back({{"order", work.order}, {"count", work.count}, {"verdict", verdict_of(work)}});
    return list;
}

}  // namespace

std::string json_of(const Quote& quote, JsonLayout layout, const Wording& w)
{
    const Currency& currency = quote.currency;
    const auto of_totals = [&](auto&& member) { return quote.totals ? amount(member(*quote.totals), currency) : Json(nullptr); };
    return dumped({{"quote", quote.number},
                   {"issue", nullptr},
                   {"verdict", to_word(quote.verdict)},
                   {"currency", currency.code},
                   {"prices_stated", to_word(quote.stated)},
                   {"date", stated(quote.dates.date)},
                   {"customer", stated(quote.customer)},
                   {"orders", orders_of(quote)},
                   {"lines", lines_of(quote, w)},
                   {"net", of_totals([](const QuoteTotals& totals) { return std::optional(totals.net); })},
                   {"tax", tax_of(quote)},
                   {"total", of_totals([](const QuoteTotals& totals) { return std::optional(totals.total); })},
                   {"total_up_to", amount(quote.total_up_to, currency)},
                   {"deposit", of_totals([](const QuoteTotals& totals) { return totals.deposit; })},
                   {"in_cash", of_totals([](const QuoteTotals& totals) { return totals.in_cash; })},
                   {"valid_until", stated(quote.dates.valid_until)},
                   {"lead_days", quote.lead_days ? Json(*quote.lead_days) : Json(nullptr)},
                   {"alternatives", alternatives_of(quote, w)}},
                  layout);
}

}  // namespace shaftcut
