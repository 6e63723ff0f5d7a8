// How far a shaft made to order may be pushed together and pulled apart.
#include <algorithm>

#include "build/build_trial.hpp"
#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

AtEither at_either(const BuildSetting& setting, Length telescoping)
{
    AtEither at;
    at[Reference::inner_cross] = telescoping;
    at[Reference::outer_cross] = telescoping + setting.ordered.shaft.spacing[End::tractor] + setting.ordered.shaft.spacing[End::implement];
    return at;
}

// What the overlap limit and the guards leave at the worst: two sawn lengths, and the measurement of the position itself.
Length longest_at(const BuildSetting& setting, const BuiltLengths& lengths, Range range)
{
    const Length doubt = 2 * setting.saw.plus_minus + setting.workshop.measuring_plus_minus;
    const Length halves = lengths.half[Tube::inner] + lengths.half[Tube::outer];
    Length longest = halves - least_overlap(setting.limits, range, halves - lengths.closed) - doubt;
    const auto& inner = lengths.guard_half[Tube::inner];
    const auto& outer = lengths.guard_half[Tube::outer];
    if (inner && outer) longest = std::min(longest, *inner + *outer - setting.limits.length(Limit::guard_overlap) - doubt);
    return longest;
}

}  // namespace

OrderedUse ordered_use(const BuildSetting& setting)
{
    OrderedUse use;
    if (setting.fit.shortest) use.shortest = at_either(setting, setting.fit.shortest->value);
    for (const Range range : all_ranges)
        if (const auto& longest = setting.fit.longest[range]) use.longest[range] = at_either(setting, longest->value);
    return use;
}

UseRange use_range(const BuildSetting& setting, const BuiltLengths& lengths)
{
    const Length shortest = lengths.closed + setting.limits.length(Limit::closing_clearance);
    UseRange use;
    use.shortest = at_either(setting, shortest);
    // A working position turns and a turning one stands now and then: no range may be longer than the next.
    Length longest = longest_at(setting, lengths, Range::standing);
    for (const Range range : {Range::standing, Range::turning, Range::working}) {
        longest = std::min(longest, longest_at(setting, lengths, range));
        if (longest <= Length()) continue;
        const Length stepped = round_down_to_step(longest, setting.saw.step_um);
        if (!clearly_below(stepped, shortest)) use.longest[range] = at_either(setting, stepped);
    }
    return use;
}

}  // namespace shaftcut
