// What the checks found, and what is confirmed before anything is sawn, in sentences.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/checks/checks.hpp"
#include "shaftcut/trade/checks/confirmation.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string say(const CheckFinding& finding, const Wording& w);

// One or more sentences: what was found; for a pass, short.
std::string say(const Check& check, const Wording& w);

// The limit's source and how the value is computed, clauses parted by semicolons; of a check that was not made, why.
std::string basis(const Check& check, const Wording& w);

// The same clause by clause, for a list that says each once.
std::vector<std::string> basis_clauses(const Check& check, const Wording& w);

// What the failed ones say; of one with contradictions, each for itself.
std::vector<std::string> reasons_to_refuse(const std::vector<Check>& checks, const Wording& w);

// What to measure or look at, what is expected, and why.
std::string say(const Confirmation& confirmation, const Wording& w);

}  // namespace shaftcut
