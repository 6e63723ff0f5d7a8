#include "terminal/quote_terminal.hpp"

#include "checks/check_words.hpp"
#include "money_words.hpp"
#include "quote/quote_lines.hpp"
#include "quote/quote_words.hpp"
#include "terminal/terminal_lines.hpp"

namespace shaftcut {
namespace {

using namespace terminal;

constexpr std::size_t amount_wide = 12;

const char* code_of(QuoteVerdict verdict)
{
    switch (verdict) {
    case QuoteVerdict::complete: return "1;32";
    case QuoteVerdict::estimate:
    case QuoteVerdict::incomplete: return "1;33";
    case QuoteVerdict::refused: break;
    }
    return "1;31";
}

std::string row(const std::string& name, const std::string& text) { return wrapped(padded(name, amount_wide), text); }

std::string totals_rows(const Quote& quote, const Wording& w)
{
    if (!quote.totals) return quote.lines.empty() ? "" : row(total_name(w), no_total(w));
    std::string text = row(total_name(w), net_said(quote, w));
    for (const TaxSum& sum : quote.totals->tax) text += row("", tax_said(sum, quote, w));
    text += row("", total_said(quote, w));
    if (quote.totals->deposit) text += row("", deposit_said(quote, w));
    return text;
}

std::string notes_rows(const Quote& quote, const Wording& w)
{
    std::string text;
    for (const QuotedWork& work : quote.work)
        if (work.made_to_order && (work.held || work.verdict == Verdict::refused)) text += row(note_name(w), not_offered(work.order, w));
    for (const std::string& note : {valid_said(quote, w), firm_not_stated(quote.firm, w)})
        if (!note.empty()) text += row(note_name(w), note);
    return text;
}

}  // namespace

std::string quote_text(const Quote& quote, Colour colour, const Wording& w)
{
    std::string text = order_and_verdict(title_of(quote, w), painted(say(quote.verdict, w), code_of(quote.verdict), colour), w) + "\n";
    for (const QuoteLine& line : quote.lines) text += row(amount_of(line, quote.currency, w), line_said(line, quote.currency, w));
    text += totals_rows(quote, w);
    for (const Alternative& one : quote.alternatives) text += row(instead_name(w), said_with_price(one, quote.currency, w));
    if (quote.verdict == QuoteVerdict::refused && quote.alternatives.empty()) text += row(instead_name(w), no_alternative(w));
    return text + notes_rows(quote, w);
}

}  // namespace shaftcut
