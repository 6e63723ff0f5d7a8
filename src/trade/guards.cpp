#include "shaftcut/trade/guards.hpp"

namespace shaftcut {

bool guard_is_used(const JobShaft& shaft, Tube tube) { return shaft.halves[tube].guard_use == GuardUse::kept; }

std::optional<Length> guard_cut_of(const CutPlan& plan, const JobShaft& shaft, Tube tube)
{
    return guard_is_used(shaft, tube) ? std::optional<Length>(plan.guard_cut[tube]) : std::nullopt;
}

}  // namespace shaftcut
