#include "shaftcut/trade/cut/cut.hpp"

#include <algorithm>

#include "cut/sawn.hpp"

namespace shaftcut {
namespace {

// max(a + s_B, b + s_A)
Length closed_over(const PerEach<Tube, Length>& half, const PerEach<Tube, Length>& shoulder)
{
    return std::max(half[Tube::inner] + shoulder[Tube::outer], half[Tube::outer] + shoulder[Tube::inner]);
}

bool was_cut_so(const Half& half, const SawSettings& saw)
{
    return half.cut_to && !clearly_above(half.length->value, *half.cut_to + saw_and_two_readings(half.length->plus_minus, saw));
}

std::optional<Length> guard_cut(const Shaft& shaft, Tube tube, const CutPlan& plan, Length target, const SawSettings& saw)
{
    if (!shaft.halves[tube].guard_used) return std::nullopt;
    const auto& guard = shaft.halves[tube].guard;
    if (!guard) return plan.cut[tube];
    const auto& face = shaft.halves[other(tube)].guard_shoulder;
    const bool as_cut = plan.left_as_cut[tube];
    // Without a known face no guard is left longer than its tube.
    const Length too_long = face ? guard->value + *face - (as_cut ? std::max(target, plan.closed) : target) : guard->value - plan.half[tube];
    if (as_cut && !clearly_above(too_long, saw_and_two_readings(guard->plus_minus, saw))) return Length();
    return sawn(std::max(plan.cut[tube], too_long), saw);
}

// Q: the most that this half's path can be before the saw's own ±, with C and the shoulders as they were stated.
Length path_at_worst(const Shaft& shaft, const Stops& stops, Tube tube, bool cut)
{
    const Half& half = shaft.halves[tube];
    const auto& shoulder = shaft.halves[other(tube)].shoulder;
    const Length y = shaft.closed.value + shaft.closed.plus_minus;
    const Length u = half.length->plus_minus;
    if (!shoulder) return cut ? y + u : y;
    const Length x = half.length->value + shoulder->value + shoulder->plus_minus;
    if (stops.agreement != ClosedAgreement::agrees) return cut ? std::max(x, y) + u : std::max(y, x + u);
    return cut ? std::min(std::max(x, y), std::min(x, y) + u) : std::min(y, x + u);
}

}  // namespace

SawSettings saw_settings(const Saw& saw, Units units)
{
    const Fraction step = units == Units::in ? step_in_sixteenths(saw.step) : Fraction{saw.step.um(), 1};
    return {step, units == Units::in ? round_up_to_step(saw.least_cut, step) : saw.least_cut, saw.plus_minus};
}

std::optional<CutPlan> plan_cut(const Shaft& shaft, const std::optional<Stops>& stops, const std::optional<Toleranced>& shortest,
                                Length clearance, const SawSettings& saw)
{
    if (!stops || !shortest) return std::nullopt;
    const Length target = shortest->value - clearance;
    CutPlan plan;
    for (const Tube tube : both_tubes) {
        const Length length = shaft.halves[tube].length->value;
        plan.left_as_cut[tube] = was_cut_so(shaft.halves[tube], saw);
        plan.cut[tube] = plan.left_as_cut[tube] ? Length() : sawn(length + stops->shoulder[other(tube)] - target, saw);
        plan.half[tube] = length - plan.cut[tube];
    }
    plan.closed = closed_over(plan.half, stops->shoulder);
    for (const Tube tube : both_tubes) {
        plan.guard_cut[tube] = guard_cut(shaft, tube, plan, target, saw);
        if (const auto& guard = shaft.halves[tube].guard) plan.guard_half[tube] = guard->value - *plan.guard_cut[tube];
    }
    return plan;
}

Length saw_and_two_readings(Length plus_minus, const SawSettings& saw) { return saw.plus_minus + 2 * plus_minus; }

bool nothing_to_cut(const CutPlan& plan)
{
    return std::none_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return plan.cuts_tube(tube) || plan.cuts_guard(tube); });
}

Length closed_at_worst(const Shaft& shaft, const Stops& stops, const CutPlan& plan, const SawSettings& saw)
{
    const auto after = [&](Tube tube) {
        const bool cut = plan.cuts_tube(tube);
        return path_at_worst(shaft, stops, tube, cut) - plan.cut[tube] + (cut ? saw.plus_minus : Length());
    };
    return std::max(after(Tube::inner), after(Tube::outer));
}

}  // namespace shaftcut
