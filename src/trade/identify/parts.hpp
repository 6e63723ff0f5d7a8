// Each part's likelihood by each series and by none.
#pragma once

#include <vector>

#include "identify/joint_likelihood.hpp"
#include "identify/tubes_likelihood.hpp"

namespace shaftcut::identifying {

// In terms of the greatest of them, so that three parts multiplied do not run out of range.
struct PartLikelihood {
    std::vector<double> of_series;  // in the catalogue's order
    double mean = 0, sum = 0;       // of these
    double none = 0;                // h·mean + (1 − h)·background
    double none_shared = 0;         // the share of `none` that has a size of the catalogue: h·mean / none
};

struct Parts {
    ShaftFigures figures;
    PerEach<End, std::vector<JointWays>> joints;  // of each series
    std::vector<TubesWays> tubes;
    PerEach<IdentifiedPart, PartLikelihood> likelihood;
    double both_ends_none = 0;  // of the two joints of one series that is not here
};

Parts parts_of(const Catalogue& catalogue, const Measures& measures);

}  // namespace shaftcut::identifying
