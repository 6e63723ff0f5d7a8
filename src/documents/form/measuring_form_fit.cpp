// Where the lengths at the machine are measured: between the crosses, or between the grooves of the stubs.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double axis_at = 14.5, to_dimension = 9.5, row = 6.5, groove_at = first_cross_at - groove_from_cross;

// The stub with its groove, the joint on it, and the beginning of its tube.
void draw_coupled_half(Canvas& canvas, const Frame& frame, double inner_cross, double tube_half_height)
{
    canvas.box(along_axis(frame, 0, 3, 2.2, -2.2), pen::outline, Fill::white);
    canvas.line(frame.at(0, 8), frame.at(0, -8), pen::cut_mark);
    draw_joint(canvas, frame, first_cross_at, inner_cross);
    canvas.line(frame.at(groove_at, 4), frame.at(groove_at, -4), pen::dimension, {1, 0.7});
    canvas.box(along_axis(frame, inner_cross + yoke, inner_cross + yoke + 22, tube_half_height, -tube_half_height), pen::outline, Fill::white);
}

// A dimension over the whole drawing, with words in its middle; to tick where the form leaves it open.
void draw_choice(Canvas& canvas, const Frame& left, double from, double to, double y, const std::string& words, bool to_tick)
{
    const double width = canvas.width_of(words, lettering::strong) + (to_tick ? 5.2 : 0), middle = left.left + left.width / 2;
    const double side = y < left.axis() ? -1 : 1, edge = left.axis() + side * (cross_radius + 0.5);
    draw_dimension(canvas, {left.x(from), left.x(to), y, edge, edge, "", middle - width / 2 - 1.5, middle + width / 2 + 1.5});
    const Point at{middle - width / 2, y + 1.3};
    if (to_tick) draw_tick(canvas, at, words);
    else canvas.text(at, words, lettering::strong);
}

// Each way to measure, below or above the drawing.
double draw_choices(Canvas& canvas, const Frame& left, const MeasuringForm& form, const Wording& w)
{
    const double right_cross = left.width - first_cross_at, above = left.axis() - to_dimension;
    double below = left.axis() + to_dimension + 3.6;
    if (!may_be_wide_angle(form)) {
        draw_choice(canvas, left, first_cross_at, right_cross, above, say(FitCaption::between_crosses, w), true);
    } else {
        for (const Reference reference : {Reference::outer_cross, Reference::inner_cross}) {
            const double cross = first_cross_at + (reference == Reference::inner_cross ? crosses_apart : 0);
            const bool up = reference == Reference::outer_cross;
            draw_choice(canvas, left, cross, right_cross, up ? above : below, between_crosses(reference, w), true);
            if (!up) below += row;
        }
    }
    draw_choice(canvas, left, groove_at, left.width - groove_at, below, say(FitCaption::between_grooves, w), true);
    return below + 2;
}

}  // namespace

double draw_fit(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const double top = draw_heading(canvas, room, 6, "fit", say(FitCaption::hint, w));
    const double inner_cross = first_cross_at + (may_be_wide_angle(form) ? crosses_apart : 0);
    const Frame left{room.x, room.width, top, axis_at, false}, right{room.x, room.width, top, axis_at, true};
    draw_coupled_half(canvas, left, inner_cross, 4.2);
    draw_coupled_half(canvas, right, first_cross_at, 3.1);
    draw_joint_names(canvas, left, form, to_dimension + 0.5, w);
    draw_joint_names(canvas, right, form, to_dimension + 0.5, w);
    return draw_choices(canvas, left, form, w);
}

}  // namespace shaftcut::measuring_form
