// How probable a part's figures are where it is of no series here and shares no size with one: sizes of which nothing is known but what the trade's sizes are like.
#pragma once

#include "identify/shaft_figures.hpp"

namespace shaftcut::identifying {

double joint_of_none(const EndFigures& end);

// Of `end` where it has the same joint as the other end of its shaft, whose figures are `known`.
double joint_like(const EndFigures& end, const EndFigures& known);

double tubes_of_none(const ShaftFigures& figures);

}  // namespace shaftcut::identifying
