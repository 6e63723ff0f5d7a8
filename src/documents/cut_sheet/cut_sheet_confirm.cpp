// What is confirmed before anything is sawn: each with its expected length and a box to write in, on the first sheet.
#include <algorithm>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "verdict_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

constexpr double inset = 1.8, heading_height = 6.2, foot_height = 5.2, box_height = 8.4, box_width = 27, expected_width = 38, least_row = 10;
constexpr double cell_height = 10.6;
constexpr std::size_t cells_in_a_row = 3;

double words_width(double width) { return width - expected_width - box_width - 4 * inset; }

// "690 ± 6 mm"
std::string expected_text(const Confirmation& one, Units units)
{
    return figure_of(Rounded::measured, *one.expected, units) + " ± " + figure_of_with_unit(Rounded::allowed, *one.plus_minus, units);
}

std::string half_text(const WorkOrder& order, Tube tube) { return std::string(to_word(end_of(order.shaft, tube))) + " half, "; }
std::string cross_text(const WorkOrder& order, Tube tube)
{
    return order.shaft.ends[end_of(order.shaft, tube)].joint == JointKind::wide_angle ? "inner cross" : "cross";
}

double row_height(const Canvas& canvas, double width, const Confirmation& one)
{
    return std::max(least_row, height_of(canvas, words_width(width), {Lead::none, one.says}) + 1.6);
}

// Two squares to tick, "yes" and "no", whose left edge and middle height are these.
void draw_yes_no(Canvas& canvas, Point at)
{
    constexpr double side = 5;
    for (const char* answer : {"yes", "no"}) {
        canvas.box({at.x, at.y - side / 2, side, side}, pen::guard);
        at.x = canvas.text({at.x + side + 1.2, at.y + 1.2}, answer, lettering::note).right() + 4;
    }
}

void draw_expected(Canvas& canvas, Rect room, const WorkOrder& order, const Confirmation& one)
{
    const double middle = room.y + room.height / 2;
    if (order.units == Units::mm) {
        canvas.fitted({room.right(), middle + 1.6}, room.width, expected_text(one, Units::mm), lettering::name, Align::right);
        return;
    }
    canvas.fitted({room.right(), middle - 0.4}, room.width, expected_text(one, Units::in), lettering::name, Align::right);
    canvas.fitted({room.right(), middle + 3.6}, room.width, "(" + expected_text(one, Units::mm) + ")", lettering::note, Align::right);
}

double draw_row(Canvas& canvas, Rect room, const WorkOrder& order, const Confirmation& one)
{
    const double height = row_height(canvas, room.width, one);
    canvas.line({room.x, room.y}, {room.right(), room.y}, pen::axis);
    canvas.paragraph({room.x + inset, room.y + 0.9}, words_width(room.width), one.says, lettering::note);
    const double box_x = room.right() - inset - box_width, middle = room.y + height / 2;
    if (one.is_look()) {
        draw_yes_no(canvas, {box_x, middle});
    } else {
        draw_expected(canvas, {box_x - inset - expected_width, room.y, expected_width, height}, order, one);
        canvas.box({box_x, middle - box_height / 2, box_width, box_height}, pen::outline);
    }
    return room.y + height;
}

void draw_cell(Canvas& canvas, Rect cell, const WorkOrder& order, const Confirmation& one)
{
    canvas.box(cell, pen::guard);
    canvas.fitted({cell.x + 1.5, cell.y + 3.9}, cell.width - 3, confirmed_name(order, one.what), lettering::note);
    if (one.is_look()) draw_yes_no(canvas, {cell.x + 1.5, cell.bottom() - 3.5});
    else canvas.fitted({cell.right() - 1.5, cell.bottom() - 1.8}, cell.width - 3, "(" + expected_text(one, order.units) + ")", lettering::note, Align::right);
}

std::size_t cell_rows(const WorkOrder& order) { return (order.confirm.size() + cells_in_a_row - 1) / cells_in_a_row; }

