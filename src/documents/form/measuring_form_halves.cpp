// The two halves, parted, each with its lengths and a box at each dimension line.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

// Along a half's drawing, from its left edge, or from its right edge.
constexpr double outer_cross_at = 16, inner_cross_at = 36, shoulder_at = 86, hole_at = 104, from_free_end = 4, from_guard_end = 16, groove_from_cross = 9;
// Across it, from its top or from its axis.
constexpr double title_height = 3.6, axis_at = 21, guard_out = 6.6, guard_in = 5.2, to_guard = 6, guard_row = -12, stop_row = 12.4, length_row = 22;
constexpr double length_width = 43, tolerance_width = 26;

struct DrawnHalf {
    Frame frame;
    Tube tube;
    bool may_be_wide;

    double free_end() const { return frame.width - from_free_end; }
    double guard_end() const { return frame.width - from_guard_end; }
    double tube_half_height() const { return tube == Tube::outer ? 4.2 : 3.1; }
};

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
    const double height = half.tube_half_height(), back = shoulder_at - 4;
    if (half.tube == Tube::outer) {
        canvas.box(along_axis(half.frame, back, shoulder_at, height - 0.4, -height + 0.4), pen::dimension, Fill::black);
        return;
    }
    canvas.box(along_axis(half.frame, back, shoulder_at, height + 1.6, height), pen::dimension, Fill::black);
    canvas.box(along_axis(half.frame, back, shoulder_at, -height, -height - 1.6), pen::dimension, Fill::black);
}

void draw_parted_half(Canvas& canvas, const DrawnHalf& half)
{
    const double height = half.tube_half_height();
    draw_guard(canvas, half);
    draw_either_joint(canvas, half.frame, outer_cross_at, inner_cross_at, half.may_be_wide);
    canvas.box(along_axis(half.frame, inner_cross_at + yoke, half.free_end(), height, -height), pen::outline, Fill::white);
    draw_shoulder(canvas, half);
    canvas.disc(half.frame.at(hole_at, 0), 1.2, Fill::black);
}

// A dimension `row` below the axis from the inner cross or from `from`, its edges as far off the axis as named.
DimensionLine between(const DrawnHalf& half, double from, double from_edge, double to, double to_edge, double row)
{
    const Frame& frame = half.frame;
    const double side = row < 0 ? -1 : 1;
    return {frame.x(from), frame.x(to), frame.axis() + row, frame.axis() + side * from_edge, frame.axis() + side * to_edge, "", 0, 0};
}

DimensionLine from_inner_cross(const DrawnHalf& half, double to, double to_edge, double row)
{
    return between(half, inner_cross_at, half.may_be_wide ? 6.5 : cross_radius + 0.5, to, to_edge, row);
}

