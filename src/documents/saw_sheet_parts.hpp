// The parts of the saw sheet, and the sheets that they run over.
#pragma once

#include "cut_sheet_parts.hpp"
#include "shaftcut/documents/canvas.hpp"
#include "shaftcut/trade/saw_order.hpp"

namespace shaftcut::saw_sheet {

using cut_sheet::Block;
using cut_sheet::Blocks;
using cut_sheet::Lead;

class Sheets {
public:
    Sheets(const Fonts& fonts, const SawOrder& order, PaperSize size);

    Canvas& canvas() { return sheets_.back(); }
    Rect room() const;                   // inside the margins
    double y() const { return y_; }
    void move_to(double y) { y_ = y; }
    std::size_t count() const { return sheets_.size(); }
    void ensure(double height);          // continues on a new sheet where less is left over
    void flow(const Blocks& blocks);     // over the whole width and as many sheets as it takes
    std::vector<Page> finished() const;  // with their numbers

private:
    double left_over() const;
    void next();

    const Fonts& fonts_;
    const SawOrder& order_;
    PaperSize size_;
    double y_ = 0;
    std::vector<Canvas> sheets_;
};

// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_title(Canvas& canvas, Rect room, const SawOrder& order);
double draw_short_title(Canvas& canvas, Rect room, const SawOrder& order);
// Where both titles leave room for "2 of 3", which is known last.
void draw_sheet_number(Canvas& canvas, Rect room, std::size_t number, std::size_t of);

void draw_bars_to_fetch(Sheets& sheets, const SawOrder& order);
Blocks total_blocks(const SawOrder& order);
Blocks reading_blocks(const SawOrder& order);  // how to read the sheet, and the cautions

// A bar as it stands on the sheets: `number` is of the first of the bars alike, counted through all sheets.
struct NumberedBar {
    const BarLayout& bar;
    std::int64_t number = 1;
};
void draw_bar(Sheets& sheets, const SawOrder& order, const NumberedBar& bar);

// "Bars 4–6: 3 alike of 6000 mm".
std::string bar_title(const SawOrder& order, const NumberedBar& bar);
std::string leftover_words(const SawOrder& order, const BarLayout& bar);

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
