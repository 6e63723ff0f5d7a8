// The parts of the saw sheet, and the sheets that they run over.
#pragma once

#include "page/canvas.hpp"
#include "page/sheet_parts.hpp"
#include "saw_sheet/saw_sheet_words.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut::saw_sheet {

using sheet::Block;
using sheet::Blocks;
using sheet::Lead;
using saw_sheet_words::Caption;

inline Wording wording_of(const SawOrder& order) { return Wording(order.units); }

using sheet::Sheets;

// The title of a plan's sheets, or of what is not planned.
class PlanTitle : public sheet::Title {
public:
    // `owner` and `settings`, which are the blade's and the trims, may be empty.
    PlanTitle(const Wording& w, std::string name, std::string owner, std::string settings) : words_(w), name_(std::move(name)), owner_(std::move(owner)), settings_(std::move(settings)) {}
    double draw_first(Canvas& canvas, Rect room) const override;
    double draw_next(Canvas& canvas, Rect room) const override;
    void draw_number(Canvas& canvas, Rect room, bool first, std::size_t number, std::size_t of) const override;
    const SheetWords& words() const override { return words_; }

private:
    SheetWords words_;
    std::string name_, owner_, settings_;
};
// The sheets under it, `before` others in one file.
Sheets sheets_under(PlanTitle title, const Fonts& fonts, Paper paper, std::size_t before);

// Everything of one plan.
Sheets sheets_of(const Fonts& fonts, const SawOrder& order, Paper paper, std::size_t before);

void draw_bars_to_fetch(Sheets& sheets, const SawOrder& order);
Blocks total_blocks(const SawOrder& order);
Blocks reading_blocks(const SawOrder& order);  // how to read the sheet, and the cautions

// A bar as it stands on the sheets: `number` is of the first of the bars alike, counted through all sheets.
struct NumberedBar {
    const BarLayout& bar;
    std::int64_t number = 1;
};
void draw_bar(Sheets& sheets, const SawOrder& order, const NumberedBar& bar);

// The picture of one bar, to the scale in which the longest bar of the plan is as wide as `room`.
struct BarPicture {
    const SawOrder& order;
    const BarLayout& bar;
    Rect room;      // its height is not used
    double scale;   // mm on paper of 1 mm
    // Whether length, label and stop of every piece have room in it.
    bool holds_all_figures(const Canvas& canvas) const;
    // `with_table`: the pieces are numbered, and the table holds the figures. Returns the y below.
    double draw(Canvas& canvas, bool with_table) const;
};

void draw_piece_table(Sheets& sheets, const SawOrder& order, const NumberedBar& bar);
double height_of_table_start(const Canvas& canvas, double width, const SawOrder& order, const BarLayout& bar);

}  // namespace shaftcut::saw_sheet
