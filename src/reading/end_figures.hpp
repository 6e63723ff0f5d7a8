// Which ends of a shaft state their joint's figures themselves. Private to the reading layer.
#pragma once

#include "shaftcut/trade/data/job.hpp"

namespace shaftcut {

// The end's half is of another series than the shaft, or of none, or the shaft is of no series.
inline bool has_own_figures(const JobShaft& shaft, End end) { return !shaft.series || shaft.halves[tube_on(shaft, end)].series; }

}  // namespace shaftcut
