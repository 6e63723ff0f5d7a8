#include "shaftcut/documents/cut_sheet.hpp"

#include "geometry_parts.hpp"

namespace shaftcut {
namespace {

using namespace cut_sheet;

constexpr double column_gap = 5, continued_line = 5;

// A column on sheet 1 and the blocks in it: where its text is interrupted it says so.
class Column {
public:
    // `follows`: what else is on the sheets behind, said at the foot; empty where the foot may be used.
    Column(Sheets& sheets, Rect room, std::string follows) : sheets_(sheets), room_(room), follows_(std::move(follows)) {}

    // Puts blocks below what is there; keeps what does not fit, and everything after it.
    void add(const Blocks& blocks)
    {
        const double height = follows_.empty() && fits(blocks) ? room_.height : text_height();
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
            const Blocks more = remaining(rest.blocks, rest.from);
            blocks.insert(blocks.end(), more.begin(), more.end());
        }
        rest_.clear();
        return blocks;
    }

    // The picture of the overlaps, or a note that it is still to be drawn.
    void add_overlaps(const WorkOrder& order)
    {
        Canvas trial = sheets_.canvas();
        const double height = draw_overlaps(trial, room_, order) + 1 - room_.y;
        overlaps_left_ = interrupted() || height > text_height();
        if (overlaps_left_) return;
        draw_overlaps(sheets_.canvas(), room_, order);
        room_.y += height;
        room_.height -= height;
    }

    // At its foot, where the text goes on, and what else is there.
    void say_what_follows()
    {
        const bool continued = interrupted() || overlaps_left_;
        if (!continued && follows_.empty()) return;
        const std::string what = !continued ? follows_ : "continued" + (follows_.empty() ? "" : ", " + follows_);
        sheets_.canvas().begin(Part::paragraph);
        sheets_.canvas().text({room_.x, room_.bottom() - 1.2}, "▼ " + what + " on sheet " + std::to_string(sheets_.count() + 1), lettering::strong);
    }

    // What did not fit, on the sheets that follow.
    void draw_rest(const WorkOrder& order)
    {
        if (overlaps_left_) sheets_.move_to(draw_overlaps(sheets_.canvas(), {sheets_.room().x, sheets_.y(), room_.width, 0}, order) + 2);
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
    std::string follows_;
    std::vector<Rest> rest_;
    bool overlaps_left_ = false;
};

void draw_first_sheet(Sheets& sheets, const WorkOrder& order)
{
    const Rect room = sheets.room();
    Canvas& canvas = sheets.canvas();
    const auto below = [&](double gap) { return Rect{room.x, sheets.y() + gap, room.width, 0}; };
    sheets.move_to(draw_verdict(canvas, below(0), order));
    for (const End end : both_ends) sheets.move_to(draw_half(canvas, below(2), order, end));
    sheets.move_to(sheets.y() + 2.5);
}

// Cautions and the fields to sign, across the foot of sheet 1; gives what is left between the drawing and them.
Rect draw_foot(Sheets& sheets, const WorkOrder& order)
{
    const Rect room = sheets.room();
    const double sign_off = room.bottom() - sign_off_height(order);
    const Block cautions = caution_block(order.cautions);
    const double caution_height = height_of(sheets.canvas(), room.width, cautions) + between_lists;
    place(sheets.canvas(), {room.x, sign_off - caution_height, room.width, caution_height}, {cautions});
    draw_sign_off(sheets.canvas(), {room.x, sign_off, room.width, 0}, order);
    return {room.x, sheets.y(), room.width, sign_off - caution_height - sheets.y()};
}

void draw_refusal(Sheets& sheets, const WorkOrder& order)
{
    Column column(sheets, draw_foot(sheets, order), "all checks");
    column.add(refusal_blocks(order));
    column.add(warning_blocks(order));
    column.add(remark_blocks(order));
    column.say_what_follows();
    sheets.next();
    column.draw_rest(order);
}

void draw_work(Sheets& sheets, const WorkOrder& order)
{
    const Rect between = draw_foot(sheets, order);
    const double width = (between.width - column_gap) / 2;
    Column left(sheets, {between.x, between.y, width, between.height}, "");
    left.add(step_blocks(order));
    Column right(sheets, {between.x + width + column_gap, between.y, width, between.height}, "all checks");
    // Work that has no room goes on beside, not on another sheet.
    right.add(left.take_rest());
    right.add(warning_blocks(order));
    right.add_overlaps(order);
    right.add(remark_blocks(order));
    left.say_what_follows();
    right.say_what_follows();
    sheets.next();
    left.draw_rest(order);
    right.draw_rest(order);
}

}  // namespace

std::vector<Page> draw_cut_sheet(const WorkOrder& order, Paper paper, const FontFiles& files)
{
    const Fonts fonts(files);
    const Heading heading = heading_of(order, "cut sheet");
    Sheets sheets(fonts, heading, paper);
    draw_first_sheet(sheets, order);
    if (order.verdict == Verdict::refused) draw_refusal(sheets, order);
    else draw_work(sheets, order);
    draw_checks(sheets, order);
    draw_extremes(sheets, order);
    draw_machines(sheets, order);
    draw_readings(sheets, order);
    sheets.flow(long_field_blocks(sheets.canvas(), heading));
    draw_limits(sheets, order);
    return sheets.finished();
}

DocumentInfo cut_sheet_info(const WorkOrder& order)
{
    return document_info("Cut sheet " + order.order, order.owner, order.shaft_title, order.date);
}

}  // namespace shaftcut