// The boxes of a length side by side on its line, from `at` along the half; their shares are millimetres.
void draw_boxed(Canvas& canvas, const DrawnHalf& half, DimensionLine dimension, double at, const std::vector<Entry>& entries)
{
    double x = dimension.gap_from = half.frame.x(at);
    for (const Entry& entry : entries) {
        draw_entry(canvas, {x, dimension.y - box_height / 2, entry.share, box_height}, entry);
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
    draw_entry(canvas, {dimension.gap_from, dimension.y - box_height / 2, length_width, box_height}, {1, say(HalfCaption::guard, w), unit});
    const double baseline = dimension.y + 1.2, first = dimension.gap_from + length_width + 2;
    const double second = draw_tick(canvas, {first, baseline}, say(HalfCaption::guard_missing, w)) + 2.5;
    dimension.gap_to = draw_tick(canvas, {second, baseline}, say(HalfCaption::guard_damaged, w)) + 1.5;
    draw_dimension(canvas, dimension);
}

std::string expected_shoulder(const MeasuringForm& form, Tube tube, const Wording& w)
{
    if (!form.series || !form.series->halves[tube].shoulder) return {};
    return expected(*form.series->halves[tube].shoulder, w);
}

void draw_half_lengths(Canvas& canvas, const DrawnHalf& half, const MeasuringForm& form, const Wording& w)
{
    const std::string unit = unit_word(form.units);
    const double height = half.tube_half_height() + 0.5;
    draw_guard_length(canvas, half, unit, w);
    draw_boxed(canvas, half, from_inner_cross(half, shoulder_at, height, stop_row), inner_cross_at + 3.6,
               {{shoulder_at - inner_cross_at - 7.2, say(HalfCaption::shoulder, w), unit, expected_shoulder(form, half.tube, w)}});
    draw_boxed(canvas, half, between(half, shoulder_at, height, half.free_end(), height, stop_row), hole_at + 12, {{42, say(HalfCaption::stop_depth, w), unit}});
    // The hole's box breaks the line of the length, and hangs on a line of its own down from the hole.
    const double before_hole = 34, row_top = half.frame.axis() + length_row - box_height / 2;
    draw_boxed(canvas, half, from_inner_cross(half, half.free_end(), height, length_row), hole_at - before_hole,
               {{before_hole + 3, say(HalfCaption::lubrication_hole, w), unit}, {length_width, say(HalfCaption::length, w), unit}, {tolerance_width, say(TitleCaption::plus_minus, w), unit}});
    canvas.line(half.frame.at(hole_at, -1.2), {half.frame.x(hole_at), row_top}, pen::dimension);
}

// In the place of the shaft's: of this half's series.
double draw_other_series(Canvas& canvas, const DrawnHalf& half, Rect row, const std::string& unit, const Wording& w)
{
    std::vector<Entry> entries{{1.9, say(HalfCaption::series, w), ""}};
    if (half.may_be_wide) entries.push_back({1, say(HalfCaption::spacing, w), unit});
    entries.push_back({1, say(HalfCaption::cross_to_groove, w), unit});
    row.height = box_height;
    draw_entries(canvas, row, entries);
    draw_tick(canvas, {row.x + 1.5, row.y + box_height - 1.3}, say(HalfCaption::series_not_known, w));
    return row.y + box_height;
}

double draw_half(Canvas& canvas, Rect room, Tube tube, const MeasuringForm& form, const Wording& w)
{
    const DrawnHalf half{{room.x, room.width, room.y, axis_at, false}, tube, may_be_wide_angle(form)};
    const Rect name = canvas.text({room.x, room.y + title_height - 0.4}, say(tube == Tube::inner ? HalfCaption::inner_half : HalfCaption::outer_half, w), lettering::close_name);
    draw_ticks(canvas, {name.right() + 8, room.y + title_height - 0.4}, "", tick_words<Feature>(w));
    draw_parted_half(canvas, half);
    draw_half_lengths(canvas, half, form, w);
    const double y = half.frame.axis() + length_row + box_height / 2 + 0.8;
    return draw_other_series(canvas, half, {room.x, y, room.width, 0}, unit_word(form.units), w);
}

}  // namespace

double draw_halves(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    room.y = draw_heading(canvas, room, 5, say(HalfCaption::heading, w), say(HalfCaption::hint, w));
    double y = draw_half(canvas, room, Tube::inner, form, w);
    y = draw_half(canvas, {room.x, y + 1.2, room.width, 0}, Tube::outer, form, w) + 3.2;
    canvas.begin(Part::paragraph);
    canvas.fitted({room.x, y}, room.width, say(HalfCaption::hint_boxes, w), lettering::note);
    const double half_width = (room.width - 3) / 2;
    canvas.fitted({room.x, y + 3.8}, half_width, say(HalfCaption::inner_stop_depth, w), lettering::note);
    canvas.fitted({room.x + half_width + 3, y + 3.8}, half_width, say(HalfCaption::outer_stop_depth, w), lettering::note);
    return y + 4.8;
}

}  // namespace shaftcut::measuring_form
