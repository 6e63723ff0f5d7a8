// The two halves, parted, each with its lengths from the inner cross and a box at each dimension line.
#include "measuring_form_parts.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut::measuring_form {
namespace {

// From the inner cross of a half, and from the right edge of its drawing.
constexpr double to_shoulder = 17, to_lubrication_hole = 23, to_guard = 6, from_free_end = 4, from_guard_end = 13;
constexpr double axis_at = 18.5, guard_out = 7.5, guard_in = 5.9, row = 10.8, box_height = 10, first_row = 14.2;
constexpr double length_width = 35, tolerance_width = 25, guard_width = 40;

// A half with its joint: the crosses are the same on a standard one.
struct DrawnHalf {
    Frame frame;
    Tube tube;
    double outer_cross, inner_cross;

    double free_end() const { return frame.width - from_free_end; }
    double guard_end() const { return frame.width - from_guard_end; }
};

double tube_half_height(Tube tube) { return tube == Tube::outer ? 4.2 : 3.1; }

void draw_guard(Canvas& canvas, const DrawnHalf& half)
{
    const Frame& frame = half.frame;
    const double from = half.inner_cross + to_guard, to = half.guard_end();
    for (const double side : {1.0, -1.0})
        canvas.shape({frame.at(from, side * guard_out), frame.at(to, side * guard_out), frame.at(to, side * guard_in), frame.at(from, side * guard_in)},
                     pen::guard, Fill::white);
}

// What stops the other tube: a ring around the inner tube, a plug inside the outer one.
void draw_shoulder(Canvas& canvas, const DrawnHalf& half)
{
    const double height = tube_half_height(half.tube), face = half.inner_cross + to_shoulder, back = face - 4;
    if (half.tube == Tube::outer) {
        canvas.box(along_axis(half.frame, back, face, height - 0.4, -height + 0.4), pen::dimension, Fill::black);
        return;
    }
    canvas.box(along_axis(half.frame, back, face, height + 1.6, height), pen::dimension, Fill::black);
    canvas.box(along_axis(half.frame, back, face, -height, -height - 1.6), pen::dimension, Fill::black);
}

void draw_parted_half(Canvas& canvas, const DrawnHalf& half)
{
    const double height = tube_half_height(half.tube), hole = half.inner_cross + to_lubrication_hole;
    draw_guard(canvas, half);
    draw_joint(canvas, half.frame, half.outer_cross, half.inner_cross);
    canvas.box(along_axis(half.frame, half.inner_cross + yoke, half.free_end(), height, -height), pen::outline, Fill::white);
    draw_shoulder(canvas, half);
    canvas.disc(half.frame.at(hole, 0), 1.2, Fill::black);
}

// A dimension from the inner cross to a place `to` of the half whose edge is `to_edge` off the axis.
DimensionLine from_cross(const DrawnHalf& half, double to, double y, double to_edge)
{
    const Frame& frame = half.frame;
    const double side = y < frame.axis() ? -1 : 1;
    const double past_joint = half.outer_cross < half.inner_cross ? 6.5 : cross_radius + 0.5;
    return {frame.x(half.inner_cross), frame.x(to), y, frame.axis() + side * past_joint, frame.axis() + side * to_edge, "", 0, 0};
}

// The box of a short length, behind its arrow.
void draw_short_length(Canvas& canvas, const DrawnHalf& half, const DimensionLine& dimension, const std::string& name, const std::string& unit)
{
    const double box = dimension.to + 3;
    canvas.line({dimension.to, dimension.y}, {box, dimension.y}, pen::dimension);
    draw_dimension(canvas, dimension);
    draw_entry(canvas, {box, dimension.y - box_height / 2, half.frame.x(half.free_end()) - 1.5 - box, box_height}, name, unit);
}

// The boxes of a long length, side by side in the middle of its line.
void draw_long_length(Canvas& canvas, DimensionLine dimension, const std::vector<Entry>& entries, double width)
{
    dimension.gap_from = (dimension.from + dimension.to - width) / 2;
    dimension.gap_to = dimension.gap_from + width;
    draw_dimension(canvas, dimension);
    double x = dimension.gap_from;
    for (const Entry& entry : entries) {
        draw_entry(canvas, {x, dimension.y - box_height / 2, entry.share, box_height}, entry.name, entry.unit);
        x += entry.share;
    }
}

void draw_half_lengths(Canvas& canvas, const DrawnHalf& half, const std::string& unit)
{
    const double height = tube_half_height(half.tube), axis = half.frame.axis(), below = axis + first_row;
    draw_long_length(canvas, from_cross(half, half.guard_end(), axis - 13.2, guard_out + 0.5), {{guard_width, "guard", unit}}, guard_width);
    draw_short_length(canvas, half, from_cross(half, half.inner_cross + to_lubrication_hole, below, 1.5), "lubrication-hole", unit);
    draw_short_length(canvas, half, from_cross(half, half.inner_cross + to_shoulder, below + row, height + 0.5), "shoulder", unit);
    draw_long_length(canvas, from_cross(half, half.free_end(), below + 2 * row, height + 0.5),
                     {{length_width, "length", unit}, {tolerance_width, "plus-minus", unit}}, length_width + tolerance_width);
}

// The outer half with a wide-angle joint where there may be one, so that both kinds are shown.
DrawnHalf drawn_half(Rect room, Tube tube, const MeasuringForm& form)
{
    const bool wide = tube == Tube::outer && may_be_wide_angle(form);
    return {{room.x, room.width, room.y, axis_at, false}, tube, wide ? 6.0 : 12.0, wide ? 21.0 : 12.0};
}

}  // namespace

double draw_halves(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    const double top = draw_heading(canvas, room, 4, "half", "mark both tubes in line, then part them; each length from the inner cross: a standard joint's one");
    const double apart = 3 * gap, width = (room.width - apart) / 2;
    const double below = top + axis_at + first_row + 2 * row + box_height / 2 + 4.2;
    canvas.text({room.x, below}, "features of each half.  Black: the shoulder, which stops the other tube; the dot: the lubrication hole, to its far edge.", lettering::note);
    double x = room.x;
    for (const Tube tube : both_tubes) {
        const DrawnHalf half = drawn_half({x, top, width, 0}, tube, form);
        canvas.text({x, top + 3.6}, std::string("tube ") + to_word(tube), lettering::strong);
        draw_parted_half(canvas, half);
        draw_half_lengths(canvas, half, unit_word(form.units));
        draw_ticks(canvas, {x, below + tick_pitch}, "", words_of<Feature>());
        x += width + apart;
    }
    return below + tick_pitch + 1;
}

}  // namespace shaftcut::measuring_form
