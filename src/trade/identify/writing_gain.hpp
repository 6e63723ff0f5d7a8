// What reading the guard's writing is expected to bring.
#pragma once

#include "identify/gain.hpp"
#include "identify/posterior.hpp"

namespace shaftcut::identifying {

// Outcomes: each name of the catalogue, and any other. By each series its own name and those of its few neighbours stand out, all others are alike: one pass.
Gain writing_gain(const Catalogue& catalogue, const Posterior& posterior);

}  // namespace shaftcut::identifying
