#include "order/machine_scene.hpp"

namespace shaftcut {
namespace {

bool same(Length a, Length b) { return !clearly_below(a, b) && !clearly_above(a, b); }

// A position found by a search is kept to the micrometre or thousandth of a degree, and its length computed again differs by as little.
void take_extreme(MachineScene& scene, const OperatingLengths& lengths)
{
    for (const Range range : all_ranges)
        if (lengths.ranges[range] && same(scene.length, lengths.ranges[range]->longest.length)) {
            scene.length = lengths.ranges[range]->longest.length;
            scene.printed_as = Rounded::longest;
        }
    if (!same(scene.length, lengths.shortest.length)) return;
    scene.length = lengths.shortest.length;
    scene.printed_as = Rounded::shortest;
}

}  // namespace

MachineScene machine_scene(SceneOf of, const GeometryReading& geometry, const Posture& at)
{
    MachineScene scene;
    scene.of = of;
    scene.at = at;
    const Coordinates position = coordinates(at);
    scene.pto_groove = pto_groove(geometry.machine);
    if (const auto* trailed = std::get_if<Trailed>(&geometry.machine)) {
        scene.input = input_shaft(*trailed, position);
        scene.pin = {trailed->pin_behind.value.mm(), 0, trailed->pin_height.value.mm()};
    } else {
        scene.linkage = linkage(std::get<Mounted>(geometry.machine), position[0]);
        scene.input = scene.linkage.value().input;
    }
    const BentShaft bent = shaft_in_place(geometry.machine, geometry.shaft, position).value();
    scene.outer[End::tractor] = scene.pto_groove + geometry.shaft.tractor.cross_to_groove.mm() * bent.tractor_axis;
    scene.outer[End::implement] = scene.input.groove - geometry.shaft.implement.cross_to_groove.mm() * bent.implement_axis;
    scene.inner[End::tractor] = bent.tractor_inner;
    scene.inner[End::implement] = bent.implement_inner;
    scene.length = Length::from_mm(bent.length);
    take_extreme(scene, geometry.lengths);
    scene.angles[End::tractor] = Angle::from_radians(bent.tractor_angle());
    scene.angles[End::implement] = Angle::from_radians(bent.implement_angle());
    return scene;
}

}  // namespace shaftcut
