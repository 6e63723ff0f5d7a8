// What is read of the shaft after the saw, and what is done with it on its machine.
#include <algorithm>

#include "order/steps_parts.hpp"
#include "shaftcut/trade/order/expected_after_cut.hpp"

namespace shaftcut::steps {
namespace {

// Four published texts; from memory also EN ISO 4254-1 and EN 12965.
constexpr Length shields_over_guard = Length::millimetres(50);

using Tasks = std::vector<Task>;

Expected beyond(const Expected& closed, Length more) { return {closed.value + more, closed.least + more, closed.most + more}; }

CloseDry close_dry(const WorkOrder& order, const Expected& closed)
{
    if (!order.reading.has_wide_angle) return {std::nullopt, closed, std::nullopt};
    const auto& at = order.cut->closed_at;
    const Reference stated = order.reading.reference, other = stated == Reference::inner_cross ? Reference::outer_cross : Reference::inner_cross;
    const Expected here = beyond(closed, at[stated] - at[Reference::inner_cross]);
    return {stated, here, here.most + at[other] - at[stated]};
}

StandsOut stands_out(const WorkOrder& order, const ExpectedAfterCut& after)
{
    StandsOut task{after.stands_out, order.limits.length(Limit::guard_setback), {}};
    for (const Tube tube : both_tubes) task.used[tube] = guard_is_used(order.shaft, tube);
    return task;
}

bool every_guard_used(const WorkOrder& order) { return guard_is_used(order.shaft, Tube::inner) && guard_is_used(order.shaft, Tube::outer); }

// What may come off a guard that stops the shaft: the cover that is left at worst.
std::optional<Length> guard_to_spare(const WorkOrder& order)
{
    const auto& worst = check_of(order.checks, CheckId::guard_cover).worst;
    return worst ? std::optional(std::max(Length(), Length::micrometres(*worst))) : std::nullopt;
}

// What one step out of phase would do, of two standard joints on the first machine. On some machines it is not more.
// A joint that could not turn at all has no ripple.
std::optional<Ripple> ripple(const WorkOrder& order)
{
    for (const End end : both_ends)
        if (order.shaft.ends[end].joint == JointKind::wide_angle) return std::nullopt;
    for (const FitReading& fit : order.fits) {
        if (!fit.geometry || !fit.geometry->lengths.irregularity || !fit.geometry->lengths.irregularity_out_of_phase) continue;
        const auto &in_phase = fit.geometry->lengths.irregularity->percent, &out = fit.geometry->lengths.irregularity_out_of_phase->percent;
        return in_phase && out ? std::optional(Ripple{*in_phase, *out, fit.geometry->shaft.phase_step}) : std::nullopt;
    }
    return std::nullopt;
}

bool needs_second_chain(const WorkOrder& order)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        const auto& features = order.reading.shaft.halves[tube].features;
        const bool one_chain = std::find(features.begin(), features.end(), Feature::one_chain_guard) != features.end();
        return one_chain && clearly_above(order.cut->plan.guard_cut[tube].value_or(Length()), order.limits.length(Limit::one_chain_shortening));
    });
}

// Where the fit that decides has its shortest, or its longest of a range.
ReadRings position(const WorkOrder& order, std::optional<Range> longest, const OnRings& rings)
{
    const Toleranced& decided = longest ? *order.fit.longest[*longest] : *order.fit.shortest;
    ReadRings found{longest, decided.value, std::nullopt, "", "", std::nullopt, rings};
    for (const FitReading& fit : order.fits) {
        const auto& length = longest ? fit.fit.longest[*longest] : fit.fit.shortest;
        if (!length || length->value != decided.value) continue;
        if (order.fits.size() > 1) found.tractor = fit.tractor;
        found.at = longest ? fit.longest_at[*longest] : fit.shortest_at;
        const ExtremeLength* computed = longest ? fit.computed_longest(*longest) : fit.computed_shortest();
        if (computed) found.posture = computed->at;
        break;
    }
    if (order.reading.has_wide_angle) found.from = Reference::inner_cross;
    return found;
}

void add_positions(std::vector<Step>& steps, const WorkOrder& order, const ExpectedAfterCut& after)
{
    add(steps, 14, {position(order, std::nullopt, after.shortest)});
    Tasks longest;
    for (const Range range : {Range::turning, Range::standing})
        if (const auto& rings = after.longest[range]) longest.emplace_back(position(order, range, *rings));
    if (!after.longest[Range::standing]) longest.emplace_back(StandingNotMeasured{});
    add(steps, 15, longest);
}

Tasks last_tasks(const WorkOrder& order)
{
    Tasks tasks{needs_second_chain(order) ? PlainTask::fit_second_chain : PlainTask::hook_chains, PlainTask::turn_by_hand};
    if (order.fits.size() > 1) tasks.emplace_back(PlainTask::try_every_tractor);
    tasks.emplace_back(PlainTask::sign_and_hand_out);
    return tasks;
}

}  // namespace

void add_reading_steps(std::vector<Step>& steps, const WorkOrder& order)
{
    const ExpectedAfterCut after = expected_after_cut(order);
    add(steps, 9, {close_dry(order, after.closed)});
    if (cuts_a_tube(order)) add(steps, 10, {KeptTubes{after.half}});
    Tasks guards;
    if (!every_guard_used(order)) guards.emplace_back(PlainTask::fit_new_guard);
    guards.insert(guards.end(), {PlainTask::grease_and_guards_on, stands_out(order, after)});
    add(steps, 11, guards);
}

void add_machine_steps(std::vector<Step>& steps, const WorkOrder& order)
{
    const bool parted = std::any_of(steps.begin(), steps.end(), [](const Step& step) { return step.number == 3 || step.number == 4; });
    Tasks close{parted ? PlainTask::together : PlainTask::push_home};
    if (const auto found = ripple(order)) close.emplace_back(*found);
    if (order.verdict == Verdict::cut) close.emplace_back(CloseGreased{overall_apart, guard_to_spare(order)});
    close.emplace_back(PlainTask::two_rings);
    if (order.verdict == Verdict::fits && !every_guard_used(order)) close.insert(close.begin(), PlainTask::fit_new_guard);
    add(steps, 12, close);
    Tasks couple;
    if (!order.circumstances.machine_here) couple.emplace_back(PlainTask::go_to_machine);
    couple.emplace_back(Couple{shields_over_guard});
    add(steps, 13, couple);
    add_positions(steps, order, expected_after_cut(order));
    add(steps, 16, last_tasks(order));
}

}  // namespace shaftcut::steps
