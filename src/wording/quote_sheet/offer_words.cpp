// How long an offer holds, what is offered side by side, and what the customer signs.
#include <algorithm>

#include "money_words.hpp"
#include "quote_sheet/quote_sheet_words.hpp"

namespace shaftcut::quote_sheet {
namespace {

constexpr std::size_t most_included = 5;

std::string validity(const Quote& quote, const Wording& w)
{
    if (!quote.dates.valid_until.empty()) return w("This paper holds until {day}.", {{"day", day_in_words(quote.dates.valid_until, w)}});
    if (!quote.valid_days) return {};
    return w("This paper holds for {days} {several:day|days} from its date.", {{"days", *quote.valid_days}, {"several", *quote.valid_days != 1}});
}

std::string lead(int days, const Wording& w)
{
    if (days == 0) return w("No part has to be ordered for it.");
    return w("Ready about {days} working {several:day|days} after your order.", {{"days", days}, {"several", days != 1}});
}

std::string deposit(const Quote& quote, Money due, const Wording& w)
{
    const NamedValue amount{"amount", shaftcut::say(due, quote.currency, w)};
    if (!quote.deposit) return w("A deposit of {amount} is due on order.", {amount});
    return w("A deposit of {amount} ({percent} of the total) is due on order.", {amount, {"percent", shaftcut::say(*quote.deposit, w)}});
}

std::size_t open_prices(const Alternative& alternative)
{
    return static_cast<std::size_t>(std::count_if(alternative.lines.begin(), alternative.lines.end(), [](const QuoteLine& line) { return !line.amount; }));
}

}  // namespace

std::vector<std::string> conditions(const Quote& quote, const Wording& w)
{
    std::vector<std::string> all;
    const auto add = [&](std::string said) {
        if (!said.empty()) all.push_back(std::move(said));
    };
    add(validity(quote, w));
    const bool done = kind_of(quote) != Kind::refused;
    if (done && quote.lead_days) add(lead(*quote.lead_days, w));
    if (done && quote.totals && quote.totals->deposit) add(deposit(quote, *quote.totals->deposit, w));
    add(quote.terms);
    return all;
}

std::string letter(std::size_t place) { return std::string(1, static_cast<char>('A' + place % 26)); }

std::string headline(const Alternative& alternative, const Wording& w)
{
    switch (alternative.kind) {
    case AlternativeKind::change_at_machine: return w("Change at the machine");
    case AlternativeKind::this_shaft: return w("{cut:This shaft as it is|This shaft, cut}", {{"cut", alternative.is_cut}});
    case AlternativeKind::new_shaft: return w("New shaft {series}", {{"series", alternative.series}});
    case AlternativeKind::made_to_order: break;
    }
    return w("Shaft {series} made to measure", {{"series", alternative.series}});
}

std::string explained(const Alternative& alternative, const Wording& w)
{
    switch (alternative.kind) {
    case AlternativeKind::change_at_machine:
        return running_text({alternative.change ? change_at_machine(*alternative.change, w) : std::string(), w("{cut:Your shaft stays as it is.|Your shaft is then cut.}", {{"cut", alternative.is_cut}})});
    case AlternativeKind::this_shaft: return w("Joints, yokes and all that is good of it stay.");
    case AlternativeKind::new_shaft: return w("{cut:It fits as it is sold.|It is cut to fit.}", {{"cut", alternative.is_cut}});
    case AlternativeKind::made_to_order: break;
    }
    return w("It is built for this machine and tractor.");
}

std::vector<std::string> included(const Alternative& alternative, const Wording& w)
{
    std::vector<std::string> parts;
    bool work = false;
    for (const QuoteLine& line : alternative.lines) {
        if (std::holds_alternative<Labour>(line.what)) work = true;
        else parts.push_back(line_text(line.what, w));
    }
    const std::size_t more = parts.size() > most_included ? parts.size() - most_included : 0;
    parts.resize(parts.size() - more);
    if (more > 0) parts.push_back(w("and {count} more {several:part|parts}", {{"count", more}, {"several", more != 1}}));
    if (work) parts.push_back(w("the work"));
    return parts;
}

std::string price(const Alternative& alternative, const Quote& quote, const Wording& w)
{
    return alternative.totals ? shaftcut::say(alternative.totals->total, quote.currency, w) : say(Caption::price_open, w);
}

std::vector<std::string> beside_price(const Alternative& alternative, const Quote& quote, const Wording& w)
{
    std::vector<std::string> all;
    if (alternative.totals) {
        const NamedValue name{"total", total_name(quote, w)}, net{"amount", shaftcut::say(alternative.totals->net, quote.currency, w)};
        all.push_back(quote.stated == PricesStated::with_tax ? name.value.text() : w("{total} (net {amount})", {name, net}));
    } else if (const std::size_t open = open_prices(alternative)) {
        all.push_back(w("{count} {several:price|prices} not stated yet", {{"count", open}, {"several", open != 1}}));
    }
    all.push_back(alternative.lead_days ? lead(*alternative.lead_days, w) : say(Caption::time_not_known, w));
    if (alternative.totals && alternative.totals->deposit) all.push_back(deposit(quote, *alternative.totals->deposit, w));
    return all;
}

std::string open_offer(const std::string& letter, const std::string& headline, const std::string& explained, const Wording& w)
{
    return w("{letter} {what}: its price is still open. {how}", {{"letter", letter}, {"what", headline}, {"how", explained}});
}

std::string acceptance(const Quote& quote, bool choose, const Wording& w)
{
    if (choose) return w("I order the ONE offer that I ticked above, on the terms above.");
    switch (kind_of(quote)) {
    case Kind::offer: return w("I order what is listed above, at this price and on the terms above.");
    case Kind::estimate: return w("I order what is listed above, on the terms above. I am asked before it comes to more.");
    case Kind::before_measuring: return w("Please measure. I order the work once I know its price.");
    case Kind::incomplete:
    case Kind::refused: break;
    }
    return {};
}

}  // namespace shaftcut::quote_sheet
