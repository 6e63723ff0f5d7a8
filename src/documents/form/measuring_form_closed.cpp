// Where the closed length is measured.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double box_height = 10, boxes_at = 80, length_width = 50, tolerance_width = 34, to_dimension = 12.8, names_at = 9.6;

// A length between two x with its boxes on the line, from where its gap begins.
void draw_boxed_length(Canvas& canvas, DimensionLine dimension, const std::string& unit)
{
    const double y = dimension.y - box_height / 2;
    dimension.gap_to = dimension.gap_from + length_width + tolerance_width;
    draw_dimension(canvas, dimension);
    draw_entry(canvas, {dimension.gap_from, y, length_width, box_height}, "length", unit);
    draw_entry(canvas, {dimension.gap_from + length_width, y, tolerance_width, box_height}, "plus-minus", unit);
}

// Two halves in one another.
void draw_pushed_together(Canvas& canvas, const Frame& left, const Frame& right, double inner_cross, const Wording& w)
{
    const double right_yoke = left.width - first_cross_at - yoke, stop = right_yoke - 7;
    draw_joint(canvas, left, first_cross_at, inner_cross);
    draw_joint(canvas, right, first_cross_at, first_cross_at);
    canvas.box(along_axis(left, stop, right_yoke, 3.1, -3.1), pen::outline, Fill::white);
    canvas.box(along_axis(left, inner_cross + yoke, stop, 4.2, -4.2), pen::outline, Fill::white);
    const double from = inner_cross + yoke, baseline = left.axis() + 1.3;
    canvas.text({left.x(from + 2), baseline}, say(inner_cross > first_cross_at ? ClosedCaption::wide_angle_joint : ClosedCaption::standard_joint, w), lettering::note);
    canvas.text({left.x((from + stop) / 2), baseline}, say(ClosedCaption::pushed_together, w), lettering::strong, Align::centre);
    canvas.text({left.x(stop - 2), baseline}, say(ClosedCaption::standard_joint, w), lettering::note, Align::right);
}

// From this cross of the left joint to the right one's; `side`: -1 above the shaft, 1 below it.
void draw_closed_from(Canvas& canvas, const Frame& left, const MeasuringForm& form, double cross, double side)
{
    const double edge = left.axis() + side * (cross_radius + 0.5);
    draw_boxed_length(canvas, {left.x(cross), left.x(left.width - first_cross_at), left.axis() + side * to_dimension, edge, edge, "", left.x(boxes_at), 0},
                      unit_word(form.units));
}

// From either cross, whichever the series states: a job file takes both.
void draw_references(Canvas& canvas, const Frame& left, const MeasuringForm& form)
{
    for (const Reference reference : {Reference::outer_cross, Reference::inner_cross}) {
        const bool outer = reference == Reference::outer_cross;
        const double cross = first_cross_at + (outer ? 0 : crosses_apart), side = outer ? -1 : 1;
        draw_closed_from(canvas, left, form, cross, side);
        draw_tick(canvas, {left.x(cross) + 1.5, left.axis() + side * to_dimension - 1.6}, to_word(reference));
    }
}

}  // namespace

void draw_joint_names(Canvas& canvas, const Frame& frame, const MeasuringForm& form, double below_axis, const Wording& w)
{
    const Align away = frame.mirrored ? Align::right : Align::left;
    const double aside = frame.mirrored ? -1.2 : 1.2, y = frame.axis() + below_axis;
    if (frame.mirrored || !may_be_wide_angle(form)) {
        canvas.text({frame.x(first_cross_at) + aside, y}, say(ClosedCaption::one_cross, w), lettering::note, away);
        return;
    }
    canvas.text({frame.x(first_cross_at) + aside, y}, say(ClosedCaption::outer_cross, w), lettering::note, away);
    canvas.text({frame.x(first_cross_at + crosses_apart) + aside, y}, say(ClosedCaption::inner_cross, w), lettering::note, away);
}

double draw_closed(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const bool wide = may_be_wide_angle(form);
    const double top = draw_heading(canvas, room, 3, "closed", closed_hint(form.plus_minus, w));
    const double axis_at = to_dimension + box_height / 2 + 0.5;
    const Frame left{room.x, room.width, top, axis_at, false}, right{room.x, room.width, top, axis_at, true};
    draw_pushed_together(canvas, left, right, first_cross_at + (wide ? crosses_apart : 0), w);
    if (wide) {
        // The words of its dimensions say which cross is which.
        draw_references(canvas, left, form);
    } else {
        draw_joint_names(canvas, left, form, names_at, w);
        draw_joint_names(canvas, right, form, names_at, w);
        draw_closed_from(canvas, left, form, first_cross_at, -1);
    }
    return left.axis() + (wide ? to_dimension + box_height / 2 : names_at + 1.5);
}

}  // namespace shaftcut::measuring_form
