// Where a machine's points and its shaft lie in one position of its movement. The frame is that of machine.hpp.
#pragma once

#include <array>
#include <optional>
#include <variant>
#include <vector>

#include "shaftcut/trade/data/machine.hpp"
#include "shaftcut/trade/hitch/joint.hpp"
#include "shaftcut/trade/hitch/vector.hpp"

namespace shaftcut {

// One end of a shaft as it meets the machine. Figures of the shaft, taken as exact.
struct HitchEnd {
    Length cross_to_groove;  // of the connection yoke; a wide-angle joint's outer cross
    Length spacing;          // between a wide-angle joint's crosses; 0 for a standard joint
};

struct HitchShaft {
    HitchEnd tractor;
    HitchEnd implement;
    // By how much the tube yokes can be put together wrongly: 90 degrees, 120 for a triangular tube.
    Angle phase_step = Angle::degrees(90);
};

// A position of the machine: turn, pitch, roll in radians, or the height of the lower hitch point in mm and two zeros.
using Coordinates = std::array<double, 3>;

// The same for people.
struct TrailedPosture {
    Angle turn;
    Angle pitch;
    Angle roll;
};
struct MountedPosture {
    Length height;
};
using Posture = std::variant<TrailedPosture, MountedPosture>;

Posture posture(const Machine& machine, const Coordinates& position);
Coordinates coordinates(const Posture& posture);

// The locking groove of the machine's input shaft, and its axis, a unit vector pointing rearwards.
struct InputShaft {
    Vector groove;
    Vector axis;
};

// groove = pin + R (input-behind, -input-left, input-height - pin-height), axis = R (cos tilt, 0, sin tilt),
// R = Rz(turn) Ry(pitch) Rx(roll).
InputShaft input_shaft(const Trailed& machine, const Coordinates& position);

// A three-point linkage in side view; every y is 0.
struct Linkage {
    Vector lower_pivot;
    Vector top_pivot;
    Vector lower_hitch;
    Vector upper_hitch;
    InputShaft input;
};

// The lower hitch point lies behind its pivot at the height asked for (mm); the upper one is the higher of the two points
// that are a mast from it and a top link from that link's pivot. Empty where no such points exist.
std::optional<Linkage> linkage(const Mounted& machine, double height);

// A span of heights of the lower hitch point, mm.
struct HeightSpan {
    double lowest = 0;
    double highest = 0;
};

// The heights at which the linkage closes, from below; empty where it closes nowhere. The lower hitch point must lie behind
// both pivots: with it under the top link's pivot the mast could fold to either side.
// Checked by linkage() at heights just inside and just outside every end.
std::vector<HeightSpan> reachable_heights(const Mounted& machine);

// The locking groove of the tractor's PTO stub; its axis is (1, 0, 0).
Vector pto_groove(const Machine& machine);

// Empty where input_shaft(), linkage() or bent_shaft() has no answer.
std::optional<BentShaft> shaft_in_place(const Machine& machine, const HitchShaft& shaft, const Coordinates& position);

// The two joints of a shaft in this position, a wide-angle joint's angle taken as 0. `out_of_phase`, radians.
std::optional<JointPair> joints_in_place(const Machine& machine, const HitchShaft& shaft, const Coordinates& position,
                                         double out_of_phase);

}  // namespace shaftcut
