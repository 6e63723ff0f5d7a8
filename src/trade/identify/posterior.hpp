// How probable it is that a shaft is of one series, mixed or of none, and what each part is of, given its figures.
#pragma once

#include <vector>

#include "identify/mixed_sums.hpp"

namespace shaftcut::identifying {

// All add up to 1: one of each series, mixed, none.
struct Posterior {
    std::vector<double> one;             // the whole shaft is of each series
    std::vector<double> any_part;        // some part, or the whole
    double one_series = 0, mixed = 0, none = 0;
    PerEach<IdentifiedPart, MixedSums> odd;  // mixed with that part the odd one
    double all_different = 0;
    // The shaft is mixed, and that part of it is of each series, or of none.
    PerEach<IdentifiedPart, std::vector<double>> mixed_part;
    PerEach<IdentifiedPart, double> mixed_part_none;

    std::size_t best() const;  // the most probable series
    IdentifyVerdict verdict() const;
};

Posterior posterior(const Parts& parts, const Writing& writing);

}  // namespace shaftcut::identifying
