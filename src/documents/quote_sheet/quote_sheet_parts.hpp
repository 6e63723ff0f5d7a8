// The parts of a quote on paper. Each function draws below what stands already on the last sheet, and on further ones where there is no room.
#pragma once

#include "page/sheet_parts.hpp"
#include "quote_sheet/quote_sheet_words.hpp"
#include "shaftcut/trade/quote/quote.hpp"

namespace shaftcut::quote_sheet {

using sheet::Block;
using sheet::Blocks;
using sheet::Lead;
using sheet::Sheets;
using sheet::Spacing;

// Firm, number, date and customer on the first sheet; on the next ones number and sheet.
class QuoteTitle : public sheet::Title {
public:
    QuoteTitle(const Quote& quote, const Wording& w) : quote_(quote), w_(w), words_(w) {}
    double draw_first(Canvas& canvas, Rect room) const override;
    double draw_next(Canvas& canvas, Rect room) const override;
    void draw_number(Canvas& canvas, Rect room, bool first, std::size_t number, std::size_t of) const override;
    const SheetWords& words() const override { return words_; }

private:
    double draw_firm(Canvas& canvas, Rect cell) const;
    double draw_numbers(Canvas& canvas, Rect cell) const;

    const Quote& quote_;
    const Wording& w_;
    SheetWords words_;
};

// The kind of paper, loudly, and its total beside it where there is one.
void draw_band(Sheets& sheets, const Quote& quote, const Wording& w);

Blocks work_blocks(const Quote& quote, Spacing spacing, const Wording& w);
Blocks refusal_blocks(const Quote& quote, Spacing spacing, const Wording& w);
Blocks condition_blocks(const Quote& quote, Spacing spacing, const Wording& w);

// The lines and their totals.
void draw_lines(Sheets& sheets, const Quote& quote, Spacing spacing, const Wording& w);

// What is offered instead or besides, side by side, each with a box to tick where it can be ordered.
void draw_alternatives(Sheets& sheets, const Quote& quote, Spacing spacing, const Wording& w);
// Whether there is something to choose among.
bool is_choice(const Quote& quote);

// Name, day and signature; nothing where nothing can be ordered.
void draw_acceptance(Sheets& sheets, const Quote& quote, const Wording& w);

}  // namespace shaftcut::quote_sheet
