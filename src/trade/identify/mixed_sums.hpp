// Shafts of which one part is of another series than the other two, or one of them of none: summed over all pairs of series without naming a pair.
#pragma once

#include <vector>

#include "identify/parts.hpp"
#include "identify/writing.hpp"

namespace shaftcut::identifying {

// All with the odd part the same. Weights as of Posterior before they are divided by their sum.
struct MixedSums {
    std::vector<double> others, odd;          // over all shafts whose two like parts, or whose odd part, are of each series
    double others_none = 0, odd_none = 0;     // of none
    double total = 0;
};

//  0.08·0.3·P(m)·P(o | m)·L_rest(m)·L_odd(o)·g(m, o)   over series m of the two like parts and o of the odd one, o ≠ m; either may be none, not both.
// Σ over o ≠ m of L(o) is S − L(m), so it is one pass. Checked against the sum over all pairs in tests/trade/identify/posterior_test.cpp.
MixedSums mixed_sums(const Parts& parts, const Writing& writing, IdentifiedPart odd);

}  // namespace shaftcut::identifying