double draw_cells(Canvas& canvas, Rect room, const WorkOrder& order)
{
    const double width = room.width / static_cast<double>(cells_in_a_row);
    for (std::size_t i = 0; i < order.confirm.size(); ++i)
        draw_cell(canvas, {room.x + static_cast<double>(i % cells_in_a_row) * width, room.y + static_cast<double>(i / cells_in_a_row) * cell_height, width, cell_height}, order,
                  order.confirm[i]);
    return room.y + static_cast<double>(cell_rows(order)) * cell_height;
}

// Of what is neither measured nor right: nothing is done to the shaft by this sheet.
std::string outside_words(const WorkOrder& order)
{
    const std::string nothing = order.verdict == Verdict::cut ? "nothing is sawn" : "it is not fitted";
    return "Outside its ±, or a no: " + nothing + ". The figures go back for a new sheet.";
}

std::string heading_words(const WorkOrder& order)
{
    return std::string("Confirm before ") + (order.verdict == Verdict::cut ? "anything is sawn" : "it is fitted") + ": write in what you read";
}

}  // namespace

std::string confirmed_name(const WorkOrder& order, Confirmed what)
{
    switch (what) {
    case Confirmed::closed: return order.reading.has_wide_angle ? "closed length, " + cross_name(order.reading.reference) : "closed length";
    case Confirmed::closed_inner_cross: return "closed length, inner cross";
    case Confirmed::inner_half: return half_text(order, Tube::inner) + cross_text(order, Tube::inner) + " to tube's end";
    case Confirmed::outer_half: return half_text(order, Tube::outer) + cross_text(order, Tube::outer) + " to tube's end";
    case Confirmed::inner_shoulder: return half_text(order, Tube::inner) + cross_text(order, Tube::inner) + " to its stop";
    case Confirmed::outer_shoulder: return half_text(order, Tube::outer) + cross_text(order, Tube::outer) + " to its stop";
    case Confirmed::inner_guard: return half_text(order, Tube::inner) + "guard beside its tube";
    case Confirmed::outer_guard: return half_text(order, Tube::outer) + "guard beside its tube";
    case Confirmed::built: break;
    }
    return "the year it was built";
}

double confirmations_height(const Canvas& canvas, double width, const WorkOrder& order, ConfirmForm form)
{
    if (order.confirm.empty()) return 0;
    double height = heading_height + foot_height;
    if (form == ConfirmForm::cells) return height + static_cast<double>(cell_rows(order)) * cell_height;
    for (const Confirmation& one : order.confirm) height += row_height(canvas, width, one);
    return height;
}

double draw_confirmations(Canvas& canvas, Rect room, const WorkOrder& order, ConfirmForm form)
{
    if (order.confirm.empty()) return room.y;
    canvas.begin(Part::heading);
    canvas.fitted({room.x + inset, room.y + 4.7}, room.width - 2 * inset, heading_words(order), lettering::name);
    canvas.begin(Part::table);
    double y = room.y + heading_height;
    if (form == ConfirmForm::cells) y = draw_cells(canvas, {room.x, y, room.width, 0}, order);
    else
        for (const Confirmation& one : order.confirm) y = draw_row(canvas, {room.x, y, room.width, 0}, order, one);
    canvas.line({room.x, y}, {room.right(), y}, pen::axis);
    canvas.fitted({room.x + inset, y + 3.7}, room.width - 2 * inset, outside_words(order), lettering::strong);
    y += foot_height;
    canvas.box({room.x, room.y, room.width, y - room.y}, pen::cut_mark);
    return y;
}

Blocks confirmation_blocks(const WorkOrder& order)
{
    Blocks blocks;
    std::vector<std::string> texts;
    for (const Confirmation& one : order.confirm) texts.push_back(confirmed_name(order, one.what) + ": " + one.says);
    add_list(blocks, "What is confirmed, and why", texts);
    return blocks;
}

}  // namespace shaftcut::cut_sheet
