// How probable the tubes' figures, and the closed length, are where they are of a series.
#pragma once

#include <array>

#include "identify/shaft_figures.hpp"

namespace shaftcut::identifying {

// One way in which the measured tubes may be the inner and the outer one: its figures' likelihood with the prior of that way.
struct TubesWay {
    double weight = 0;
    Tube first = Tube::inner;  // which tube was measured first
};

// Their weights add up to the likelihood of shape, widths and walls.
using TubesWays = std::array<TubesWay, 2>;
TubesWays tubes_ways(const Series& series, const ShaftFigures& figures);

// That the tubes are seen to be of `seen`; 1 where nobody could make it out.
double shape_likelihood(std::optional<Shape> seen, Shape shape);

// Of the closed length; `unknown` where it cannot be compared with the series' own: it lists none, or it was measured at the other cross and cannot be converted.
double closed_likelihood(const Series& series, const ShaftFigures& figures);
double closed_unknown(const ShaftFigures& figures);

}  // namespace shaftcut::identifying
