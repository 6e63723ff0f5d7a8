// What to measure next, and whether anything is worth it.
#pragma once

#include <vector>

#include "identify/posterior.hpp"

namespace shaftcut::identifying {

// In front what brings worth_bits or more, the most bits a minute first; within like_rate of the best the easiest. Behind it the rest, likewise.
std::vector<NextMeasurement> next_measurements(const Catalogue& catalogue, const Measures& measures, const Parts& parts, const Posterior& posterior);

// Nothing brings worth_bits.
bool nothing_worth_measuring(const std::vector<NextMeasurement>& next);

}  // namespace shaftcut::identifying
