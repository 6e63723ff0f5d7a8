// The proof by cases, verified without a linear programme.
#pragma once

#include "saw/saw_branch.hpp"
#include "saw/saw_mix.hpp"

namespace shaftcut::saw {

// True when the cases prove, together with the rows (each valid for the whole task), that no packing costs less than `limit`; false as well
// when they are malformed. For each row of prices an exact knapsack that keeps apart what the case keeps apart.
bool cases_prove(const Model& model, const std::vector<PriceRow>& rows, const std::vector<SawProofNode>& cases, std::int64_t limit);

inline constexpr std::size_t most_case_depth = 1'000;  // deeper proofs prove nothing

// One price of 0 or more for each size of the model, and values_fit().
bool well_formed(const Model& model, const std::vector<std::int64_t>& prices);

}  // namespace shaftcut::saw
