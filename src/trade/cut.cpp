#include "shaftcut/trade/cut.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// Nothing comes off where the step rounds the need to nothing; a sliver thinner than the blade cannot be sawn.
Length sawn(Length needed, const SawSettings& saw)
{
    const Length stepped = round_up_to_step(needed, saw.step_um);
    return stepped == Length() ? stepped : std::max(stepped, saw.least_cut);
}

// max(a + s_B, b + s_A)
Length closed_over(const PerEach<Tube, Length>& half, const PerEach<Tube, Length>& shoulder)
{
    return std::max(half[Tube::inner] + shoulder[Tube::outer], half[Tube::outer] + shoulder[Tube::inner]);
}

// Whether the guards' own closed length max(g_A + r_B, g_B + r_A) is C within their tolerances.
bool guards_stop_at(const Shaft& shaft)
{
    std::optional<Length> guards_closed;
    Length allowance = shaft.closed.plus_minus;
    for (const Tube tube : both_tubes) {
        const auto& guard = shaft.halves[tube].guard;
        const auto& face = shaft.halves[other(tube)].guard_shoulder;
        if (!guard || !face) return false;
        guards_closed = std::max(guards_closed.value_or(guard->value + *face), guard->value + *face);
        allowance += guard->plus_minus;
    }
    const Length difference = shaft.closed.value - *guards_closed;
    return !clearly_above(difference, allowance) && !clearly_below(difference, -allowance);
}

// The shoulders as known, or as they are when both tubes stop together: s_B = C − a.
PerEach<Tube, Length> first_shoulders(const Shaft& shaft)
{
    PerEach<Tube, Length> shoulder;
    for (const Tube tube : both_tubes)
        shoulder[tube] = shaft.halves[tube].shoulder.value_or(shaft.closed.value - shaft.halves[other(tube)].length->value);
    return shoulder;
}

void reconcile(Stops& stops, const Shaft& shaft)
{
    const Length difference = shaft.closed.value - stops.modelled;
    const bool above = clearly_above(difference, stops.allowance);
    const bool below = clearly_below(difference, -stops.allowance);
    if (above && guards_stop_at(shaft)) {
        stops.agreement = ClosedAgreement::guards_stop;
        return;
    }
    stops.agreement = above ? ClosedAgreement::longer : below ? ClosedAgreement::shorter : ClosedAgreement::agrees;
    for (const Tube tube : both_tubes) {
        Length& shoulder = stops.shoulder[tube];
        const Length greatest = shaft.closed.value - shaft.halves[other(tube)].length->value;
        if (above) shoulder = greatest;
        else if (below) shoulder = std::min(shoulder, greatest);
        else shoulder = shaft.halves[tube].shoulder ? shoulder + difference : greatest;
    }
}

Length guard_cut(const Shaft& shaft, Tube tube, const CutPlan& plan, Length target, const SawSettings& saw)
{
    const auto& guard = shaft.halves[tube].guard;
    if (!guard) return plan.cut[tube];
    const auto& face = shaft.halves[other(tube)].guard_shoulder;
    // Without a known face no guard is left longer than its tube.
    const Length too_long = face ? guard->value + *face - target : guard->value - plan.half[tube];
    return sawn(std::max(plan.cut[tube], too_long), saw);
}

}  // namespace

std::optional<Stops> stops_of(const Shaft& shaft)
{
    const auto& halves = shaft.halves;
    if (!halves[Tube::inner].length || !halves[Tube::outer].length) return std::nullopt;
    Stops stops;
    stops.shoulder = first_shoulders(shaft);
    PerEach<Tube, Length> length;
    stops.allowance = shaft.closed.plus_minus;
    for (const Tube tube : both_tubes) {
        length[tube] = halves[tube].length->value;
        stops.allowance += halves[tube].length->plus_minus;
    }
    stops.modelled = closed_over(length, stops.shoulder);
    reconcile(stops, shaft);
    return stops;
}

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
        plan.cut[tube] = sawn(length + stops->shoulder[other(tube)] - target, saw);
        plan.half[tube] = length - plan.cut[tube];
    }
    plan.closed = closed_over(plan.half, stops->shoulder);
    for (const Tube tube : both_tubes) {
        plan.sets_closed[tube] = !clearly_below(plan.half[tube] + stops->shoulder[other(tube)], plan.closed);
        plan.guard_cut[tube] = guard_cut(shaft, tube, plan, target, saw);
        if (const auto& guard = shaft.halves[tube].guard) plan.guard_half[tube] = guard->value - plan.guard_cut[tube];
    }
    return plan;
}

bool nothing_to_cut(const CutPlan& plan)
{
    return std::all_of(both_tubes.begin(), both_tubes.end(),
                       [&](Tube tube) { return plan.cut[tube] == Length() && plan.guard_cut[tube] == Length(); });
}

}  // namespace shaftcut
