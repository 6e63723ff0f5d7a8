// Which of several fits' figures decides, where the machine's geometry gave it.
#pragma once

#include <vector>

#include "shaftcut/trade/cut/datum.hpp"

namespace shaftcut {

// The figure of the deciding fit where that one computed it, else null: the decided figure was measured, or is not known.
const ExtremeLength* deciding_shortest(const std::vector<FitReading>& fits, const Fit& deciding);
const ExtremeLength* deciding_longest(const std::vector<FitReading>& fits, const Fit& deciding, Range range);
const ExtremeAngle* deciding_angle(const std::vector<FitReading>& fits, const Fit& deciding, End end, Range range);

}  // namespace shaftcut
