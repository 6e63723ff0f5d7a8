#include "cut_sheet/cut_sheet.hpp"

#include <array>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "drawing/geometry_parts.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"
#include "shaft_title_words.hpp"

namespace shaftcut {
namespace {

using namespace cut_sheet;

constexpr double column_gap = 5, continued_line = 5;

// A column on sheet 1 and the blocks in it: where its text is interrupted it says so.
class Column {
public:
    // `checks_follow`: at its foot it says that all checks are on the sheets behind; else the foot may be used.
    Column(Sheets& sheets, Rect room, bool checks_follow, const Wording& w) : sheets_(sheets), room_(room), checks_follow_(checks_follow), w_(w) {}

    // Puts blocks below what is there; keeps what does not fit, and everything after it.
    void add(const Blocks& blocks)
    {
        const double height = !checks_follow_ && fits(blocks) ? room_.height : text_height();
        const Placed placed = interrupted() ? Placed{0, room_.y} : place(sheets_.canvas(), {room_.x, room_.y, room_.width, height}, blocks);
        const double used = placed.bottom - room_.y + (placed.bottom > room_.y ? between_lists : 0);
        room_.y += used;
        room_.height -= used;
        if (placed.next < blocks.size()) rest_.push_back({blocks, placed.next});
    }

    // What did not fit so far, to be put elsewhere.
    Blocks take_rest()
    {
        Blocks blocks;
        for (const Rest& rest : rest_) {
            const Blocks more = remaining(rest.blocks, rest.from, sheets_.words());
            blocks.insert(blocks.end(), more.begin(), more.end());
        }
        rest_.clear();
        return blocks;
    }

    // The picture of the overlaps, or a note that it is still to be drawn.
    void add_overlaps(const WorkOrder& order)
    {
        Canvas trial = sheets_.canvas();
        const double height = draw_overlaps(trial, room_, order, w_) + 1 - room_.y;
        overlaps_left_ = interrupted() || height > text_height();
        if (overlaps_left_) return;
        draw_overlaps(sheets_.canvas(), room_, order, w_);
        room_.y += height;
        room_.height -= height;
    }

    // At its foot, where the text goes on, and what else is there.
    void say_what_follows()
    {
        const bool continued = interrupted() || overlaps_left_;
        if (!continued && !checks_follow_) return;
        sheets_.canvas().begin(Part::paragraph);
        sheets_.canvas().text({room_.x, room_.bottom() - 1.2}, follows(continued, checks_follow_, sheets_.count() + 1, w_), lettering::strong);
    }

    // What did not fit, on the sheets that follow.
    void draw_rest(const WorkOrder& order)
    {
        if (overlaps_left_) sheets_.move_to(draw_overlaps(sheets_.canvas(), {sheets_.room().x, sheets_.y(), room_.width, 0}, order, w_) + 2);
        for (const Rest& rest : rest_) sheets_.flow(rest.blocks, rest.from);
    }

private:
    struct Rest {
        Blocks blocks;
        std::size_t from;
    };

    bool interrupted() const { return !rest_.empty(); }
    double text_height() const { return room_.height - continued_line; }
    bool fits(const Blocks& blocks) const
    {
        Canvas trial = sheets_.canvas();
        return place(trial, room_, blocks).next == blocks.size();
    }

