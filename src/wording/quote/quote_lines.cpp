#include "quote/quote_lines.hpp"

#include "money_words.hpp"
#include "quote/quote_words.hpp"

namespace shaftcut {

std::string title_of(const Quote& quote, const Wording& w)
{
    const NamedValue number{"number", quote.number};
    return quote.customer.empty() ? w("quote {number}", {number}) : w("quote {number} for {customer}", {number, {"customer", quote.customer}});
}

std::string quantity_of(const QuoteLine& line, const Currency& currency, const Wording& w)
{
    const NamedValue count{"count", decimal_text(line.quantity)}, each{"each", line.each ? bare_amount(*line.each, currency) : ""};
    switch (line.unit) {
    case QuoteUnit::piece: return line.each ? w("{count} at {each}", {count, each}) : count.value.text();
    case QuoteUnit::minute: return line.each ? w("{count} min at {each} an hour", {count, each}) : w("{count} min", {count});
    case QuoteUnit::metre: return line.each ? w("{count} m at {each} a metre", {count, each}) : w("{count} m", {count});
    case QuoteUnit::flat: break;
    }
    return {};
}

std::string amount_of(const QuoteLine& line, const Currency& currency, const Wording& w)
{
    if (!line.amount) return w("not priced");
    if (line.up_to) return w("{least} to {most}", {{"least", bare_amount(*line.amount, currency)}, {"most", bare_amount(*line.up_to, currency)}});
    if (line.each == Money()) return w("free of charge");
    return bare_amount(*line.amount, currency);
}

std::string line_said(const QuoteLine& line, const Currency& currency, const Wording& w)
{
    const NamedValue what{"what", say(line.what, w)};
    if (line.missing) return w("{what}: {why}", {what, {"why", say_not_priced(line, w)}});
    const std::string quantity = line.up_to ? "" : quantity_of(line, currency, w);
    return quantity.empty() ? what.value.text() : w("{what} ({quantity})", {what, {"quantity", quantity}});
}

std::string net_said(const Quote& quote, const Wording& w) { return w("{net} without tax", {{"net", say(quote.totals->net, quote.currency, w)}}); }

std::string tax_said(const TaxSum& sum, const Quote& quote, const Wording& w)
{
    const NamedValue amount{"amount", say(sum.amount, quote.currency, w)}, name{"name", quote.tax_name}, rate{"rate", say(sum.rate.percent, w)},
        base{"base", say(sum.base, quote.currency, w)};
    if (sum.rate.note.empty()) return w("{amount} {name}, {rate} of {base}", {amount, name, rate, base});
    return w("{amount} {name}, {rate} of {base}: {note}", {amount, name, rate, base, {"note", sum.rate.note}});
}

std::string total_said(const Quote& quote, const Wording& w)
{
    const NamedValue total{"total", say(quote.totals->total, quote.currency, w)};
    if (quote.total_up_to) return w("{total} to {most} with tax", {total, {"most", say(*quote.total_up_to, quote.currency, w)}});
    return w("{total} with tax", {total});
}

std::string deposit_said(const Quote& quote, const Wording& w) { return w("{deposit} due on order", {{"deposit", say(quote.totals->deposit.value(), quote.currency, w)}}); }

std::string no_total(const Wording& w) { return w("none, for something is not priced"); }

std::string said_with_price(const Alternative& one, const Currency& currency, const Wording& w)
{
    const NamedValue what{"what", say(one, w)};
    if (!one.totals) return w("{what}: not priced", {what});
    const NamedValue total{"total", say(one.totals->total, currency, w)}, cheapest{"cheapest", one.cheapest}, soonest{"soonest", one.soonest};
    if (!one.lead_days) return w("{what}: {total}", {what, total});
    if (*one.lead_days == 0) return w("{what}: {total}, without waiting for parts{cheapest:|; the cheapest}{soonest:|; the soonest}", {what, total, cheapest, soonest});
    return w("{what}: {total}, about {days} working days after the order{cheapest:|; the cheapest}{soonest:|; the soonest}", {what, total, {"days", *one.lead_days}, cheapest, soonest});
}

std::string valid_said(const Quote& quote, const Wording& w)
{
    if (!quote.dates.valid_until.empty()) return w("valid until {day}", {{"day", day_in_words(quote.dates.valid_until, w)}});
    if (quote.valid_days) return w("valid for {days} days from its date, which neither the job nor --issued states", {{"days", *quote.valid_days}});
    return {};
}

std::string not_offered(const std::string& order, const Wording& w) { return w("order {order} is not offered: it is refused or held; build says why", {{"order", order}}); }

std::string firm_not_stated(const Firm& firm, const Wording& w)
{
    std::vector<std::string> missing;
    if (firm.name.empty()) missing.emplace_back("name");
    if (firm.address.empty()) missing.emplace_back("address");
    if (firm.phone.empty()) missing.emplace_back("phone");
    if (firm.mail.empty()) missing.emplace_back("mail");
    if (firm.tax_number.empty()) missing.emplace_back("tax-number");
    if (firm.register_number.empty()) missing.emplace_back("register-number");
    if (missing.empty()) return {};
    return w("firm of workshop.xml does not state {what}: not printed", {{"what", w.all_of(missing)}});
}

std::string instead_name(const Wording& w) { return w("instead"); }
std::string total_name(const Wording& w) { return w("total"); }
std::string note_name(const Wording& w) { return w("note"); }

}  // namespace shaftcut
