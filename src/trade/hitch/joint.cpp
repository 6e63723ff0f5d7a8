#include "shaftcut/trade/hitch/joint.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace shaftcut {
namespace {

constexpr double settled = 1e-13;    // of a unit vector: 1e-10 mm on a shaft of a metre
constexpr double vanishing = 1e-6;   // |u + t| under this: the joint is folded to within a ten-thousandth of a degree
constexpr double meeting = 1e-9;     // mm
constexpr double least_share = 0.02;
constexpr int most_steps = 400;

double square(double value)
{
    return value * value;
}

bool folded_back(Vector axis, Vector along)
{
    return size(axis + along) < vanishing;
}

// From the outer to the inner cross along the bisector of the joint.
Vector across(const JointSeat& seat, Vector along)
{
    return seat.spacing == 0 ? Vector{} : seat.spacing * unit(seat.axis + along);
}

Vector between_inner_crosses(const JointSeat& tractor, const JointSeat& implement, Vector along)
{
    return implement.cross - tractor.cross - across(tractor, along) - across(implement, along);
}

// The share of the step in t that brings it nearest, from what the last share made of the distance `before`: Aitken's
// relaxation. Turning t by a little turns the found direction back by w/L times less than that, so the share is below 1.
double next_share(double share, Vector before, Vector now)
{
    const Vector change = now - before;
    const double best = -share * dot(before, change) / dot(change, change);
    return std::clamp(best, least_share, 1.0);
}

// The direction of the tubes, from the straight line between the outer crosses.
std::optional<Vector> settled_direction(const JointSeat& tractor, const JointSeat& implement)
{
    const Vector line = implement.cross - tractor.cross;
    Vector along = unit(line);
    double share = 1 / (1 + (tractor.spacing + implement.spacing) / (2 * size(line)));
    std::optional<Vector> before;
    for (int step = 0; step < most_steps; ++step) {
        if (folded_back(tractor.axis, along) || folded_back(implement.axis, along)) return std::nullopt;
        const Vector reach = between_inner_crosses(tractor, implement, along);
        if (size(reach) < meeting) return std::nullopt;
        const Vector off = unit(reach) - along;
        if (dot(off, off) < settled * settled) return along;
        if (before) share = next_share(share, *before, off);
        before = off;
        along = unit(along + share * off);
    }
    return std::nullopt;
}

}  // namespace

JointPair in_one_plane(Angle tractor, Angle implement) { return {tractor.radians(), implement.radians(), 0}; }

std::optional<double> unevenness(const JointPair& joints)
{
    constexpr double quarter = std::numbers::pi / 2;
    if (joints.tractor >= quarter || joints.implement >= quarter) return std::nullopt;
    const double c1 = std::cos(joints.tractor);
    const double c2 = std::cos(joints.implement);
    return (square(c1 - c2) * square(std::cos(joints.between)) + square(1 - c1 * c2) * square(std::sin(joints.between))) / (c1 * c2);
}

std::optional<double> irregularity(const JointPair& joints)
{
    const auto excess = unevenness(joints);
    if (!excess) return std::nullopt;
    return 100 * std::sqrt(*excess * (*excess + 4));  // 2 sinh s
}

std::optional<BentShaft> bent_shaft(const JointSeat& tractor, const JointSeat& implement)
{
    if (size(implement.cross - tractor.cross) < meeting) return std::nullopt;
    const auto along = settled_direction(tractor, implement);
    if (!along) return std::nullopt;
    BentShaft shaft;
    shaft.tractor_axis = tractor.axis;
    shaft.implement_axis = implement.axis;
    shaft.tractor_inner = tractor.cross + across(tractor, *along);
    shaft.implement_inner = implement.cross - across(implement, *along);
    shaft.along = *along;
    shaft.length = size(shaft.implement_inner - shaft.tractor_inner);
    return shaft;
}

double angle_between_planes(const BentShaft& shaft)
{
    const Vector first = cross(shaft.tractor_axis, shaft.along);
    const Vector second = cross(shaft.along, shaft.implement_axis);
    return std::atan2(dot(cross(first, second), shaft.along), dot(first, second));
}

}  // namespace shaftcut
