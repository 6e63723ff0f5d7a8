#include "shaftcut/trade/order/machine_view.hpp"

#include "order/machine_scene.hpp"

namespace shaftcut {
namespace {

constexpr int curve_points = 61;

// Of a trailed machine.
void add_longest(MachineView& view, const GeometryReading& geometry)
{
    std::optional<Range> of;
    const auto& ranges = geometry.lengths.ranges;
    for (const Range range : all_ranges)
        if (ranges[range] && (!of || ranges[range]->longest.length > ranges[*of]->longest.length)) of = range;
    view.scenes.push_back(machine_scene(SceneOf::longest, geometry, ranges[*of]->longest.at));
    view.scenes.back().range = of;
    // On a machine that does not move it is the shortest too.
    view.scenes.back().length = ranges[*of]->longest.length;
    view.scenes.back().printed_as = Rounded::longest;
}

Range furthest_turning(const Trailed& machine)
{
    std::optional<Range> of;
    for (const Range range : all_ranges)
        if (machine.ranges[range] && (!of || machine.ranges[range]->turn.value > machine.ranges[*of]->turn.value)) of = range;
    return of.value();
}

void add_turns(MachineView& view, const Trailed& machine, const HitchShaft& shaft)
{
    view.curve_range = furthest_turning(machine);
    for (const TurnPoint& point : lengths_against_turn(machine, shaft, *machine.ranges[*view.curve_range], curve_points)) {
        CurvePoint& drawn = view.curve.emplace_back();
        drawn.turn = point.turn;
        drawn.length = point.level;
        drawn.shortest = point.shortest;
        drawn.longest = point.longest;
        drawn.angles[End::tractor] = point.tractor;
        drawn.angles[End::implement] = point.implement;
    }
}

// From the lowest of all ranges to the highest.
MountedRange whole_lift(const Mounted& machine)
{
    std::optional<MountedRange> whole;
    for (const Range range : all_ranges) {
        const auto& part = machine.ranges[range];
        if (!part) continue;
        if (!whole) whole = part;
        if (part->lowest.value < whole->lowest.value) whole->lowest = part->lowest;
        if (part->highest.value > whole->highest.value) whole->highest = part->highest;
    }
    return whole.value();
}

void add_lift(MachineView& view, const MountedRange& whole, const Mounted& machine, const HitchShaft& shaft)
{
    for (const LiftPoint& point : lengths_against_lift(machine, shaft, whole, curve_points)) {
        CurvePoint& drawn = view.curve.emplace_back();
        drawn.height = point.height;
        drawn.length = drawn.shortest = drawn.longest = point.length;
        drawn.angles[End::tractor] = point.tractor;
        drawn.angles[End::implement] = point.implement;
    }
}

}  // namespace

MachineView machine_view(const FitReading& fit)
{
    const GeometryReading& geometry = fit.geometry.value();
    MachineView view;
    view.tractor = fit.tractor;
    const MachineScene shortest = machine_scene(SceneOf::shortest, geometry, geometry.lengths.shortest.at);
    if (const auto* trailed = std::get_if<Trailed>(&geometry.machine)) {
        view.scenes.push_back(shortest);
        add_longest(view, geometry);
        add_turns(view, *trailed, geometry.shaft);
        return view;
    }
    view.mounted = true;
    const Mounted& machine = std::get<Mounted>(geometry.machine);
    const MountedRange whole = whole_lift(machine);
    view.scenes = {machine_scene(SceneOf::lowest, geometry, MountedPosture{whole.lowest.value}), shortest, machine_scene(SceneOf::highest, geometry, MountedPosture{whole.highest.value})};
    add_lift(view, whole, machine, geometry.shaft);
    return view;
}

}  // namespace shaftcut