    Sheets& sheets_;
    Rect room_;
    bool checks_follow_;
    const Wording& w_;
    std::vector<Rest> rest_;
    bool overlaps_left_ = false;
};

// What sheet 1 has room for.
struct Front {
    std::size_t title_lines;  // of a field in the title block
    ConfirmForm form;
    bool signs;               // the boxes of what was measured and who signs are on it, else behind the steps
    PositionWords positions = PositionWords::with_place;
};
// From the one that has all on it to the one that leaves most room.
constexpr std::array fronts{Front{3, ConfirmForm::rows, true}, Front{3, ConfirmForm::rows, false}, Front{3, ConfirmForm::cells, false},
                            Front{2, ConfirmForm::cells, false}, Front{1, ConfirmForm::cells, false, PositionWords::alone}};

// Sheet 1 while it is drawn, and which front it has.
struct Begun {
    Sheets sheets;
    Front front;
};

void draw_head(Sheets& sheets, const WorkOrder& order, PositionWords positions, const Wording& w)
{
    const Rect room = sheets.room();
    Canvas& canvas = sheets.canvas();
    const auto below = [&](double gap) { return Rect{room.x, sheets.y() + gap, room.width, 0}; };
    sheets.move_to(draw_verdict(canvas, below(0), order, w, positions));
    for (const End end : both_ends) sheets.move_to(draw_half(canvas, below(2), order, end, w));
    sheets.move_to(sheets.y() + 2.5);
}

double caution_height(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    return height_of(sheets.canvas(), sheets.room().width, caution_block(say_all(order.cautions, w))) + between_lists;
}

bool has_room(Sheets& sheets, const WorkOrder& order, const Front& front, const Wording& w)
{
    const double below = sheets.room().bottom() - sheets.y() - caution_height(sheets, order, w) - (front.signs ? sign_off_height(order) : 0);
    return confirmations_height(sheets.canvas(), sheets.room().width, order, front.form, w) + continued_line <= below;
}

// Down to what is confirmed, in the first front that has room for it.
Begun begin(const Fonts& fonts, Heading heading, const WorkOrder& order, Paper paper, const Wording& w)
{
    for (std::size_t i = 0;; ++i) {
        const Front& front = fronts.at(i);
        heading.most_lines = front.title_lines;
        Begun begun{Sheets(fonts, heading, paper), front};
        draw_head(begun.sheets, order, front.positions, w);
        if (i + 1 < fronts.size() && !has_room(begun.sheets, order, front, w)) continue;
        const Rect room = begun.sheets.room();
        const double below = draw_confirmations(begun.sheets.canvas(), {room.x, begun.sheets.y(), room.width, 0}, order, front.form, w);
        begun.sheets.move_to(order.confirm.empty() ? below : below + 1.5);
        return begun;
    }
}

// Cautions and the fields to sign, across the foot of sheet 1; gives what is left between the drawing and them.
Rect draw_foot(Begun& begun, const WorkOrder& order, const Wording& w)
{
    Sheets& sheets = begun.sheets;
    const Rect room = sheets.room();
    const double sign_off = room.bottom() - (begun.front.signs ? sign_off_height(order) : 0);
    const double cautions = sign_off - caution_height(sheets, order, w);
    place(sheets.canvas(), {room.x, cautions, room.width, sign_off - cautions}, {caution_block(say_all(order.cautions, w))});
    if (begun.front.signs) draw_sign_off(sheets.canvas(), {room.x, sign_off, room.width, 0}, order, w);
    return {room.x, sheets.y(), room.width, cautions - sheets.y()};
}

// On the sheet of the last steps, where sheet 1 has no room.
void sign_behind(Begun& begun, const WorkOrder& order, const Wording& w)
{
    if (begun.front.signs) return;
    Sheets& sheets = begun.sheets;
    sheets.ensure(sign_off_height(order) + 3);
    sheets.move_to(draw_sign_off(sheets.canvas(), {sheets.room().x, sheets.y() + 2, sheets.room().width, 0}, order, w) + 3);
}

void draw_refusal(Begun& begun, const WorkOrder& order, const Wording& w)
{
    Sheets& sheets = begun.sheets;
    Column column(sheets, draw_foot(begun, order, w), true, w);
    column.add(refusal_blocks(order, w));
    column.add(warning_blocks(order, w));
    column.add(remark_blocks(order, w));
    column.say_what_follows();
    sheets.next();
    column.draw_rest(order);
    sign_behind(begun, order, w);
}

void draw_work(Begun& begun, const WorkOrder& order, const Wording& w)
{
    Sheets& sheets = begun.sheets;
    const Rect between = draw_foot(begun, order, w);
    const double width = (between.width - column_gap) / 2;
    Column left(sheets, {between.x, between.y, width, between.height}, false, w);
    left.add(step_blocks(order, w));
    Column right(sheets, {between.x + width + column_gap, between.y, width, between.height}, true, w);
    // Work that has no room goes on beside, not on another sheet; but before the boxes that it asks to fill in.
    if (begun.front.signs) right.add(left.take_rest());
    right.add(warning_blocks(order, w));
    if (begun.front.form == ConfirmForm::cells) right.add(confirmation_blocks(order, w));
    right.add_overlaps(order);
    right.add(remark_blocks(order, w));
    left.say_what_follows();
    right.say_what_follows();
    sheets.next();
    left.draw_rest(order);
    sign_behind(begun, order, w);
    right.draw_rest(order);
}

}  // namespace

std::vector<Page> draw_cut_sheet(const WorkOrder& order, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    Begun begun = begin(fonts, heading_of(order, TitleCaption::type, w), order, paper, w);
    Sheets& sheets = begun.sheets;
    if (order.verdict == Verdict::refused) draw_refusal(begun, order, w);
    else draw_work(begun, order, w);
    draw_checks(sheets, order, w);
    geometry::draw_extremes(sheets, order, w);
    geometry::draw_machines(sheets, order, w);
    draw_readings(sheets, order, w);
    draw_stated(sheets, order, w);
    sheets.flow(sheets.in_full());
    draw_limits(sheets, order, w);
    return sheets.finished();
}

DocumentInfo cut_sheet_info(const WorkOrder& order, const Wording& w)
{
    return document_info(document_title(order.order, w), order.owner, say(order.shaft_title, w), order.date);
}

}  // namespace shaftcut
