// Whether what was measured can be true at all, and what of it is doubtful.
#include "checks/consistency_parts.hpp"

namespace shaftcut {
namespace {

void contradict(Findings& found, const StatedFigure& one, Relation is, const StatedFigure& than)
{
    found.contradictions.emplace_back(Contradicting{one, is, than});
}

// Ranges of a machine's geometry need not contain each other; positions that were measured do.
void compare_measured_ranges(Findings& found, const FitReading& reading)
{
    const auto both_measured = [&](Range a, Range b) { return reading.longest[a] && reading.longest[b] && reading.fit.longest[a] && reading.fit.longest[b]; };
    const auto compare = [&](Range range, Relation is, bool contradicts) {
        if (contradicts) contradict(found, longest_figure(reading.fit, range), is, longest_figure(reading.fit, Range::turning));
    };
    const auto& longest = reading.fit.longest;
    if (both_measured(Range::working, Range::turning))
        compare(Range::working, Relation::more, clearly_above(longest[Range::working]->value, longest[Range::turning]->value));
    if (both_measured(Range::standing, Range::turning))
        compare(Range::standing, Relation::less, clearly_below(longest[Range::standing]->value, longest[Range::turning]->value));
}

void compare_lengths_of_fit(Findings& found, const FitReading& reading)
{
    const Fit& fit = reading.fit;
    if (!fit.shortest) return;
    const StatedFigure shortest{FigureOf::shortest, fit.shortest->value, fit.shortest_place};
    for (const Range range : all_ranges)
        if (fit.longest[range] && clearly_below(fit.longest[range]->value, shortest.length))
            contradict(found, longest_figure(fit, range), Relation::less, shortest);
    compare_measured_ranges(found, reading);
}

void compare_angles(Findings& found, const JobFit& fit)
{
    for (const End end : both_ends) {
        const auto& working = fit.angles[end][Range::working];
        const auto& turning = fit.angles[end][Range::turning];
        if (!working || !turning || *working <= *turning) continue;
        found.contradictions.emplace_back(AnglesContradict{end, *working, *turning, fit.angle_places[end]});
    }
}

// What an earlier sheet kept of a half is more than its seat and, as saw and tapes read it, no more than the half itself.
void compare_cut_to(Findings& found, const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    if (!half.cut_to || !half.length) return;
    const StatedFigure kept{FigureOf::cut_to, *half.cut_to, {}, tube};
    if (clearly_below(half.length->value + saw_and_two_readings(half.length->plus_minus, input.saw), kept.length)) contradict(found, half_figure(input, tube), Relation::less, kept);
    if (half.seat && !clearly_above(kept.length, *half.seat)) contradict(found, kept, Relation::not_more, {FigureOf::seat, *half.seat, {}});
}

void compare_halves(Findings& found, const CheckInput& input)
{
    const Shaft& shaft = input.reading.shaft;
    const StatedFigure closed = closed_figure(input);
    for (const Tube tube : both_tubes) {
        const Half& half = shaft.halves[tube];
        if (half.length && !clearly_below(half.length->value, closed.length))
            contradict(found, half_figure(input, tube), Relation::not_less, closed);
        if (half.guard && !clearly_below(half.guard->value, closed.length))
            contradict(found, guard_figure(half, tube, closed.place), Relation::not_less, closed);
        if (half.length && half.seat && !clearly_above(half.length->value, *half.seat))
            contradict(found, half_figure(input, tube), Relation::not_more, {FigureOf::seat, *half.seat, {}});
        compare_cut_to(found, input, tube);
    }
    if (!input.stops) return;
    const StatedFigure inner = half_figure(input, Tube::inner), outer = half_figure(input, Tube::outer);
    if (!clearly_below(closed.length, inner.length + outer.length)) found.contradictions.emplace_back(TubesDoNotMeet{closed, inner, outer});
}

void doubt_unbent(Findings& found, const CheckInput& input, const FitReading& fit)
{
    for (const UnbentReading& unbent : fit.unbent) {
        ReadInLine read{unbent.range, unbent.ends, unbent.at_limit_angles - fit.fit.longest[unbent.range]->value, {}};
        if (input.plan) read.overlap = input.plan->overlap_at(unbent.at_limit_angles);
        found.doubts.emplace_back(read);
    }
}

// A measurement wins; one that the machine cannot reach, or goes past, makes it or the geometry doubtful.
void doubt_disputed(Findings& found, const CheckInput& input, const FitReading& fit)
{
    for (const DisputedLength& one : fit.disputed) found.doubts.emplace_back(MachineDisagrees{input.fits.size() > 1 ? fit.tractor : "", one});
}

void doubt_loosened_limits(Findings& found, const CheckInput& input)
{
    for (const Limit limit : input.limits.loosened()) found.doubts.emplace_back(LimitLoosened{limit, input.limits[limit].value, input.limits[limit].workshop});
}

}  // namespace

StatedFigure longest_figure(const Fit& fit, Range range)
{
    return {FigureOf::longest, fit.longest[range]->value, fit.longest_places[range], Tube::inner, range};
}

StatedFigure closed_figure(const CheckInput& input)
{
    return {input.reading.has_wide_angle ? FigureOf::closed_between_inner_crosses : FigureOf::closed, input.reading.shaft.closed.value, input.reading.shaft.closed_place};
}

StatedFigure closed_as_stated(const CheckInput& input) { return {FigureOf::closed, input.reading.closed.value, input.reading.shaft.closed_place}; }

StatedFigure half_figure(const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    return {FigureOf::half, half.length->value, half.length_place.value_or(input.reading.shaft.closed_place), tube};
}

StatedFigure guard_figure(const Half& half, Tube tube, const Place& otherwise)
{
    return {FigureOf::guard_half, half.guard->value, half.guard_place.value_or(otherwise), tube};
}

Check check_consistency(const CheckInput& input)
{
    Findings found;
    for (const FitReading& fit : input.fits) {
        compare_lengths_of_fit(found, fit);
        doubt_disputed(found, input, fit);
        if (fit.unreadable) found.contradictions.emplace_back(LengthsUnreadable{*fit.unreadable});
        doubt_unbent(found, input, fit);
    }
    for (const JobFit& fit : input.job.fits) compare_angles(found, fit);
    find_out_of_bounds(found, input);
    compare_halves(found, input);
    compare_stops(found, input);
    find_readings_elsewhere(found, input);
    doubt_loosened_limits(found, input);
    Check check = passed(CheckId::consistency, CheckUnit::none);
    if (!found.doubts.empty()) check.result = CheckResult::warn;
    if (!found.contradictions.empty()) check.result = CheckResult::fail;
    check.contradictions = std::move(found.contradictions);
    check.findings = std::move(found.doubts);
    if (check.result == CheckResult::pass) check.findings.emplace_back(PlainFinding::lengths_agree);
    check.basis = {PlainBasis::geometry};
    return check;
}

}  // namespace shaftcut
