// What is confirmed before anything is sawn: each with its expected length and a box to write in, on the first sheet.
#include <algorithm>

#include "checks/check_sentences.hpp"
#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double inset = 1.8, heading_height = 6.2, foot_height = 5.2, box_height = 8.4, box_width = 27, expected_width = 38, least_row = 10;
constexpr double cell_height = 10.6;
constexpr std::size_t cells_in_a_row = 3;

double words_width(double width) { return width - expected_width - box_width - 4 * inset; }

std::string expected_text(const Confirmation& one, Units units, const Wording& w) { return expected(*one.expected, *one.plus_minus, units, w); }

double row_height(const Canvas& canvas, double width, const Confirmation& one, const Wording& w)
{
    return std::max(least_row, height_of(canvas, words_width(width), {Lead::none, say(one, w)}) + 1.6);
}

// Two squares to tick, "yes" and "no", whose left edge and middle height are these.
void draw_yes_no(Canvas& canvas, Point at, const Wording& w)
{
    constexpr double side = 5;
    for (const EntryCaption answer : {EntryCaption::yes, EntryCaption::no}) {
        canvas.box({at.x, at.y - side / 2, side, side}, pen::guard);
        at.x = canvas.text({at.x + side + 1.2, at.y + 1.2}, say(answer, w), lettering::note).right() + 4;
    }
}

void draw_expected(Canvas& canvas, Rect room, const Confirmation& one, const Wording& w)
{
    const double middle = room.y + room.height / 2;
    if (w.units() == Units::mm) {
        canvas.fitted({room.right(), middle + 1.6}, room.width, expected_text(one, Units::mm, w), lettering::name, Align::right);
        return;
    }
    canvas.fitted({room.right(), middle - 0.4}, room.width, expected_text(one, Units::in, w), lettering::name, Align::right);
    canvas.fitted({room.right(), middle + 3.6}, room.width, "(" + expected_text(one, Units::mm, w) + ")", lettering::note, Align::right);
}

double draw_row(Canvas& canvas, Rect room, const Confirmation& one, const Wording& w)
{
    const double height = row_height(canvas, room.width, one, w);
    canvas.line({room.x, room.y}, {room.right(), room.y}, pen::axis);
    canvas.paragraph({room.x + inset, room.y + 0.9}, words_width(room.width), say(one, w), lettering::note);
    const double box_x = room.right() - inset - box_width, middle = room.y + height / 2;
    if (one.is_look()) {
        draw_yes_no(canvas, {box_x, middle}, w);
    } else {
        draw_expected(canvas, {box_x - inset - expected_width, room.y, expected_width, height}, one, w);
        canvas.box({box_x, middle - box_height / 2, box_width, box_height}, pen::outline);
    }
    return room.y + height;
}

void draw_cell(Canvas& canvas, Rect cell, const WorkOrder& order, const Confirmation& one, const Wording& w)
{
    canvas.box(cell, pen::guard);
    canvas.fitted({cell.x + 1.5, cell.y + 3.9}, cell.width - 3, confirmed_name(order, one.what, w), lettering::note);
    if (one.is_look()) draw_yes_no(canvas, {cell.x + 1.5, cell.bottom() - 3.5}, w);
    else canvas.fitted({cell.right() - 1.5, cell.bottom() - 1.8}, cell.width - 3, "(" + expected_text(one, w.units(), w) + ")", lettering::note, Align::right);
}

std::size_t cell_rows(const WorkOrder& order) { return (order.confirm.size() + cells_in_a_row - 1) / cells_in_a_row; }

double draw_cells(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    const double width = room.width / static_cast<double>(cells_in_a_row);
    for (std::size_t i = 0; i < order.confirm.size(); ++i)
        draw_cell(canvas, {room.x + static_cast<double>(i % cells_in_a_row) * width, room.y + static_cast<double>(i / cells_in_a_row) * cell_height, width, cell_height}, order,
                  order.confirm[i], w);
    return room.y + static_cast<double>(cell_rows(order)) * cell_height;
}

}  // namespace

double confirmations_height(const Canvas& canvas, double width, const WorkOrder& order, ConfirmForm form, const Wording& w)
{
    if (order.confirm.empty()) return 0;
    double height = heading_height + foot_height;
    if (form == ConfirmForm::cells) return height + static_cast<double>(cell_rows(order)) * cell_height;
    for (const Confirmation& one : order.confirm) height += row_height(canvas, width, one, w);
    return height;
}

double draw_confirmations(Canvas& canvas, Rect room, const WorkOrder& order, ConfirmForm form, const Wording& w)
{
    if (order.confirm.empty()) return room.y;
    canvas.begin(Part::heading);
    canvas.fitted({room.x + inset, room.y + 4.7}, room.width - 2 * inset, confirm_heading(order.verdict, w), lettering::name);
    canvas.begin(Part::table);
    double y = room.y + heading_height;
    if (form == ConfirmForm::cells) y = draw_cells(canvas, {room.x, y, room.width, 0}, order, w);
    else
        for (const Confirmation& one : order.confirm) y = draw_row(canvas, {room.x, y, room.width, 0}, one, w);
    canvas.line({room.x, y}, {room.right(), y}, pen::axis);
    canvas.fitted({room.x + inset, y + 3.7}, room.width - 2 * inset, confirm_outside(order.verdict, w), lettering::strong);
    y += foot_height;
    canvas.box({room.x, room.y, room.width, y - room.y}, pen::cut_mark);
    return y;
}

Blocks confirmation_blocks(const WorkOrder& order, const Wording& w)
{
    Blocks blocks;
    std::vector<std::string> texts;
    for (const Confirmation& one : order.confirm) texts.push_back(named(confirmed_name(order, one.what, w), say(one, w), w));
    add_list(blocks, say(ListHeading::confirmed_and_why, w), texts);
    return blocks;
}

}  // namespace shaftcut::cut_sheet
