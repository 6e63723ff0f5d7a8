// Machines for tests: plain ones by hand, and random ones that are the same on every computer.
#pragma once

#include <cstdint>

#include "shaftcut/trade/hitch/placement.hpp"

namespace support {

inline shaftcut::Dimension length(double mm)
{
    return {shaftcut::Length::from_mm(mm), std::nullopt, {}};
}

inline shaftcut::AngleDimension angle(double degrees)
{
    return {shaftcut::Angle::from_degrees(degrees), std::nullopt, {}};
}

inline shaftcut::TrailedRange turns(double turn, double pitch, double roll)
{
    return {angle(turn), angle(pitch), angle(roll)};
}

inline shaftcut::MountedRange heights(double lowest, double highest)
{
    return {length(lowest), length(highest)};
}

inline shaftcut::HitchEnd end(double cross_to_groove, double spacing)
{
    return {shaftcut::Length::from_mm(cross_to_groove), shaftcut::Length::from_mm(spacing)};
}

// Everything at one height and in line: the pin `a` behind the PTO, the input shaft `b` behind the pin.
shaftcut::Trailed level_machine(double a, double b, const shaftcut::TrailedRange& turning);

// A three-point linkage of common proportions, its input shaft 300 behind and 250 above the lower hitch point.
shaftcut::Mounted common_linkage(const shaftcut::MountedRange& turning);

// Knuth's linear congruential generator (The Art of Computer Programming, vol. 2, 3.3.4), from memory: any would do, but
// the standard library's distributions differ between libraries.
class Dice {
public:
    explicit Dice(std::uint64_t start) : state_(start) {}
    double between(double low, double high);
    bool one_in(int count);

private:
    std::uint64_t state_;
};

struct MachineAndShaft {
    shaftcut::Machine machine;
    shaftcut::HitchShaft shaft;
};

// Yokes 50 to 90, each joint standard or wide-angle with a spacing of 50 to 110.
shaftcut::HitchShaft random_shaft(Dice& dice);

// Three ranges, offset and tilted input shafts, the pin off the PTO's height.
MachineAndShaft random_trailed(Dice& dice);

// Three ranges within the reach of the links.
MachineAndShaft random_mounted(Dice& dice);

}  // namespace support
