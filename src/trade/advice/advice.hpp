// A refusal's way out: what would pass, computed by running the same rules on other lengths.
#pragma once

#include <vector>

#include "shaftcut/trade/advice/findings.hpp"
#include "shaftcut/trade/checks/checks.hpp"

namespace shaftcut {

// What would serve instead, for each failed check in `checks`: lengths to measure again, the longest and
// the shortest position that this shaft can serve, which of the series' closed lengths serves as it is or after a cut, the
// shaft to order (a new shaft's lengths, not this one's), or what to fit instead. Empty where nothing failed.
// Checked by running the program's own rules on each length that is named (advice_test).
std::vector<WayOut> ways_out(const CheckInput& input, const std::vector<Check>& checks);

}  // namespace shaftcut
