#include "shaftcut/documents/cut_sheet.hpp"

#include "cut_sheet_parts.hpp"

namespace shaftcut {
namespace {

using namespace cut_sheet;

constexpr double column_gap = 5, continued_line = 5;

struct Size {
    double width, height;
};

Size size_of(Paper paper)
{
    return paper == Paper::a4 ? Size{210, 297} : Size{215.9, 279.4};
}

// What goes below the drawing, side by side.
struct Columns {
    Blocks left, right;
};

Columns columns_of(const WorkOrder& order)
{
    if (order.verdict != Verdict::refused) return {step_blocks(order), finding_blocks(order)};
    return {refusal_blocks(order), finding_blocks(order)};
}

// Where a column's text is interrupted it says so there.
std::size_t draw_column(Sheets& sheets, Rect column, const Blocks& blocks)
{
    const Placed placed = place(sheets.canvas(), {column.x, column.y, column.width, column.height - continued_line}, blocks);
    if (placed.next < blocks.size()) {
        sheets.canvas().begin(Part::paragraph);
        sheets.canvas().text({column.x, column.bottom() - 1.2}, "▼ continued on sheet " + std::to_string(sheets.count() + 1), lettering::strong);
    }
    return placed.next;
}

void draw_first_sheet(Sheets& sheets, const WorkOrder& order)
{
    const Rect room = sheets.room();
    Canvas& canvas = sheets.canvas();
    const auto below = [&](double gap) { return Rect{room.x, sheets.y() + gap, room.width, 0}; };
    sheets.move_to(draw_verdict(canvas, below(0), order));
    for (const End end : both_ends) sheets.move_to(draw_half(canvas, below(2), order, end));
    sheets.move_to(sheets.y() + 2.5);
}

double overlaps_height(Sheets& sheets, Rect room, const WorkOrder& order)
{
    Canvas trial = sheets.canvas();
    return draw_overlaps(trial, room, order) - room.y + 1;
}

void draw_columns(Sheets& sheets, const WorkOrder& order)
{
    const Columns columns = columns_of(order);
    const Rect room = sheets.room();
    const double sign_off = room.bottom() - continued_line - sign_off_height(order);
    const double width = (room.width - column_gap) / 2;
    const Rect left{room.x, sheets.y(), width, sign_off - sheets.y()};
    Rect right{room.x + width + column_gap, sheets.y(), width, sign_off - sheets.y()};
    const double picture = overlaps_height(sheets, right, order);
    const bool picture_fits = picture + continued_line <= right.height;
    if (picture_fits) {
        draw_overlaps(sheets.canvas(), right, order);
        right.y += picture;
        right.height -= picture;
    }
    const std::size_t from_left = draw_column(sheets, left, columns.left);
    const std::size_t from_right = draw_column(sheets, right, columns.right);
    draw_sign_off(sheets.canvas(), {room.x, sign_off, room.width, 0}, order);
    sheets.next("all checks");
    if (!picture_fits) sheets.move_to(draw_overlaps(sheets.canvas(), {room.x, sheets.y(), width, 0}, order) + 2);
    sheets.flow(columns.left, from_left);
    sheets.flow(columns.right, from_right);
}

}  // namespace

std::vector<Page> draw_cut_sheet(const WorkOrder& order, Paper paper)
{
    const Fonts fonts;
    const Size size = size_of(paper);
    Sheets sheets(fonts, order, size.width, size.height);
    draw_first_sheet(sheets, order);
    draw_columns(sheets, order);
    draw_checks(sheets, order);
    draw_readings(sheets, order);
    sheets.flow(long_field_blocks(sheets.canvas(), order));
    draw_limits(sheets, order);
    return sheets.finished();
}

DocumentInfo cut_sheet_info(const WorkOrder& order)
{
    return {"Cut sheet " + order.order, order.owner.empty() ? "shaftcut" : order.owner, order.shaft_title, "en",
            order.date.empty() ? "2000-01-01" : order.date};
}

}  // namespace shaftcut
