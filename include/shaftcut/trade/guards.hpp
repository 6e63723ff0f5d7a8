// Whether a half's guard goes back on, and what comes off it if so.
#pragma once

#include "shaftcut/trade/cut.hpp"
#include "shaftcut/trade/job.hpp"

namespace shaftcut {

inline bool guard_is_used(const JobShaft& shaft, Tube tube) { return shaft.halves[tube].guard_use == GuardUse::kept; }

// Nothing for a guard that is not used again.
inline std::optional<Length> guard_cut_of(const CutPlan& plan, const JobShaft& shaft, Tube tube)
{
    return guard_is_used(shaft, tube) ? std::optional<Length>(plan.guard_cut[tube]) : std::nullopt;
}

}  // namespace shaftcut
