// The parts of any sheet of paper that this program prints: its title, running text, tables and boxes to write in. They know no shaft.
#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "page/canvas.hpp"
#include "sheet_words.hpp"
#include "shaftcut/documents/page/paper.hpp"

namespace shaftcut::sheet {

// What the title block of a sheet says.
struct Heading {
    SheetWords words;     // of the sheet itself
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
    bool continued = false;  // a heading that stands again
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
Blocks remaining(const Blocks& blocks, std::size_t from, const SheetWords& words);
double height_of(const Canvas& canvas, double width, const Block& block);

// Puts the texts, if there are any, under their heading behind `blocks`.
void add_list(Blocks& blocks, const std::string& heading, const std::vector<std::string>& texts, bool strong = false);
// Every caution in one paragraph, for the first sheet whatever else is on it.
Block caution_block(const std::vector<std::string>& cautions, Spacing spacing = Spacing::usual);

// A box to write in: its name, and in brackets what should stand in it.
void draw_entry(Canvas& canvas, Rect box, const std::string& name, const std::string& expected);

// Heading fields that were too long for the title block.
Blocks long_field_blocks(const Canvas& canvas, const Heading& heading);

// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_title_block(Canvas& canvas, Rect room, const Heading& heading);
double draw_short_title(Canvas& canvas, Rect room, const Heading& heading);

// Where the title block or the short title leaves room for "2 of 3", which is known last.
void draw_sheet_number(Canvas& canvas, Rect room, const Heading& heading, bool first, std::size_t number, std::size_t of);

// What stands at the top of every sheet. Each function draws within the width of `room` from its top down; those that return a y, the y below.
class Title {
public:
    virtual ~Title() = default;
    virtual double draw_first(Canvas& canvas, Rect room) const = 0;
    virtual double draw_next(Canvas& canvas, Rect room) const = 0;
    // "2 of 3", which is known last, where the title of the first sheet or that of the next ones leaves room for it.
    virtual void draw_number(Canvas& canvas, Rect room, bool first, std::size_t number, std::size_t of) const = 0;
    virtual const SheetWords& words() const = 0;  // of every sheet, whatever it is about
    // What it had no room for, to be said in full behind; empty where it has all.
    virtual Blocks in_full(const Canvas&) const { return {}; }
};

// The title block of an order's sheets.
class OrderTitle : public Title {
public:
    explicit OrderTitle(Heading heading) : heading_(std::move(heading)) {}
    double draw_first(Canvas& canvas, Rect room) const override { return draw_title_block(canvas, room, heading_); }
    double draw_next(Canvas& canvas, Rect room) const override { return draw_short_title(canvas, room, heading_); }
    void draw_number(Canvas& canvas, Rect room, bool first, std::size_t number, std::size_t of) const override { draw_sheet_number(canvas, room, heading_, first, number, of); }
    const SheetWords& words() const override { return heading_.words; }
    Blocks in_full(const Canvas& canvas) const override { return long_field_blocks(canvas, heading_); }

private:
    Heading heading_;
};

// Sheets that follow one another, each with its title; the last is the one being drawn on. They may stand behind others in one file, and are
// numbered through it.
class Sheets {
public:
    Sheets(const Fonts& fonts, const Heading& heading, Paper paper) : Sheets(fonts, std::make_shared<const OrderTitle>(heading), paper, below_title_block) {}
    // `below`: between the first title and what follows, mm. `before`: sheets of the file that stand before these.
    Sheets(const Fonts& fonts, std::shared_ptr<const Title> title, Paper paper, double below, std::size_t before = 0);

    Canvas& canvas() { return sheets_.back(); }
    const SheetWords& words() const { return title_->words(); }
    Blocks in_full() const { return title_->in_full(sheets_.back()); }  // what of its title had no room
    Rect room() const;   // inside the margins
    double y() const { return y_; }
    void move_to(double y) { y_ = y; }
    double left_over() const;             // height down to the line that says where it continues
    std::size_t count() const { return before_ + sheets_.size(); }  // the number of the sheet being drawn on
    void next();                          // begins a new sheet
    void ensure(double height);           // continues on a new sheet where less is left over
    void ensure_last(double height);      // likewise of what is the last, which needs no line that says where it continues
    // Blocks from number `from` on, over the whole width and as many sheets as it takes. What was begun elsewhere gets its
    // heading again.
    void flow(const Blocks& blocks, std::size_t from = 0);
    std::vector<Page> finished() const { return finished(count()); }  // with their numbers
    std::vector<Page> finished(std::size_t of) const;                 // of so many sheets of the file

private:
    void go_on();  // next(), and says so on the sheet that it leaves

    static constexpr double below_title_block = 2.5;

    const Fonts& fonts_;
    std::shared_ptr<const Title> title_;
    PaperSize size_;
    std::size_t before_;
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
    bool is_last = false;  // nothing follows it: its last row may stand where a sheet says that it goes on
};
void draw_table(Sheets& sheets, const Table& table);
// What the first column needs, so that no name is broken, up to `most`.
double names_width(const Canvas& canvas, const Table& table, double most);

}  // namespace shaftcut::sheet
