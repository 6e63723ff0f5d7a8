#include "build/build_trial.hpp"

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

JobShaft with_closed(const BuildOrder& order)
{
    JobShaft shaft = order.shaft;
    shaft.closed = order.closed.value_or(Measurement{});
    return shaft;
}

// Nothing is sawn off a new shaft.
CutPlan as_built(const BuiltLengths& lengths)
{
    CutPlan plan;
    plan.half = lengths.half;
    plan.guard_half = lengths.guard_half;
    for (const Tube tube : both_tubes) plan.guard_cut[tube] = Length();
    plan.closed = lengths.closed;
    return plan;
}

// A shaft for which no halves are known must not be compared by halves that follow from a closed length of nothing.
ShaftReading without_halves(ShaftReading reading)
{
    for (const Tube tube : both_tubes) {
        reading.shaft.halves[tube].length.reset();
        reading.shaft.halves[tube].guard.reset();
    }
    return reading;
}

// Nobody says how far it must reach; but pushed together to its clearance it must still be allowed to turn.
Check turning_at_least(const CheckInput& input)
{
    const CutPlan& plan = *input.plan;
    const Length shortest = plan.closed + input.limits.length(Limit::closing_clearance);
    const Length limit = least_overlap(input.limits, Range::turning, plan.overlap_at(plan.closed));
    const Length value = plan.overlap_at(shortest);
    if (!clearly_below(value, limit)) return not_checked(CheckId::overlap_turning, PlainReason::only_closed_ordered);
    Check check = length_check(CheckId::overlap_turning, value, std::nullopt, limit);
    check.result = CheckResult::fail;
    check.findings = {NeverLongEnough{shortest, value, limit}};
    check.basis = {PlainBasis::overlap_at_clearance, input.limits.basis(Limit::closing_clearance)};
    return check;
}

NotCheckedReason why_no_lengths(const BuildSetting& setting)
{
    if (setting.unstated.empty()) return PlainReason::shortest_unreadable;
    return NotInCatalogue{setting.unstated};
}

// A check as it is for this order: without a guard, without halves, or without any position to reach.
Check for_order(const BuildSetting& setting, const CheckInput& input, Check check)
{
    const CheckRule& rule = rule_of(check.id);
    if (rule.about_guard && !setting.order.guard) return not_checked(check.id, PlainReason::ordered_without_guard);
    if (!input.plan) return rule.needs_lengths ? not_checked(check.id, why_no_lengths(setting)) : check;
    if (!setting.order.closed) return check;
    if (check.id == CheckId::overlap_turning) return turning_at_least(input);
    return rule.needs_positions && check.result == CheckResult::not_checked ? not_checked(check.id, PlainReason::only_closed_ordered) : check;
}

Job job_of(const BuildSetting& setting, const JobShaft& finished)
{
    Job job{setting.order, {}, {}, {}};
    job.shaft = finished;
    job.fits = setting.job_fits;
    return job;
}

Measurement sawn(const BuildOrder& order, Length length, Length saw_plus_minus)
{
    return {length, saw_plus_minus, order.closed ? order.closed->place : order.place};
}

}  // namespace

JobShaft finished_shaft(const BuildOrder& order, const Series& series, const BuiltLengths& lengths, Length saw_plus_minus)
{
    const ShaftReading ordered = read_shaft(with_closed(order), all_of(&series), Length());
    JobShaft shaft = order.shaft;
    const Length beyond = ordered.closed_at[ordered.reference] - ordered.closed_at[Reference::inner_cross];
    shaft.closed = sawn(order, lengths.closed + beyond, saw_plus_minus);
    shaft.closed_reference = ordered.reference;
    for (const Tube tube : both_tubes) {
        shaft.halves[tube].length = sawn(order, lengths.half[tube], saw_plus_minus);
        if (const auto& guard = lengths.guard_half[tube]) shaft.halves[tube].guard = sawn(order, *guard, saw_plus_minus);
    }
    return shaft;
}

BuildSetting build_setting(const BuildOrder& order, const Catalogue& catalogue, const Workshop& workshop, Units units, const Series& series, std::vector<FitReading> fits)
{
    BuildSetting setting{order, catalogue, workshop, units, series, LimitsInForce(order.limits, series.limits, workshop.limits),
                         saw_settings(workshop.saw, units), {}, {}, std::move(fits), {}, {}};
    const JobShaft shaft = with_closed(order);
    setting.ordered = read_shaft(shaft, all_of(&series), workshop.measuring_plus_minus);
    setting.job_fits = order.fits.empty() ? std::vector<JobFit>(1) : order.fits;
    if (setting.fits.empty())
        for (const JobFit& fit : setting.job_fits)
            setting.fits.push_back(read_fit(fit, shaft, all_of(&series), setting.ordered, setting.limits, workshop.measuring_plus_minus));
    setting.fit = deciding_fit(setting.fits);
    setting.unstated = unstated_for_building(series, order);
    return setting;
}

BuildSetting build_setting(const BuildOrder& order, const Catalogue& catalogue, const Workshop& workshop, Units units, const Series& series)
{
    return build_setting(order, catalogue, workshop, units, series, {});
}

std::optional<Length> room_of(const BuildSetting& setting, const Fit& fit)
{
    if (!setting.unstated.empty()) return std::nullopt;
    if (setting.order.closed) return setting.ordered.shaft.closed.value;
    if (!fit.shortest) return std::nullopt;
    return fit.shortest->value - setting.limits.length(Limit::closing_clearance);
}

BuildTrial try_building(const BuildSetting& setting, const Fit& fit, std::optional<Length> room)
{
    BuildTrial trial;
    trial.shaft = setting.order.shaft;
    trial.reading = without_halves(setting.ordered);
    std::optional<Stops> stops;
    if (room) {
        trial.lengths = build_lengths(setting.series, setting.order, *room, setting.limits.length(Limit::guard_setback_new), setting.saw.step_um);
        trial.shaft = finished_shaft(setting.order, setting.series, *trial.lengths, setting.saw.plus_minus);
        trial.reading = read_shaft(trial.shaft, all_of(&setting.series), setting.workshop.measuring_plus_minus);
        stops = stops_of(trial.reading.shaft);
        trial.as_built = as_built(*trial.lengths);
    }
    const Job job = job_of(setting, trial.shaft);
    const CheckInput input{job, setting.catalogue, &setting.series, setting.limits, setting.saw, trial.reading, setting.fits, fit, stops, trial.as_built, true};
    for (Check& check : run_checks(input)) trial.checks.push_back(for_order(setting, input, std::move(check)));
    return trial;
}

}  // namespace shaftcut
