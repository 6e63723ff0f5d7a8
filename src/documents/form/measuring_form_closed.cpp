// Where the closed length is measured, and the strokes that bring the halves together again as they were.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double first_cross_at = 15, crosses_apart = 22, boxes_at = 62, length_width = 46, tolerance_width = 28, to_dimension = 11.5;

// A length between two x with its boxes on the line.
void draw_boxed_length(Canvas& canvas, DimensionLine dimension, const Frame& left, const std::string& unit, const std::string& name, const Wording& w)
{
    const double y = dimension.y - box_height / 2;
    dimension.gap_from = left.x(boxes_at);
    dimension.gap_to = dimension.gap_from + length_width + tolerance_width;
    draw_dimension(canvas, dimension);
    draw_entry(canvas, {dimension.gap_from, y, length_width, box_height}, {1, name, unit});
    draw_entry(canvas, {dimension.gap_from + length_width, y, tolerance_width, box_height}, {1, say(TitleCaption::plus_minus, w), unit});
}

// A stroke of paint along a tube yoke.
void draw_stroke(Canvas& canvas, const Frame& frame, double inner_cross)
{
    const Point from = frame.at(inner_cross + 4.5, 0), to = frame.at(inner_cross + yoke - 0.7, 0);
    canvas.line(from, to, pen::cut_mark * 1.4);
}

// Two halves in one another, each with either joint.
void draw_pushed_together(Canvas& canvas, const Frame& left, const Frame& right, double inner_cross, bool wide, const Wording& w)
{
    const double right_yoke = left.width - inner_cross - yoke, stop = right_yoke - 7, from = inner_cross + yoke;
    for (const Frame* frame : {&left, &right}) draw_either_joint(canvas, *frame, first_cross_at, inner_cross, wide);
    canvas.box(along_axis(left, stop, right_yoke, 3.1, -3.1), pen::outline, Fill::white);
    canvas.box(along_axis(left, from, stop, 4.2, -4.2), pen::outline, Fill::white);
    for (const Frame* frame : {&left, &right}) draw_stroke(canvas, *frame, inner_cross);
    canvas.text({left.x(left.width / 2), left.axis() + 1.3}, say(ClosedCaption::together, w), lettering::strong, Align::centre);
    canvas.text({left.x(from + 2), left.axis() + 1.3}, say(ClosedCaption::tractor_end, w), lettering::note);
    canvas.text({left.x(stop - 2), left.axis() + 1.3}, say(ClosedCaption::machine_end, w), lettering::note, Align::right);
}

// From this cross of one joint to the like one of the other; `side`: -1 above the shaft, 1 below it.
void draw_closed_from(Canvas& canvas, const Frame& left, const MeasuringForm& form, double cross, double side, ClosedCaption name, const Wording& w)
{
    const double edge = left.axis() + side * (cross_radius + 0.8);
    draw_boxed_length(canvas, {left.x(cross), left.x(left.width - cross), left.axis() + side * to_dimension, edge, edge, "", 0, 0}, left, unit_word(form.units), say(name, w), w);
}

double draw_notes(Canvas& canvas, Rect room, const MeasuringForm& form, bool wide, const Wording& w)
{
    double y = room.y + 3.4;
    if (form.series && !form.series->closed_lengths.empty()) {
        y = canvas.paragraph({room.x, room.y}, room.width, closed_as_made(form.series->closed_lengths, w), lettering::note) + 3;
    }
    if (wide) {
        const Rect dashed = canvas.text({room.x, y}, say(ClosedCaption::both, w), lettering::note);
        canvas.fitted({dashed.right() + 4, y}, room.right() - dashed.right() - 4, say(ClosedCaption::dashed, w), lettering::note);
        y += 4.6;
    }
    draw_tick(canvas, {room.x, y}, say(ClosedCaption::strokes, w));
    return y + 1;
}

}  // namespace

void draw_either_joint(Canvas& canvas, const Frame& frame, double outer, double inner, bool may_be_wide)
{
    draw_joint(canvas, frame, inner, inner);
    if (!may_be_wide) return;
    // Outside the standard joint's yoke, so that nothing that is there on both kinds is struck through.
    const auto dashed = [&](Point from, Point to) { canvas.line(from, to, pen::guard, {1.1, 0.8}); };
    for (const double side : {1.0, -1.0}) {
        dashed(frame.at(outer - 4, side * 6), frame.at(inner + 4, side * 6));
        dashed(frame.at(outer - 12, side * 4), frame.at(outer - 5, side * 4));
    }
    dashed(frame.at(outer - 4, 6), frame.at(outer - 4, -6));
    dashed(frame.at(inner + 4, 6), frame.at(inner + 4, 4));
    dashed(frame.at(inner + 4, -6), frame.at(inner + 4, -4));
    dashed(frame.at(outer - 12, 4), frame.at(outer - 12, -4));
    canvas.disc(frame.at(outer, 0), cross_radius, Fill::white, pen::dimension);
    dashed(frame.at(outer - cross_radius, 0), frame.at(outer + cross_radius, 0));
    dashed(frame.at(outer, cross_radius), frame.at(outer, -cross_radius));
}

double draw_closed(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const bool wide = may_be_wide_angle(form);
    const double top = draw_heading(canvas, room, 4, say(ClosedCaption::heading, w), closed_hint(form.plus_minus, w));
    const double axis_at = to_dimension + box_height / 2 + 0.5, inner = first_cross_at + (wide ? crosses_apart : 0);
    const Frame left{room.x, room.width, top, axis_at, false}, right{room.x, room.width, top, axis_at, true};
    draw_pushed_together(canvas, left, right, inner, wide, w);
    draw_closed_from(canvas, left, form, inner, wide ? 1 : -1, wide ? ClosedCaption::inner_cross : ClosedCaption::only_cross, w);
    if (wide) draw_closed_from(canvas, left, form, first_cross_at, -1, ClosedCaption::outer_cross, w);
    const double bottom = left.axis() + (wide ? to_dimension + box_height / 2 : 7);
    return draw_notes(canvas, {room.x, bottom + 0.6, room.width, 0}, form, wide, w);
}

}  // namespace shaftcut::measuring_form
