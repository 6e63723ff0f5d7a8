// Telescoping length and joint angles over a machine's movement, for a plot and the table behind it.
#pragma once

#include <vector>

#include "shaftcut/trade/hitch/hitch.hpp"

namespace shaftcut {

struct TurnPoint {
    Angle turn;
    Length level;     // telescoping length without pitch and roll
    Length shortest;  // over the range's pitch and roll at this turn
    Length longest;
    Angle tractor;    // joint angles without pitch and roll
    Angle implement;
};

// `points` (2 or more) turns from the range's left to its right, evenly spaced. A turn at which the shaft has no answer is
// left out; operating_lengths() refuses such a range.
std::vector<TurnPoint> lengths_against_turn(const Trailed& machine, const HitchShaft& shaft, const TrailedRange& range, int points);

struct LiftPoint {
    Length height;  // of the lower hitch point above ground
    Length length;
    Angle tractor;
    Angle implement;
};

// `points` (2 or more) heights from the range's lowest to its highest, evenly spaced; without an answer as above.
std::vector<LiftPoint> lengths_against_lift(const Mounted& machine, const HitchShaft& shaft, const MountedRange& range, int points);

}  // namespace shaftcut
