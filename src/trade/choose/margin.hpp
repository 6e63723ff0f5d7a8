// What a list of checks leaves, in figures. Private to its room.
#pragma once

#include "shaftcut/trade/choose/choose.hpp"

namespace shaftcut {

AllFigures figures_of(const std::vector<Check>& checks);
std::optional<Margin> least_margin(const std::vector<Check>& checks, const LimitsInForce& limits);
std::size_t count_warnings(const AllFigures& checks);

}  // namespace shaftcut
