// Whether a half's guard goes back on, and what comes off it if so.
#pragma once

#include <optional>

#include "shaftcut/trade/cut.hpp"
#include "shaftcut/trade/job.hpp"

namespace shaftcut {

bool guard_is_used(const JobShaft& shaft, Tube tube);

// Nothing for a guard that is not used again.
std::optional<Length> guard_cut_of(const CutPlan& plan, const JobShaft& shaft, Tube tube);

}  // namespace shaftcut
