// One half of the shaft: joint, tube, guard, where they are cut, and the box that says how much comes off.
//
// Schematic, not to scale. The half is drawn as it lies with the tractor on the left.
#include <algorithm>
#include <cmath>
#include <utility>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "drawing/joint_drawing.hpp"

namespace shaftcut::cut_sheet {

namespace {

constexpr double outer_tube = 8.4, inner_tube = 6.2;
constexpr double crosses_apart = 27, end_margin = 5;
// A half drawn beside the other has no room for more than its lengths.
constexpr double least_named = 120;

// Heights below the top of the drawing, and that of the guard.
struct Heights {
    double guard = 15, guard_line = 11.4, axis = 22.9, tube_line = 37.2, boxes = 39.6;
};
constexpr Heights heights_of(const Front& front) { return front.low_halves ? Heights{12, 10.9, 20.2, 32.6, 34.5} : Heights{}; }

// Distances along the drawing from the joint's end of it.
struct Places {
    double outer_cross = 0, inner_cross = 0;  // the same on a standard joint
    double tube_end = 0, tube_cut = 0, guard_end = 0, guard_cut = 0;
};

// How much of the drawing a cut takes: more for a longer one, but always enough for its number.
double drawn_waste(const TubeView& view)
{
    return view.comes_off() ? std::clamp(11 + view.cut->mm() / 12, 12.0, 36.0) : 0;
}

// How far the guard ends short of its tube in the drawing; negative where it is the longer one.
double drawn_setback(const TubeView& tube, const TubeView& guard)
{
    if (!tube.before || !guard.before) return 8;
    const double setback = (*tube.before - *guard.before).mm();
    if (setback == 0) return 0;
    return std::clamp(std::abs(setback) / 3, 5.0, 12.0) * (setback > 0 ? 1 : -1);
}

Places places_of(const WorkOrder& order, const Frame& frame, const TubeView& tube, const TubeView& guard)
{
    const bool wide = order.shaft.ends[tube.end].joint == JointKind::wide_angle;
    const double setback = drawn_setback(tube, guard);
    Places places;
    places.outer_cross = 14;
    places.inner_cross = wide ? places.outer_cross + crosses_apart : places.outer_cross;
    places.tube_end = frame.width - end_margin + std::min(0.0, setback);
    places.guard_end = places.tube_end - setback;
    places.tube_cut = places.tube_end - drawn_waste(tube);
    places.guard_cut = places.guard_end - drawn_waste(guard);
    return places;
}

void draw_tube(Canvas& canvas, const Frame& frame, const Places& places, Tube tube)
{
    const double half = (tube == Tube::outer ? outer_tube : inner_tube) / 2;
    canvas.box(along_axis(frame, places.inner_cross + yoke, places.tube_cut, half, -half), pen::outline, Fill::white);
    if (places.tube_cut == places.tube_end) return;
    canvas.box(along_axis(frame, places.tube_cut, places.tube_end, half, -half), pen::outline, Fill::hatched);
    canvas.line(frame.at(places.tube_cut, half + 1.6), frame.at(places.tube_cut, -half - 1.6), pen::cut_mark);
}

void draw_guard(Canvas& canvas, const Frame& frame, const Places& places, const Heights& heights)
{
    const double out = heights.guard / 2, in = out - guard_wall;
    draw_guard_walls(canvas, frame, places.inner_cross, places.guard_cut, out);
    if (places.guard_cut == places.guard_end) return;
    for (const double side : {1.0, -1.0}) {
        canvas.shape({frame.at(places.guard_cut, side * out), frame.at(places.guard_end, side * out),
                      frame.at(places.guard_end, side * in), frame.at(places.guard_cut, side * in)}, pen::guard, Fill::hatched);
        canvas.line(frame.at(places.guard_cut, side * (out + 0.9)), frame.at(places.guard_cut, side * (in - 0.9)), pen::cut_mark);
    }
}

std::string dimension_text(const Frame& frame, const TubeView& view, const Wording& w)
{
    return drawn_length({view.guard, view.measured, view.cut.has_value(), view.comes_off(), view.before, view.kept, frame.width < least_named}, w);
}

// The letter of what is not cut.
void draw_struck(Canvas& canvas, Point centre, const std::string& letter)
{
    draw_mark(canvas, centre, letter, Fill::white);
    draw_strike(canvas, centre);
}

void draw_length(Canvas& canvas, const Frame& frame, const Places& places, const Heights& heights, const TubeView& view, const Wording& w)
{
    const double cut = view.guard ? places.guard_cut : places.tube_cut;
    const double end = view.guard ? places.guard_end : places.tube_end;
    const double line = frame.top + (view.guard ? heights.guard_line : heights.tube_line);
    const double edge = frame.axis() + (view.guard ? -heights.guard / 2 - 1.3 : (view.tube == Tube::outer ? outer_tube : inner_tube) / 2 + 1.8);
    const double cross = frame.axis() + (view.guard ? -cross_radius - 0.5 : cross_radius + 0.5);
    const bool flip = frame.mirrored;
    const double inner = frame.x(places.inner_cross), mark = frame.x(cut), free = frame.x(end);
    draw_dimension(canvas, {flip ? mark : inner, flip ? inner : mark, line, flip ? edge : cross, flip ? cross : edge, dimension_text(frame, view, w)});
    const double number_y = line - 0.6 - number_radius;
    if (view.comes_off()) {
        draw_dimension(canvas, {std::min(mark, free), std::max(mark, free), line, edge, edge, ""});
        draw_mark(canvas, {(mark + free) / 2, number_y}, letter_of(view.part()), Fill::black);
    } else if (view.cut) {
        draw_struck(canvas, {free + (flip ? number_radius + 2 : -number_radius - 2), number_y}, letter_of(view.part()));
    }
}

// Which cross is which: half lengths always start at the inner one.
void draw_cross_names(Canvas& canvas, const Frame& frame, const Places& places, const Heights& heights, const WorkOrder& order, End end, const Wording& w)
{
    const double inner = frame.x(places.inner_cross), outer = frame.x(places.outer_cross);
    const double y = frame.top + heights.tube_line - 1.3;
    const double in = frame.mirrored ? -1.2 : 1.2;
    const Align after = frame.mirrored ? Align::right : Align::left;
    if (places.inner_cross == places.outer_cross) {
        if (frame.width > least_named) canvas.text({inner + in, y}, say(HalfCaption::centre_of_cross, w), lettering::note, after);
        return;
    }
    // Beside the tube's length, which stands in the middle of its line.
    const TubeView tube = tube_view(order, end, false);
    const double room = (std::abs(frame.x(places.tube_cut) - inner) - canvas.width_of(dimension_text(frame, tube, w), lettering::figure)) / 2 - 2.5;
    canvas.fitted({inner + in, y}, room, say(HalfCaption::inner_cross, w), lettering::strong, after);
    canvas.text({outer, y}, say(HalfCaption::outer_cross, w), lettering::note, Align::centre);
    const double line = frame.top + heights.guard_line, from = frame.axis() - 6.5;
    draw_dimension(canvas, {std::min(inner, outer), std::max(inner, outer), line, from, from,
                            w.length(Rounded::measured, order.reading.shaft.spacing[end])});
    canvas.line({outer, frame.axis() + 6.5}, {outer, y - 3.6}, pen::dimension);
}

void draw_half_heading(Canvas& canvas, const Frame& frame, const WorkOrder& order, End end, const Wording& w)
{
    const std::string carries = carried(tube_on(order.shaft, end), order.shaft.ends[end].joint, w);
    const double y = frame.top + 4.3;
    const Align side = frame.mirrored ? Align::right : Align::left;
    const double start = frame.mirrored ? frame.left + frame.width : frame.left;
    canvas.begin(Part::heading);
    const Rect name = canvas.text({start, y}, half_name(end, w), {4.2, Weight::bold}, side);
    canvas.begin(Part::figure);
    if (frame.width > least_named) canvas.text({frame.mirrored ? name.x - 4 : name.right() + 4, y}, carries, lettering::note, side);
}

// In place of the box of a guard that is not used again.
void draw_no_guard(Canvas& canvas, Rect room, const WorkOrder& order, const TubeView& guard, const Wording& w)
{
    const bool none = order.shaft.halves[guard.tube].guard_use == GuardUse::none;
    canvas.text({room.x + 2, room.y + 4.9}, part_name(guard.end, guard.guard, w), lettering::strong);
    canvas.fitted({room.x + 2, room.y + 10.4}, room.width - 4, say(none ? HalfCaption::no_guard : HalfCaption::damaged_guard, w), lettering::figure);
}

}  // namespace

double draw_half(Canvas& canvas, Rect room, const WorkOrder& order, End end, const Front& front, const Wording& w)
{
    const Heights heights = heights_of(front);
    const Frame frame{room.x, room.width, room.y, heights.axis, end == End::implement};
    const TubeView tube = tube_view(order, end, false), guard = tube_view(order, end, true);
    const Places places = places_of(order, frame, tube, guard);
    draw_half_heading(canvas, frame, order, end, w);
    if (guard.used) draw_guard(canvas, frame, places, heights);
    draw_joint(canvas, frame, places.outer_cross, places.inner_cross);
    draw_tube(canvas, frame, places, tube.tube);
    canvas.line(frame.at(places.outer_cross - 13, 0), frame.at(frame.width - 1, 0), pen::axis, {6, 1.2, 0.8, 1.2});
    const double bare = places.inner_cross + yoke + 5;
    draw_break(canvas, frame, bare + 0.2 * (std::min(places.tube_cut, places.guard_cut) - bare), heights.guard / 2 + 0.8);
    if (guard.used) draw_length(canvas, frame, places, heights, guard, w);
    draw_length(canvas, frame, places, heights, tube, w);
    draw_cross_names(canvas, frame, places, heights, order, end, w);
    // What is not sawn needs no box: its letter is struck, and its length says so.
    if (!order.cut || (order.verdict == Verdict::fits && guard.used)) return room.y + heights.boxes;
    const double gap = 3, width = (room.width - gap) / 2;
    if (guard.used) draw_cut_box(canvas, {room.x, room.y + heights.boxes, width, 0}, order, guard, w);
    else draw_no_guard(canvas, {room.x, room.y + heights.boxes, width, 0}, order, guard, w);
    draw_cut_box(canvas, {room.x + width + gap, room.y + heights.boxes, width, 0}, order, tube, w);
    return room.y + heights.boxes + cut_box_height(canvas, width, order, w);
}

}  // namespace shaftcut::cut_sheet
