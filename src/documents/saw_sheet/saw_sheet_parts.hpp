// The parts of the saw sheet, and the sheets that they run over.
#pragma once

#include "page/canvas.hpp"
#include "page/sheet_parts.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut::saw_sheet {

using sheet::Block;
using sheet::Blocks;
using sheet::Lead;

// What the title of a sheet says.
struct Title {
    std::string name;      // "Saw plan rack"
    std::string owner;     // may be empty
    std::string settings;  // the blade's and the trims; may be empty
};
Title title_of(const SawOrder& order);

// The sheets of one plan, or of what is not planned. They may stand behind others in one file, and are numbered through it.
class Sheets {
public:
    Sheets(const Fonts& fonts, Title title, PaperSize size, std::size_t before = 0);

    Canvas& canvas() { return sheets_.back(); }
    Rect room() const;                   // inside the margins
    double y() const { return y_; }
    void move_to(double y) { y_ = y; }
    std::size_t count() const { return before_ + sheets_.size(); }  // the number of the sheet being drawn on
    void ensure(double height);          // continues on a new sheet where less is left over
    void flow(const Blocks& blocks);     // over the whole width and as many sheets as it takes
    std::vector<Page> finished(std::size_t of) const;  // with their numbers of all sheets of the file

private:
    double left_over() const;
    void next();

    const Fonts& fonts_;
    Title title_;
    PaperSize size_;
    std::size_t before_;
    double y_ = 0;
    std::vector<Canvas> sheets_;
};

// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_title(Canvas& canvas, Rect room, const Title& title);
double draw_short_title(Canvas& canvas, Rect room, const Title& title);
// Where both titles leave room for "2 of 3", which is known last: a plan's first sheet has the tall one.
void draw_sheet_number(Canvas& canvas, Rect room, bool first, std::size_t number, std::size_t of);

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

// Stands for the stop of a piece as long as its bar.
inline constexpr const char* use_whole = "use whole";

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
