#include <array>
#include <cmath>
#include <vector>

#include "support/identify/invented.hpp"

namespace shaftcut::test {
namespace {

using support::Dice;

constexpr std::array<std::array<double, 2>, 11> trade_crosses{
    {{22, 54}, {23.8, 61.3}, {27, 70}, {27, 74.6}, {28, 73}, {30.2, 80}, {30.2, 92}, {32, 76}, {34.9, 106}, {36, 89}, {41, 108}}};

template <class All>
auto one_of(Dice& dice, const All& all)
{
    return all[std::min(static_cast<std::size_t>(dice.between(0, static_cast<double>(all.size()))), all.size() - 1)];
}

// To the next step of a drawing.
Length stepped(double mm, double step) { return Length::from_mm(step * std::round(mm / step)); }

Cross drawn_cross(Dice& dice)
{
    Cross cross;
    if (chance(dice, 0.7)) {
        const auto size = one_of(dice, trade_crosses);
        cross.cap = Length::from_mm(size[0]);
        cross.span = Length::from_mm(size[1]);
        return cross;
    }
    const double cap = dice.between(20, 42);
    cross.cap = stepped(cap, 0.1);
    cross.span = stepped(cap * dice.between(2.3, 3), 0.1);
    return cross;
}

WideAngleJoint drawn_wide_angle(Dice& dice, const Cross& standard)
{
    WideAngleJoint joint{stepped(standard.span.mm() * dice.between(1.05, 1.35), 1), {}};
    if (chance(dice, 0.15)) return joint;
    joint.crosses.push_back(standard);
    if (chance(dice, 0.4)) joint.crosses.push_back(chance(dice, 0.5) ? standard : drawn_cross(dice));
    if (chance(dice, 0.2)) {
        const Cross other = drawn_cross(dice);
        joint.crosses.back().other_cap = other.cap;
        joint.crosses.back().other_span = other.span;
    }
    return joint;
}

Shape drawn_shape(Dice& dice)
{
    constexpr std::array shapes{Shape::lemon, Shape::lemon, Shape::lemon, Shape::lemon, Shape::star, Shape::star, Shape::triangular, Shape::triangular, Shape::square, Shape::splined};
    return one_of(dice, shapes);
}

// Each size slides in the next.
std::vector<double> drawn_chain(Dice& dice)
{
    std::vector<double> sizes{dice.between(22, 32)};
    while (sizes.back() < 90) sizes.push_back(sizes.back() * dice.between(1.13, 1.24));
    return sizes;
}

std::vector<Length> drawn_lengths(Dice& dice)
{
    std::vector<Length> lengths;
    if (chance(dice, 0.4)) return lengths;
    for (double length = dice.between(450, 560); length < 1400; length *= dice.between(1.15, 1.22)) lengths.push_back(stepped(length, 5));
    return lengths;
}

Series drawn_series(Dice& dice, const std::vector<double>& chain)
{
    constexpr std::array walls{2.8, 3.0, 3.2, 3.5, 4.0, 4.5, 5.0};
    Series series;
    series.shape = drawn_shape(dice);
    series.crosses.push_back(drawn_cross(dice));
    if (chance(dice, 0.6)) series.wide_angle = drawn_wide_angle(dice, series.crosses[0]);
    const auto place = static_cast<std::size_t>(dice.between(0, static_cast<double>(chain.size()) - 1.001));
    for (const Tube tube : both_tubes) {
        SeriesHalf& half = series.halves[tube];
        if (!chance(dice, 0.05)) half.width = stepped(chain[tube == Tube::inner ? place : place + 1], 0.5);
        if (!chance(dice, 0.1)) half.wall = Length::from_mm(one_of(dice, walls));
    }
    series.closed_lengths = drawn_lengths(dice);
    return series;
}

}  // namespace

bool chance(Dice& dice, double probability) { return dice.between(0, 1) < probability; }

Catalogue invented_catalogue(Dice& dice, int series, const std::string& name)
{
    std::vector<std::vector<double>> chains;
    for (int i = 0; i < 3 + series / 15; ++i) chains.push_back(drawn_chain(dice));
    Catalogue catalogue;
    for (int i = 0; i < series; ++i) {
        catalogue.series.push_back(drawn_series(dice, one_of(dice, chains)));
        catalogue.series.back().name = name + " " + std::to_string(i + 1);
    }
    return catalogue;
}

}  // namespace shaftcut::test
