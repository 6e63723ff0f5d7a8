// The two halves, parted, each with its lengths and a box at each dimension line.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

// Along a half's drawing, from its left edge, or from its right edge.
constexpr double inner_cross_at = 42, outer_cross_at = inner_cross_at - 28, shoulder_at = 90, hole_at = 104, from_free_end = 4, from_guard_end = 16;
constexpr double axis_at = 24, guard_out = 7.5, guard_in = 5.9, to_guard = 6, guard_row = -13.2, hole_row = 14.2, stop_row = 26, length_row = 37;
constexpr double box_height = 10, length_width = 45, tolerance_width = 30, groove_row = 11, spacing_row = -11;

// A half with its joint: the crosses are the same on a standard one.
struct DrawnHalf {
    Frame frame;
    Tube tube;
    double outer_cross;

    bool wide() const { return outer_cross < inner_cross_at; }
    double free_end() const { return frame.width - from_free_end; }
    double guard_end() const { return frame.width - from_guard_end; }
};

double tube_half_height(Tube tube) { return tube == Tube::outer ? 4.2 : 3.1; }

void draw_guard(Canvas& canvas, const DrawnHalf& half)
{
    const Frame& frame = half.frame;
    const double from = inner_cross_at + to_guard, to = half.guard_end();
    for (const double side : {1.0, -1.0})
        canvas.shape({frame.at(from, side * guard_out), frame.at(to, side * guard_out), frame.at(to, side * guard_in), frame.at(from, side * guard_in)},
                     pen::guard, Fill::white);
}

// What stops the other tube: a ring around the inner tube, a plug inside the outer one.
void draw_shoulder(Canvas& canvas, const DrawnHalf& half)
{
    const double height = tube_half_height(half.tube), back = shoulder_at - 4;
    if (half.tube == Tube::outer) {
        canvas.box(along_axis(half.frame, back, shoulder_at, height - 0.4, -height + 0.4), pen::dimension, Fill::black);
        return;
    }
    canvas.box(along_axis(half.frame, back, shoulder_at, height + 1.6, height), pen::dimension, Fill::black);
    canvas.box(along_axis(half.frame, back, shoulder_at, -height, -height - 1.6), pen::dimension, Fill::black);
}

void draw_parted_half(Canvas& canvas, const DrawnHalf& half)
{
    const double height = tube_half_height(half.tube), groove = half.outer_cross - groove_from_cross;
    draw_guard(canvas, half);
    draw_joint(canvas, half.frame, half.outer_cross, inner_cross_at);
    canvas.line(half.frame.at(groove, 4), half.frame.at(groove, -4), pen::dimension, {1, 0.7});
    canvas.box(along_axis(half.frame, inner_cross_at + yoke, half.free_end(), height, -height), pen::outline, Fill::white);
    draw_shoulder(canvas, half);
    canvas.disc(half.frame.at(hole_at, 0), 1.2, Fill::black);
}

// A dimension `row` below the axis between two places of the half, whose edges are `from_edge` and `to_edge` off the axis.
DimensionLine between(const DrawnHalf& half, double from, double from_edge, double to, double to_edge, double row)
{
    const Frame& frame = half.frame;
    const double side = row < 0 ? -1 : 1;
    return {frame.x(from), frame.x(to), frame.axis() + row, frame.axis() + side * from_edge, frame.axis() + side * to_edge, "", 0, 0};
}

DimensionLine from_inner_cross(const DrawnHalf& half, double to, double to_edge, double row)
{
    return between(half, inner_cross_at, half.wide() ? 6.5 : cross_radius + 0.5, to, to_edge, row);
}

// The boxes of a length side by side on its line, from `at` along the half.
void draw_boxed(Canvas& canvas, const DrawnHalf& half, DimensionLine dimension, double at, const std::vector<Entry>& entries)
{
    double x = dimension.gap_from = half.frame.x(at);
    for (const Entry& entry : entries) {
        draw_entry(canvas, {x, dimension.y - box_height / 2, entry.share, box_height}, entry.name, entry.unit);
        x += entry.share;
    }
    dimension.gap_to = x;
    draw_dimension(canvas, dimension);
}

// A guard that goes back on has a length, another a tick.
void draw_guard_length(Canvas& canvas, const DrawnHalf& half, const std::string& unit, const Wording& w)
{
    DimensionLine dimension = from_inner_cross(half, half.guard_end(), guard_out + 0.5, guard_row);
    dimension.gap_from = half.frame.x(inner_cross_at + 5);
    draw_entry(canvas, {dimension.gap_from, dimension.y - box_height / 2, length_width, box_height}, "guard", unit);
    const double baseline = dimension.y + 1.2, first = dimension.gap_from + length_width + 2;
    const double second = draw_tick(canvas, {first, baseline}, to_word(GuardUse::none)) + 2.5;
    dimension.gap_to = draw_tick(canvas, {second, baseline}, to_word(GuardUse::damaged), say(HalfCaption::guard_not_used, w)) + 1.5;
    draw_dimension(canvas, dimension);
}

