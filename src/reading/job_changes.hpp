// What a way out of a refusal is as a change of the job's file: what is to stand in which attribute instead.
//
// Nothing is offered where the new figure has to be measured first, where a part has to be fitted first, or where another shaft is to be
// chosen. A new shaft takes with it what was measured of the old one, and its year.
#pragma once

#include <cstddef>
#include <variant>
#include <vector>

#include "shaftcut/trade/order/work_order.hpp"
#include "change.hpp"

namespace shaftcut {

// What tells one choice from the others of its way.
struct ClosedChosen { Length closed; bool cut; };  // of a new shaft, cut or as it is
struct LiftedUpTo { Length height; };              // of the lower hitch point
struct LoweredDownTo { Length height; };
struct ReadFrom { Reference cross; };              // the closed length
struct HalvesOtherWayRound {};
struct InOtherUnit { Units unit; };
using ChoiceOf = std::variant<std::monostate, ClosedChosen, LiftedUpTo, LoweredDownTo, ReadFrom, HalvesOtherWayRound, InOtherUnit>;

struct JobChoice {
    ChoiceOf of;  // std::monostate: the only one
    Changes changes;
};

// Of a way out of the order by its number, or of all its LongestServed together, which are one; none where there is nothing to change.
// `units`: of the file.
// Checked in tests/engine/job_changes_test.cpp: each is put into the file, and the answer is no longer refused for what it mends.
std::vector<JobChoice> choices_of(const WorkOrder& order, const std::vector<std::size_t>& ways, Units units);

}  // namespace shaftcut
