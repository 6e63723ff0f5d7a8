#include "quote_sheet/quote_sheet.hpp"

#include <memory>

#include "quote_sheet/quote_sheet_parts.hpp"

namespace shaftcut {
namespace {

using namespace quote_sheet;

constexpr double below_title = 2;

Sheets drawn(const Fonts& fonts, const Quote& quote, Paper paper, Spacing spacing, const Wording& w)
{
    Sheets sheets(fonts, std::make_shared<const QuoteTitle>(quote, w), paper, below_title);
    draw_band(sheets, quote, w);
    const bool refused = kind_of(quote) == Kind::refused;
    sheets.flow(refused ? refusal_blocks(quote, spacing, w) : work_blocks(quote, spacing, w));
    if (refused) draw_alternatives(sheets, quote, spacing, w);
    draw_lines(sheets, quote, spacing, w);
    if (!refused) draw_alternatives(sheets, quote, spacing, w);
    sheets.flow(condition_blocks(quote, spacing, w));
    draw_acceptance(sheets, quote, w);
    return sheets;
}

}  // namespace

std::vector<Page> draw_quote_sheet(const Quote& quote, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    const Sheets usual = drawn(fonts, quote, paper, Spacing::usual, w);
    if (usual.count() == 1) return usual.finished();
    const Sheets close = drawn(fonts, quote, paper, Spacing::close, w);
    return close.count() < usual.count() ? close.finished() : usual.finished();
}

DocumentInfo quote_sheet_info(const Quote& quote, const Wording& w)
{
    return document_info(document_title(quote.number, w), quote.firm.name, document_subject(w), quote.dates.date);
}

}  // namespace shaftcut
