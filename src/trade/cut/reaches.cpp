// Between what a tape measure reads over a shaft's ends and the telescoping length, both ways.
#include <algorithm>
#include <cmath>

#include "cut/stated.hpp"

namespace shaftcut {
namespace {

// How far the ends reach along the tubes and aside, when their joints are bent the same way in one plane, in mm.
struct BentEnds {
    double along = 0, across = 0;
};

BentEnds bent_ends(const Reaches& reaches, const PerEach<End, Angle>& angles)
{
    BentEnds ends;
    for (const End end : both_ends) {
        const double angle = angles[end].radians();
        const double yoke = reaches[end].yoke.mm();
        const double spacing = reaches[end].spacing.mm();
        const double side = end == End::tractor ? 1.0 : -1.0;
        ends.along += yoke * std::cos(angle) + spacing * std::cos(angle / 2);
        ends.across += side * (yoke * std::sin(angle) + spacing * std::sin(angle / 2));
    }
    return ends;
}

// √(D² − across²): what the distance leaves along the tubes and the ends' own reach.
double root_of(Length distance, const BentEnds& ends)
{
    return std::sqrt(std::max(0.0, distance.mm() * distance.mm() - ends.across * ends.across));
}

}  // namespace

Length in_line(Length distance, const Reaches& reaches)
{
    for (const End end : both_ends) distance -= reaches[end].yoke + reaches[end].spacing;
    return distance;
}

Length bent(Length distance, const Reaches& reaches, const PerEach<End, Angle>& angles)
{
    const BentEnds ends = bent_ends(reaches, angles);
    return Length::from_mm(root_of(distance, ends) - ends.along);
}

Toleranced bent(const Toleranced& distance, const Reaches& reaches, const PerEach<End, Angle>& angles)
{
    const double root = root_of(distance.value, bent_ends(reaches, angles));
    // Where the ends alone reach as far as the distance nothing is known; the length is 0 or less there, which refuses.
    const double slope = root > 0 ? distance.value.mm() / root : 1.0;
    return {bent(distance.value, reaches, angles), Length::from_mm(distance.plus_minus.mm() * slope)};
}

Length distance_in_line(Length telescoping, const Reaches& reaches)
{
    for (const End end : both_ends) telescoping += reaches[end].yoke + reaches[end].spacing;
    return telescoping;
}

Length distance_bent(Length telescoping, const Reaches& reaches, const PerEach<End, Angle>& angles)
{
    const BentEnds ends = bent_ends(reaches, angles);
    Length distance = Length::from_mm(std::hypot(telescoping.mm() + ends.along, ends.across));
    while (bent(distance, reaches, angles) > telescoping) distance -= Length::micrometres(1);
    return distance;
}

}  // namespace shaftcut
