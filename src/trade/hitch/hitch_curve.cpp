#include "shaftcut/trade/hitch/hitch_curve.hpp"

#include "hitch/shafts_on_grid.hpp"

namespace shaftcut {
namespace {

double spaced(double from, double to, int index, int points)
{
    return from + (to - from) * index / (points - 1);
}

}  // namespace

std::vector<TurnPoint> lengths_against_turn(const Trailed& machine, const HitchShaft& shaft, const TrailedRange& range, int points)
{
    const Machine whole = machine;
    Box box = box_of(range);
    const double furthest = box.half[0];
    box.half[0] = 0;
    box.points[0] = 1;
    std::vector<TurnPoint> curve;
    for (int i = 0; i < points; ++i) {
        box.middle[0] = spaced(-furthest, furthest, i, points);
        const auto level = shaft_in_place(whole, shaft, box.middle);
        const ShaftsOnGrid shafts(whole, shaft, box);
        const Greatest nearest = greatest_over(Quantity::closeness, whole, shaft, shafts);
        const Greatest longest = greatest_over(Quantity::length, whole, shaft, shafts);
        if (!level || !nearest.value || !longest.value) continue;
        curve.push_back({Angle::from_radians(box.middle[0]), Length::from_mm(level->length), Length::from_mm(-*nearest.value),
                         Length::from_mm(*longest.value), Angle::from_radians(level->tractor_angle()),
                         Angle::from_radians(level->implement_angle())});
    }
    return curve;
}

std::vector<LiftPoint> lengths_against_lift(const Mounted& machine, const HitchShaft& shaft, const MountedRange& range, int points)
{
    const Machine whole = machine;
    std::vector<LiftPoint> curve;
    for (int i = 0; i < points; ++i) {
        const double height = spaced(range.lowest.value.mm(), range.highest.value.mm(), i, points);
        const auto bent = shaft_in_place(whole, shaft, {height, 0, 0});
        if (!bent) continue;
        curve.push_back({Length::from_mm(height), Length::from_mm(bent->length), Angle::from_radians(bent->tractor_angle()),
                         Angle::from_radians(bent->implement_angle())});
    }
    return curve;
}

}  // namespace shaftcut
