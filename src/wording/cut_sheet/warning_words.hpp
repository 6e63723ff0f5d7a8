// A warning in one line, as the front of the cut sheet has it; in full it stands on leaf 2.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/checks/checks.hpp"
#include "wording.hpp"

namespace shaftcut::cut_sheet {

// Of a check that warns; of what the shaft came in with, a line each, the tractors that were not measured in one. `guard_said`: what is
// wrong with its guards stands before them already.
std::vector<std::string> in_one_line(const Check& check, bool guard_said, const Wording& w);

// "2. Fit longer guard tubes."
std::string numbered_way(std::size_t number, const std::string& way, const Wording& w);

}  // namespace shaftcut::cut_sheet
