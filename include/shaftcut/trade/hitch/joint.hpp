// The mathematics of universal joints: how unevenly they turn, and how a shaft lies between two of them.
//
// Angles are radians here, since searches run on them; lengths are millimetres.
#pragma once

#include <optional>

#include "shaftcut/trade/hitch/vector.hpp"
#include "shaftcut/words/angle.hpp"

namespace shaftcut {

// Two joints of one shaft. A wide-angle joint turns its two shafts alike: its angle is 0 here.
struct JointPair {
    double tractor = 0;    // the joint's angle, radians
    double implement = 0;  // the joint's angle, radians
    // The angle about the tubes between the planes of the two joints, less the angle between the tubes' yokes: 0 in
    // phase and in one plane. A half turn more or less changes nothing, nor does its sign.
    double between = 0;
};

// Joints bent in one plane, their tube yokes in line.
JointPair in_one_plane(Angle tractor, Angle implement);

// 2 cosh s - 2, where the output turns between e^-s and e^s times the input's speed: a smooth measure that grows with the
// irregularity. With c1, c2 the cosines of the angles and D the angle between,
//     ((c1 - c2)^2 cos^2 D + (1 - c1 c2)^2 sin^2 D) / (c1 c2)
// Empty where an angle is 90 degrees or more: such a joint cannot turn.
// Source: tan t2 = tan t1 / c1 and tan t3 = c2 tan(t2 - D) are linear maps of the direction (cos t, sin t); the speed
// ratio of their product M, scaled to determinant 1, is 1/|M x|^2, so its extremes are M's singular values squared.
// Checked against the slopes of these formulas, taken numerically over a turn, and against published figures.
std::optional<double> unevenness(const JointPair& joints);

// (greatest - least) speed of the output over the input's even speed, which is the output's mean, in per cent.
// For a single joint 100 (1/cos b - cos b). Empty where unevenness() is.
std::optional<double> irregularity(const JointPair& joints);

// One end of a shaft in place.
struct JointSeat {
    Vector cross;        // the connection yoke's cross (a wide-angle joint's outer one)
    Vector axis;         // of the coupled shaft, a unit vector pointing rearwards
    double spacing = 0;  // between a wide-angle joint's two crosses; 0 for a standard joint
};

// How a shaft lies between its two coupled shafts.
struct BentShaft {
    Vector tractor_axis;         // the two coupled shafts' axes, as given
    Vector implement_axis;
    Vector tractor_inner;        // the cross that carries the tube yoke
    Vector implement_inner;
    Vector along;                // unit vector along the tubes, rearwards
    double length = 0;           // telescoping length, mm

    // The whole joints' angles, radians.
    double tractor_angle() const { return angle_between(tractor_axis, along); }
    double implement_angle() const { return angle_between(implement_axis, along); }
};

// A wide-angle joint holds its two crosses on the bisector of its angle, so with u, v the axes and t along the tubes
//     I = P + wT (u + t)/|u + t|,  J = Q - wI (v + t)/|v + t|,  t = (J - I)/|J - I|
// found by relaxed iteration until t would move by less than 1e-13.
// Empty where there is no answer: the crosses meet, or u + t or v + t vanishes (a joint folded right back).
std::optional<BentShaft> bent_shaft(const JointSeat& tractor, const JointSeat& implement);

// JointPair::between of a shaft whose tube yokes are in line, radians: from the planes of each axis and the tubes.
double angle_between_planes(const BentShaft& shaft);

}  // namespace shaftcut
