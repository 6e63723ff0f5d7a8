// What makes a saw task unanswerable before any search.
#pragma once

#include "shaftcut/trade/saw/saw.hpp"

namespace shaftcut::saw {

// The first of: a figure out of its range, nothing to cut, a list beyond the limits of saw.hpp, pieces longer than every bar
// between its trims (all of them named; without a bar every piece is), stock whose total length is too small.
std::optional<SawRefusal> check_task(const SawTask& task);

}  // namespace shaftcut::saw
