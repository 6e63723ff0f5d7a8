// What is wrong with a machine's geometry, each fault at the place of the dimension that has to change, with what is possible.
#pragma once

#include "shaftcut/trade/hitch/findings.hpp"

namespace shaftcut {

// Faults that need no shaft to see.
// Both machines: no range stated; an input shaft tilted by 90 degrees or more, so that its axis doubles back.
// Trailed: a pin in front of the PTO; a turn below 0 or from 180, a pitch or roll below 0 or from 90 degrees.
// Mounted: a link or mast of 0; a lowest height above the highest; a linkage that closes at no height; a height at an end of
// a range, or between, that the links cannot reach.
HitchProblems geometry_problems(const Machine& machine);

// The fault of a machine whose shaft has no answer at `position`, which lies in a range with the dimension `end` as the
// furthest that it moves: the joint folds right back, or the crosses meet. Says up to which turn or height there is an answer,
// or, where there is none at `start` (the middle of the range), which input-behind would give one.
struct NoAnswer {
    Coordinates start{};
    Coordinates position{};
    Place end;
};
HitchProblem no_answer_problem(const Machine& machine, const HitchShaft& shaft, const NoAnswer& where);

}  // namespace shaftcut
