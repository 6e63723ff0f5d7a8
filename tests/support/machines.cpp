#include "support/machines.hpp"

#include <algorithm>

using namespace shaftcut;

namespace support {
namespace {

// Within `span`, at least 50 mm apart.
MountedRange random_range(Dice& dice, const HeightSpan& span)
{
    const double low = dice.between(span.lowest, span.highest - 50);
    return heights(low, dice.between(low + 50, span.highest));
}

}  // namespace

Trailed level_machine(double a, double b, const TrailedRange& turning)
{
    Trailed machine{length(600), length(a), length(600), length(b), length(600), length(0), angle(0), {}, {}};
    machine.ranges.turning = turning;
    return machine;
}

Mounted common_linkage(const MountedRange& turning)
{
    Mounted machine{length(650), length(-100), length(500), length(900), length(-50), length(950), length(700),
                    length(610), length(300),  length(250), angle(0),    {},          {}};
    machine.ranges.turning = turning;
    return machine;
}

double Dice::between(double low, double high)
{
    state_ = state_ * 6364136223846793005U + 1442695040888963407U;
    return low + (high - low) * static_cast<double>(state_ >> 40) / static_cast<double>(1U << 24);
}

bool Dice::one_in(int count)
{
    return between(0, count) < 1;
}

HitchShaft random_shaft(Dice& dice)
{
    const auto random_end = [&dice] { return end(dice.between(50, 90), dice.one_in(2) ? dice.between(50, 110) : 0); };
    HitchShaft shaft;
    shaft.tractor = random_end();
    shaft.implement = random_end();
    if (dice.one_in(2)) shaft.phase_step = Angle::degrees(120);
    return shaft;
}

MachineAndShaft random_trailed(Dice& dice)
{
    Trailed machine;
    machine.pto_height = length(dice.between(500, 900));
    machine.pin_behind = length(dice.between(350, 600));
    machine.pin_height = length(dice.between(300, 700));
    machine.input_behind = length(dice.between(450, 1000));
    machine.input_height = length(dice.between(400, 1000));
    machine.input_left = length(dice.one_in(2) ? 0 : dice.between(-150, 150));
    machine.input_tilt = angle(dice.between(-12, 12));
    machine.ranges.working = turns(dice.between(0, 30), dice.between(0, 15), dice.between(0, 12));
    machine.ranges.turning = turns(dice.between(10, 60), dice.between(0, 25), dice.between(0, 20));
    machine.ranges.standing = turns(dice.between(30, 85), dice.between(0, 25), dice.between(0, 25));
    return {machine, random_shaft(dice)};
}

MachineAndShaft random_mounted(Dice& dice)
{
    for (;;) {
        Mounted machine;
        machine.pto_height = length(dice.between(500, 800));
        machine.lower_pivot_behind = length(dice.between(-200, 0));
        machine.lower_pivot_height = length(dice.between(400, 600));
        machine.lower_link = length(dice.between(800, 1000));
        machine.top_pivot_behind = length(dice.between(-150, 50));
        machine.top_pivot_height = length(machine.lower_pivot_height.value.mm() + dice.between(300, 550));
        machine.top_link = length(dice.between(600, 850));
        machine.mast = length(dice.between(460, 685));
        machine.input_behind = length(dice.between(200, 600));
        machine.input_above = length(dice.between(-100, 400));
        machine.input_tilt = angle(dice.between(-10, 10));
        const auto spans = reachable_heights(machine);
        if (spans.empty()) continue;
        const HeightSpan usual{std::max(spans.front().lowest, 200.0), std::min(spans.front().highest, 900.0)};
        if (usual.highest - usual.lowest < 100) continue;
        machine.ranges = {random_range(dice, usual), random_range(dice, usual), random_range(dice, usual)};
        return {machine, random_shaft(dice)};
    }
}

}  // namespace support
