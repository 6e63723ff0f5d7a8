// Checks a saw plan piece by piece in micrometres. Shares no code with the solver.
#pragma once

#include <string>

#include "shaftcut/trade/saw/saw.hpp"

namespace shaftcut::test {

// What is wrong with the plan: a bar overfull with its kerfs and trims, a wrong leftover, more bars than in stock, pieces too many
// or too few, a wrong cost, a bound above the cost, a claim of proof without equality. Empty when all is right.
std::string fault_of(const SawTask& task, const SawPlan& plan);

}  // namespace shaftcut::test
