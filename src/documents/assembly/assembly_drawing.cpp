// The finished shaft, pushed together: joints, tubes in one another, guards, and its lengths from cross to cross.
//
// Schematic, not to scale, the tractor on the left.
#include <algorithm>

#include "assembly/assembly_parts.hpp"
#include "drawing/joint_drawing.hpp"

namespace shaftcut::assembly_sheet {
namespace {

constexpr double outer_tube = 8.4, inner_tube = 6.2, hidden_step = 1.2;
constexpr double outer_guard = 8.1, inner_guard = 6.3, wall = 1.4, bell = 1.6;
constexpr double first_cross = 14, crosses_apart = 27;
constexpr double first_line = 10, line_pitch = 6.2, to_axis = 1.3 + outer_guard + bell, to_half_lines = outer_guard + bell + 4.9;
// How far a free end stays from the other half's yoke, and a guard's end from its tube's.
constexpr double end_gap = 6, drawn_setback = 3.5;

// Both halves lie in one frame, the implement's mirrored.
struct Halves {
    const BuildPlan& plan;
    Frame tractor, implement;

    const Frame& frame(End end) const { return end == End::tractor ? tractor : implement; }
    double inner_cross(End end) const { return first_cross + (is_wide_angle(plan, end) ? crosses_apart : 0); }
    double cross(End end, Reference reference) const { return reference == Reference::inner_cross ? inner_cross(end) : first_cross; }
    double free_end(End end) const { return tractor.width - inner_cross(other(end)) - yoke - end_gap; }
};

// Two lines on the paper of the same shaft where its crosses differ.
std::vector<Reference> references(const BuildPlan& plan)
{
    if (!plan.has_wide_angle) return {Reference::inner_cross};
    return {Reference::outer_cross, Reference::inner_cross};
}

Halves halves_in(const BuildPlan& plan, Rect room)
{
    const double axis_at = first_line + line_pitch * static_cast<double>(references(plan).size() - 1) + to_axis;
    return {plan, {room.x, room.width, room.y, axis_at, false}, {room.x, room.width, room.y, axis_at, true}};
}

void draw_header(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    for (const End end : both_ends) {
        const bool left = end == End::tractor;
        const Tube tube = tube_on(plan.ordered, end);
        const Wording w = wording_of(plan);
        const std::string carries = assembly_words::joint_and_tube(plan.ordered.ends[end].joint, tube, w);
        const Point at{left ? room.x : room.right(), room.y + 3.7};
        const Rect name = canvas.text(at, say(left ? Caption::tractor_end : Caption::implement_end, w), lettering::name, left ? Align::left : Align::right);
        canvas.text({left ? name.right() + 2.5 : name.x - 2.5, at.y}, carries, lettering::note, left ? Align::left : Align::right);
    }
}

void draw_tubes(Canvas& canvas, const Halves& halves, const BuildPlan& plan)
{
    const End inner = end_of(plan.ordered, Tube::inner), outer = end_of(plan.ordered, Tube::outer);
    const auto tube = [&](End end, double height) {
        canvas.box(along_axis(halves.frame(end), halves.inner_cross(end) + yoke, halves.free_end(end), height / 2, -height / 2), pen::outline, Fill::white);
    };
    tube(inner, inner_tube);
    tube(outer, outer_tube);
    // What of the inner tube the outer one hides.
    const Frame& frame = halves.frame(inner);
    const double from = frame.width - halves.free_end(outer), to = halves.free_end(inner);
    for (const double side : {1.0, -1.0})
        canvas.line(frame.at(from, side * inner_tube / 2), frame.at(to, side * inner_tube / 2), pen::axis, {1.8, hidden_step});
    canvas.line(frame.at(to, inner_tube / 2), frame.at(to, -inner_tube / 2), pen::dimension, {1.8, hidden_step});
}

// Where both tubes are marked, so that they are never put together again out of phase: a mark on each, point to point.
void draw_phase_marks(Canvas& canvas, const Halves& halves, const BuildPlan& plan)
{
    constexpr double half_height = 1.1, from_end = 0.6, length = 2.4, text_from_end = 4.2, above_axis = 0.35;
    const End end = end_of(plan.ordered, Tube::outer);
    const Frame& frame = halves.frame(end);
    const double free = halves.free_end(end);
    for (const double side : {-1.0, 1.0}) {
        const double tip = free + side * from_end;
        canvas.shape({frame.at(tip, 0), frame.at(tip + side * length, half_height), frame.at(tip + side * length, -half_height)}, 0, Fill::black);
    }
    canvas.text(frame.at(free - text_from_end, above_axis), say(Caption::phase_marks, wording_of(plan)), lettering::close_strong, frame.mirrored ? Align::left : Align::right);
}

void draw_guards(Canvas& canvas, const Halves& halves, const BuildPlan& plan)
{
    if (!plan.guard) return;
    for (const Tube tube : both_tubes) {
        const End end = end_of(plan.ordered, tube);
        draw_guard_walls(canvas, halves.frame(end), halves.inner_cross(end), halves.free_end(end) - drawn_setback, tube == Tube::outer ? outer_guard : inner_guard, wall);
    }
}

std::string closed_text(const BuildPlan& plan, Reference reference)
{
    const bool both = is_wide_angle(plan, End::tractor) && is_wide_angle(plan, End::implement);
    return say(assembly_words::DrawnClosed{plan.built->closed_at[reference], reference, plan.has_wide_angle, both, reference == plan.reference}, wording_of(plan));
}

void draw_closed(Canvas& canvas, const Halves& halves, const BuildPlan& plan, Rect room)
{
    double y = room.y + first_line;
    for (const Reference reference : references(plan)) {
        const double from = halves.tractor.x(halves.cross(End::tractor, reference)), to = halves.implement.x(halves.cross(End::implement, reference));
        const double edge = halves.tractor.axis() - cross_radius - 0.5;
        draw_dimension(canvas, {from, to, y, edge, edge, closed_text(plan, reference)});
        y += line_pitch;
    }
}

// Each half from its inner cross to its tube's free end.
void draw_half_lengths(Canvas& canvas, const Halves& halves, const BuildPlan& plan)
{
    double y = halves.tractor.axis() + to_half_lines;
    for (const End end : both_ends) {
        const Tube tube = tube_on(plan.ordered, end);
        const Frame& frame = halves.frame(end);
        const double cross = frame.x(halves.inner_cross(end)), free = frame.x(halves.free_end(end));
        const double at_cross = frame.axis() + cross_radius + 0.5, at_end = frame.axis() + outer_tube / 2 + 0.8;
        const std::string text = assembly_words::half(tube, plan.built->lengths.half[tube], wording_of(plan));
        draw_dimension(canvas, {std::min(cross, free), std::max(cross, free), y, cross < free ? at_cross : at_end, cross < free ? at_end : at_cross, text});
        y += line_pitch;
    }
}

}  // namespace

double draw_shaft(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    const Halves halves = halves_in(plan, room);
    canvas.begin(Part::figure);
    draw_header(canvas, room, plan);
    draw_guards(canvas, halves, plan);
    for (const End end : both_ends) draw_joint(canvas, halves.frame(end), first_cross, halves.inner_cross(end));
    draw_tubes(canvas, halves, plan);
    canvas.line(halves.tractor.at(1, 0), halves.tractor.at(room.width - 1, 0), pen::axis, {6, 1.2, 0.8, 1.2});
    draw_phase_marks(canvas, halves, plan);
    draw_break(canvas, halves.tractor, room.width / 2, outer_guard + 0.8);
    draw_closed(canvas, halves, plan, room);
    draw_half_lengths(canvas, halves, plan);
    return halves.tractor.axis() + to_half_lines + line_pitch + 1.3;
}

}  // namespace shaftcut::assembly_sheet
