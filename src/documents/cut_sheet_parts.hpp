// The parts of the cut sheet, each drawn by one function, and the figures as the fitter sees them.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "shaftcut/documents/canvas.hpp"
#include "shaftcut/documents/paper.hpp"
#include "shaftcut/trade/work_order.hpp"

namespace shaftcut::cut_sheet {

// One of the four tubes, named by the end that it is on.
struct TubeView {
    int number = 0;  // 1, 2: the tractor half's guard and tube; 3, 4: the implement half's
    End end = End::tractor;
    Tube tube = Tube::inner;
    bool guard = false;
    std::optional<Length> before;  // as measured, or worked out from the closed length
    bool measured = false;
    bool used = true;              // a guard that is damaged or missing is not
    std::optional<Length> cut;     // nothing when refused
    std::optional<Length> kept;    // nothing when refused or not known

    bool comes_off() const { return cut && *cut > Length(); }
    std::string name() const;  // "TRACTOR HALF · GUARD"
};
TubeView tube_view(const WorkOrder& order, End end, bool guard);
std::vector<TubeView> tube_views(const WorkOrder& order);  // by number, those that are used

std::string half_name(End end);               // "TRACTOR HALF"
std::string cross_name(Reference reference);  // "outer cross"

// "94 mm", "3-11/16 in".
std::string printed(const WorkOrder& order, Length length, Rounded as = Rounded::measured);
// In inches the millimetres that stand beside: "93.7 mm"; empty on paper in millimetres.
std::string beside(const WorkOrder& order, Length length, Rounded as = Rounded::measured);
// Both: "3-11/16 in (93.7 mm)".
std::string printed_with_both(const WorkOrder& order, Length length, Rounded as = Rounded::measured);

// "closing clearance".
std::string spoken(CheckId id);

// What the closed length is on the paper: the new one, or of a shaft that stays as it is the measured one.
inline Rounded closed_rounded(const WorkOrder& order) { return order.verdict == Verdict::cut ? Rounded::closed_after : Rounded::measured; }

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
// `type` as in Heading.
Heading heading_of(const WorkOrder& order, const std::string& type);
// Customer, machine, tractors, with what the job says of each.
std::vector<std::pair<std::string, std::string>> heading_fields(const WorkOrder& order);
// "30 kW".
std::string power_text(std::int64_t watts);

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

// How what is confirmed first stands on the first sheet: each in its own words, or, where many leave no room for them, as names in cells
// with the words behind.
enum class ConfirmForm { rows, cells };
// Both 0 high where nothing is confirmed.
double confirmations_height(const Canvas& canvas, double width, const WorkOrder& order, ConfirmForm form);
double draw_confirmations(Canvas& canvas, Rect room, const WorkOrder& order, ConfirmForm form);
// "implement half, cross to tube's end".
std::string confirmed_name(const WorkOrder& order, Confirmed what);
Blocks confirmation_blocks(const WorkOrder& order);  // the words of the cells

Blocks step_blocks(const WorkOrder& order);
Blocks warning_blocks(const WorkOrder& order);  // checks that warn
Blocks remark_blocks(const WorkOrder& order);   // checks that were not made, and notes
// Why the job is refused, and what would serve.
Blocks refusal_blocks(const WorkOrder& order);
// Heading fields that were too long for the title block.
Blocks long_field_blocks(const Canvas& canvas, const Heading& heading);

// A box to write in: its name, and in brackets what should stand in it.
void draw_entry(Canvas& canvas, Rect box, const std::string& name, const std::string& expected);

// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_title_block(Canvas& canvas, Rect room, const Heading& heading);
double draw_short_title(Canvas& canvas, Rect room, const Heading& heading);
// Whether each of the first sheet's positions is said with the place where the job says that it was measured.
enum class PositionWords { with_place, alone };
double draw_verdict(Canvas& canvas, Rect room, const WorkOrder& order, PositionWords positions = PositionWords::with_place);
double draw_half(Canvas& canvas, Rect room, const WorkOrder& order, End end);
double draw_overlaps(Canvas& canvas, Rect room, const WorkOrder& order);
double draw_sign_off(Canvas& canvas, Rect room, const WorkOrder& order);
double sign_off_height(const WorkOrder& order);

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

// A check's value, worst case or limit, rounded as that check's lengths are: "44 mm", "12.5°", "—" where there is none.
std::string check_figure(Units units, const Check& check, const std::optional<std::int64_t>& thousandths);

// Rows of text under column titles, over as many sheets as it takes. `widths`: of the columns, mm.
struct Table {
    std::string heading;
    std::vector<double> widths;
    std::vector<std::string> titles;
    std::vector<std::vector<std::string>> rows;
};
void draw_table(Sheets& sheets, const Table& table);

void draw_checks(Sheets& sheets, const WorkOrder& order);
void draw_stated(Sheets& sheets, const WorkOrder& order);
void draw_readings(Sheets& sheets, const WorkOrder& order);
void draw_limits(Sheets& sheets, const WorkOrder& order);

}  // namespace shaftcut::cut_sheet
