// What the readings between the rings prove on the machine. Private to the order room.
#pragma once

#include "order/shaft_as_cut.hpp"

namespace shaftcut {

// One for each reading in a position that was taken. Nothing without P.
std::vector<RingsFinding> rings_findings(const Judged& judged, const MeasuredAfterCut& measured);

}  // namespace shaftcut
