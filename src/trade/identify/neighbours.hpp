// Which series' guards are most likely to fit another's tubes.
#pragma once

#include <cstddef>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"

namespace shaftcut::identifying {

// Of each series the few (near_series at most) whose guards fit best: of the same shape, with the nearest outer tube (where that is not stated, the inner one), by name
// where those are equally near; of other shapes where there are too few of the same.
std::vector<std::vector<std::size_t>> neighbours(const Catalogue& catalogue);

}  // namespace shaftcut::identifying
