// What the catalogue's listing remarks of series that no measurement tells apart.
#pragma once

#include <string>

#include "shaftcut/trade/identify/look_alikes.hpp"
#include "wording.hpp"

namespace shaftcut {

// Lines, each ended: under one heading those that nothing tells apart, under another those that only a wide-angle joint does, each series once with
// those behind it in the catalogue. Empty where there are none.
std::string look_alike_lines(const LookAlikes& found, const Catalogue& catalogue, const Wording& w);

}  // namespace shaftcut
