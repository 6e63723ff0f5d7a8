#include "condition_reader.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

bool is_stated(const JobHalf& half) { return half.guard || half.guard_use != GuardUse::kept; }

}  // namespace

ConditionReading read_condition(Element& element)
{
    const Attribute guard = element.optional("guard");
    Condition condition;
    condition.place = element.place();
    condition.guard = guard.word<Completeness>();
    condition.chains = element.optional("chains").word<Completeness>();
    condition.crosses = element.optional("crosses").word<CrossWear>();
    condition.tubes = element.optional("tubes").word<TubeState>();
    condition.locks = element.optional("locks").word<LockState>();
    condition.weld = element.optional("weld").word<Weld>();
    condition.device = element.optional("device").word<DeviceState>();
    condition.phase = element.optional("phase").word<Phase>();
    condition.slides = element.optional("slides").word<Slides>();
    return {condition, guard};
}

void check_guards(const ConditionReading& reading, const PerEach<Tube, JobHalf>& halves)
{
    const auto& guard = reading.condition.guard;
    for (const Tube tube : both_tubes)
        if (guard == Completeness::complete && halves[tube].guard_use != GuardUse::kept)
            reading.guard.fault(GuardIncomplete{tube, halves[tube].guard_use});
    const auto is_there = [&](Tube tube) { return is_stated(halves[tube]) && halves[tube].guard_use != GuardUse::none; };
    if (guard == Completeness::missing && std::all_of(both_tubes.begin(), both_tubes.end(), is_there))
        reading.guard.fault(Contradiction::guard_missing_but_stated);
}

}  // namespace shaftcut