void draw_half_lengths(Canvas& canvas, const DrawnHalf& half, const std::string& unit, const Wording& w)
{
    const double height = tube_half_height(half.tube) + 0.5;
    draw_guard_length(canvas, half, unit, w);
    draw_boxed(canvas, half, from_inner_cross(half, hole_at, 1.5, hole_row), inner_cross_at + 4, {{38, "lubrication-hole", unit}});
    draw_boxed(canvas, half, from_inner_cross(half, shoulder_at, height, stop_row), inner_cross_at + 4, {{38, "shoulder", unit}});
    draw_boxed(canvas, half, between(half, shoulder_at, height, half.free_end(), height, stop_row), shoulder_at + 26, {{length_width, "stop-depth", unit}});
    draw_boxed(canvas, half, from_inner_cross(half, half.free_end(), height, length_row), inner_cross_at + 32,
               {{length_width, "length", unit}, {tolerance_width, "plus-minus", unit}});
    canvas.paragraph({half.frame.x(hole_at + 3), half.frame.axis() + 8.6}, half.free_end() - hole_at - 5, say(half.tube == Tube::inner ? HalfCaption::inner_stop_depth : HalfCaption::outer_stop_depth, w), lettering::note);
}

// Where the lengths of a joint of another series are measured, by their words; the boxes stand below.
void draw_joint_lengths(Canvas& canvas, const DrawnHalf& half)
{
    const double groove = half.outer_cross - groove_from_cross;
    draw_dimension(canvas, between(half, groove, 4.5, half.outer_cross, half.wide() ? 6.5 : cross_radius + 0.5, groove_row));
    const Point below{half.frame.x(half.wide() ? groove : half.outer_cross - 1.5), half.frame.axis() + groove_row + 4.4};
    canvas.text(below, "cross-to-groove", lettering::note, half.wide() ? Align::left : Align::right);
    if (!half.wide()) return;
    draw_dimension(canvas, between(half, half.outer_cross, 6.5, inner_cross_at, 6.5, spacing_row));
    canvas.text({half.frame.x((half.outer_cross + inner_cross_at) / 2), half.frame.axis() + spacing_row - 1.4}, "spacing", lettering::note, Align::centre);
}

double draw_other_series(Canvas& canvas, Rect row, const std::string& unit, const Wording& w)
{
    row.height = box_height;
    draw_entries(canvas, row, {{1.75, say(HalfCaption::series, w), ""}, {1.3, say(HalfCaption::spacing, w), unit}, {1, "cross-to-groove", unit}});
    draw_tick(canvas, {row.x + 1.5, row.y + box_height - 1.7}, "none", say(HalfCaption::series_not_known, w));
    return row.y + box_height;
}

double draw_half(Canvas& canvas, Rect room, Tube tube, const MeasuringForm& form, const Wording& w)
{
    // The outer half with a wide-angle joint where there may be one, so that both kinds are shown.
    const bool wide = tube == Tube::outer && may_be_wide_angle(form);
    const DrawnHalf half{{room.x, room.width, room.y, axis_at, false}, tube, wide ? outer_cross_at : inner_cross_at};
    const std::string unit = unit_word(form.units);
    const Rect name = canvas.text({room.x, room.y + 3.6}, tube_heading(tube, w), {3, Weight::bold});
    const Rect joint = canvas.text({name.right() + 2, room.y + 3.6}, say(wide ? HalfCaption::wide_angle_joint : HalfCaption::standard_joint, w), lettering::note);
    draw_ticks(canvas, {joint.right() + 6, room.y + 3.6}, "features", words_of<Feature>());
    draw_parted_half(canvas, half);
    draw_half_lengths(canvas, half, unit, w);
    draw_joint_lengths(canvas, half);
    return draw_other_series(canvas, {room.x, half.frame.axis() + length_row + box_height / 2 + gap, room.width, 0}, unit, w);
}

}  // namespace

double draw_halves(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    room.y = draw_heading(canvas, room, 5, "half", say(HalfCaption::hint, w));
    canvas.text({room.x, room.y + 2.5}, say(HalfCaption::hint_black, w), lettering::note);
    canvas.text({room.x, room.y + 6.5}, say(HalfCaption::hint_boxes, w), lettering::note);
    const double first = draw_half(canvas, {room.x, room.y + 8.4, room.width, 0}, Tube::inner, form, w);
    return draw_half(canvas, {room.x, first + 2 * gap, room.width, 0}, Tube::outer, form, w);
}

}  // namespace shaftcut::measuring_form
