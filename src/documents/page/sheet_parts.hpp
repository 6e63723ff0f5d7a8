// The parts of any sheet of paper that this program prints: its title, running text, tables and boxes to write in. They know no shaft.
#pragma once

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "page/canvas.hpp"
#include "shaftcut/documents/page/paper.hpp"

namespace shaftcut::sheet {

// What the title block of a sheet says.
struct Heading {
    std::string order, owner;
    std::string type;     // what the document is, in small letters: "cut sheet"
    std::string subject;  // what it is about, in strong lettering
    std::vector<std::pair<std::string, std::string>> fields;  // {"Customer: ", "..."}
    std::pair<std::string, std::string> day;   // {"Date", "2026-11-24"}
    std::pair<std::string, std::string> last;  // {"Approved", ""}; `loud` stands in its place
    std::string loud;     // what is to be done, in large letters: "BUILD 3 ALIKE"; may be empty
    std::string alarm;    // said on every sheet: "DO NOT CUT"; may be empty
    std::size_t most_lines = 3;  // of the owner, the subject and each field; the rest stands in full behind
};

// A paragraph of the running text.
enum class Lead { heading, tick, bullet, none };
// How near letters and lines are to one another: nearer on a sheet that holds much else.
enum class Spacing { usual, close };
struct Block {
    Lead lead = Lead::none;
    std::string text;
    bool strong = false;
    Spacing spacing = Spacing::usual;
};
using Blocks = std::vector<Block>;

// Between one list of blocks and the next.
inline constexpr double between_lists = 1.2;

// Puts blocks below the top of `column` from number `from` on, while they fit; a heading stays with what follows it.
struct Placed {
    std::size_t next = 0;  // the first block that did not fit
    double bottom = 0;
};
Placed place(Canvas& canvas, Rect column, const Blocks& blocks, std::size_t from = 0);
// The blocks from number `from` on, under their heading again.
Blocks remaining(const Blocks& blocks, std::size_t from);
double height_of(const Canvas& canvas, double width, const Block& block);

// Puts the texts, if there are any, under their heading behind `blocks`.
void add_list(Blocks& blocks, const std::string& heading, const std::vector<std::string>& texts, bool strong = false);
// Every caution in one paragraph, for the first sheet whatever else is on it.
Block caution_block(const std::vector<std::string>& cautions, Spacing spacing = Spacing::usual);

// Heading fields that were too long for the title block.
Blocks long_field_blocks(const Canvas& canvas, const Heading& heading);

// A box to write in: its name, and in brackets what should stand in it.
void draw_entry(Canvas& canvas, Rect box, const std::string& name, const std::string& expected);

// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_title_block(Canvas& canvas, Rect room, const Heading& heading);
double draw_short_title(Canvas& canvas, Rect room, const Heading& heading);

// Where the title block or the short title leaves room for "2 of 3", which is known last.
void draw_sheet_number(Canvas& canvas, Rect room, const Heading& heading, std::size_t number, std::size_t of);

// The sheets of one order, each with its title; the last is the one being drawn on.
class Sheets {
public:
    Sheets(const Fonts& fonts, Heading heading, Paper paper);

    Canvas& canvas() { return sheets_.back(); }
    const Heading& heading() const { return heading_; }
    Rect room() const;   // inside the margins
    double y() const { return y_; }
    void move_to(double y) { y_ = y; }
    double left_over() const;             // height down to the line that says where it continues
    std::size_t count() const { return sheets_.size(); }
    void next();                          // begins a new sheet
    void ensure(double height);           // continues on a new sheet where less is left over
    // Blocks from number `from` on, over the whole width and as many sheets as it takes. What was begun elsewhere gets its
    // heading again.
    void flow(const Blocks& blocks, std::size_t from = 0);
    std::vector<Page> finished() const;   // with their numbers

private:
    void go_on();  // next(), and says so on the sheet that it leaves

    const Fonts& fonts_;
    Heading heading_;
    PaperSize size_;
    double y_ = 0;
    double top_ = 0;  // below the title
    std::vector<Canvas> sheets_;
};

// Rows of text under column titles, over as many sheets as it takes. `widths`: of the columns, mm.
struct Table {
    std::string heading;
    std::vector<double> widths;
    std::vector<std::string> titles;
    std::vector<std::vector<std::string>> rows;
};
void draw_table(Sheets& sheets, const Table& table);

}  // namespace shaftcut::sheet
