// Series between which nothing more decides.
#pragma once

#include <vector>

#include "identify/posterior.hpp"

namespace shaftcut::identifying {

// The pairs among the most probable series.
std::vector<NotToldApart> not_told_apart(const Catalogue& catalogue, const ShaftFigures& figures, const Posterior& posterior);

}  // namespace shaftcut::identifying
