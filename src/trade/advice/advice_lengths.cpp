// The way out of a refusal for lengths: other positions for this shaft, or another shaft for these positions, each figure
// found by running the same rules on it.
#include <algorithm>

#include "advice/advice_parts.hpp"

namespace shaftcut {

namespace {

bool any_length_failed(const std::vector<Check>& checks)
{
    return std::any_of(checks.begin(), checks.end(), [](const Check& check) { return check.result == CheckResult::fail && rule_of(check.id).mended_by_lengths; });
}

// Another shaft or other positions, tried by the same rules.
struct Trial {
    bool serves = false;
    bool cuts = false;
};

Trial try_lengths(const CheckInput& input, const Shaft& shaft, const Fit& fit)
{
    ShaftReading reading = input.reading;
    reading.shaft = shaft;
    const std::optional<Stops> stops = stops_of(shaft);
    const auto plan = plan_cut(shaft, stops, fit.shortest, input.limits.length(Limit::closing_clearance), input.saw);
    if (!plan) return {};
    const CheckInput trial{input.job, input.catalogue, input.series, input.limits, input.saw, reading, input.fits, fit, stops, plan};
    const std::vector<Check> checks = run_checks(trial);
    return {!any_length_failed(checks) && !failed(checks, CheckId::consistency), !nothing_to_cut(*plan)};
}

// At which cross a closed length runs, where that makes a difference.
std::optional<Reference> named(const CheckInput& input, Reference reference) { return input.reading.has_wide_angle ? std::optional(reference) : std::nullopt; }

// The shoulders of a new shaft: its series' own, else those of this shaft.
bool set_new_shoulders(const CheckInput& input, Shaft& shaft)
{
    for (const Tube tube : both_tubes) {
        auto& shoulder = shaft.halves[tube].shoulder;
        if (!input.series) shoulder = Toleranced{input.stops->shoulder[tube], input.reading.shaft.closed.plus_minus};
        else if (const auto& known = input.series->halves[tube].shoulder) shoulder = Toleranced{*known, input.reading.shaft.closed.plus_minus};
        else return false;
        shaft.halves[tube].series_shoulder.reset();
        shaft.halves[tube].shoulder_place.reset();
    }
    return true;
}

// A new shaft of this series, or of this shaft's own stops, whose halves and guards follow from its closed length. It will
// be measured as well as this one was, halves and guards too.
std::optional<Shaft> new_shaft(const CheckInput& input, Length closed)
{
    Shaft shaft = input.reading.shaft;
    if (!set_new_shoulders(input, shaft)) return std::nullopt;
    const Length plus_minus = shaft.closed.plus_minus;
    shaft.closed.value = closed;
    const Length setback = input.limits.length(Limit::guard_setback_new);
    for (const Tube tube : both_tubes) {
        Half& half = shaft.halves[tube];
        half.lubrication_hole.reset();
        half.cut_to.reset();
        half.measured = true;
        half.guard_used = true;
        half.length = Toleranced{closed - shaft.halves[other(tube)].shoulder->value, plus_minus};
        Length guard = half.length->value - setback;
        if (const auto& face = shaft.halves[other(tube)].guard_shoulder) guard = std::min(guard, closed - *face);
        half.guard = Toleranced{guard, plus_minus};
        if (half.length->value <= Length() || guard <= Length()) return std::nullopt;
    }
    return shaft;
}

// Of a fit that is read, its longest turning is always known.
Length least_longest(const CheckInput& input) { return least_longest(input.fits).value(); }

Fit with_shortest(Fit fit, Length shortest)
{
    fit.shortest->value = shortest;
    return fit;
}

std::optional<LongestServed> longest_served(const CheckInput& input, const Check& check, Range range)
{
    if (check.result != CheckResult::fail) return std::nullopt;
    const Length greatest = input.plan->half[Tube::inner] + input.plan->half[Tube::outer] - Length::micrometres(*check.limit);
    LongestServed way{range, std::nullopt, !nothing_to_cut(*input.plan), input.reading.has_wide_angle};
    if (!clearly_below(greatest, input.fit.shortest->value)) way.longest = greatest;
    return way;
}

Trial try_shortest(const CheckInput& input, Length shortest)
{
    return try_lengths(input, input.reading.shaft, with_shortest(input.fit, shortest));
}

std::optional<Length> shortest_that_serves(const CheckInput& input)
{
    return least_serving(input.fit.shortest->value, least_longest(input), [&](Length shortest) { return try_shortest(input, shortest).serves; });
}

WayOut shortest_served(const CheckInput& input, std::optional<Length> least)
{
    if (!least) return Remedy::raise_shortest_in_vain;
    return ShortestServed{*least, input.fit.shortest->value, try_shortest(input, *least).cuts, input.fits.size() > 1, input.reading.has_wide_angle};
}

// A new shaft is tried without a lubrication hole, for where it would be is not known.
bool must_pass_holes(const CheckInput& input)
{
    const auto& halves = input.reading.shaft.halves;
    return halves[Tube::inner].lubrication_hole || halves[Tube::outer].lubrication_hole;
}

// Which of the series' own closed lengths serve as they are or after a cut.
std::optional<SeriesLengths> series_lengths(const CheckInput& input)
{
    if (!input.series || input.series->closed_lengths.empty()) return std::nullopt;
    const Length spacing = input.reading.closed_at[Reference::outer_cross] - input.reading.closed_at[Reference::inner_cross];
    const Reference reference = input.series->wide_angle_reference.value_or(usual_reference(input.series->shape).value_or(Reference::inner_cross));
    SeriesLengths way{input.series->name, named(input, reference), {}, {}, must_pass_holes(input)};
    for (const Length closed : input.series->closed_lengths) {
        const auto shaft = new_shaft(input, reference == Reference::outer_cross ? closed - spacing : closed);
        if (!shaft) continue;
        const Trial trial = try_lengths(input, *shaft, input.fit);
        if (trial.serves) (trial.cuts ? way.after_cut : way.as_is).push_back(closed);
    }
    return way;
}

// The longest shaft that still closes with its clearance at this shortest, and at the worst with some, to the saw's step: no
// other of the same shoulders has more overlap.
std::optional<Shaft> longest_shaft(const CheckInput& input, Length shortest)
{
    const Length doubt = input.fit.shortest->plus_minus + input.reading.shaft.closed.plus_minus;
    const Length room = shortest - std::max(input.limits.length(Limit::closing_clearance), doubt + negligible);
    if (room <= Length()) return std::nullopt;
    auto shaft = new_shaft(input, room);
    if (!shaft) return shaft;
    for (const Tube tube : both_tubes) {
        Length& half = shaft->halves[tube].length->value;
        const Length sawn = round_down_to_step(half, input.saw.step_um);
        shaft->halves[tube].guard->value -= half - sawn;
        half = sawn;
    }
    const Half& inner = shaft->halves[Tube::inner];
    const Half& outer = shaft->halves[Tube::outer];
    shaft->closed.value = std::max(inner.length->value + outer.shoulder->value, outer.length->value + inner.shoulder->value);
    return shaft;
}

WayOut shaft_to_order(const CheckInput& input, std::optional<Length> least_of_this_shaft)
{
    const Length asked = input.fit.shortest->value;
    const auto shaft = longest_shaft(input, asked);
    if (shaft && try_lengths(input, *shaft, input.fit).serves)
        return NewShaft{shaft->closed.value + input.reading.closed_at[input.reading.reference] - input.reading.shaft.closed.value, named(input, input.reading.reference), must_pass_holes(input)};
    NoNewShaft none{input.series ? input.series->name : "", std::nullopt, false, input.reading.has_wide_angle};
    const auto least = least_serving(asked, least_longest(input), [&](Length shortest) {
        const auto longer = longest_shaft(input, shortest);
        return longer && try_lengths(input, *longer, with_shortest(input.fit, shortest)).serves;
    });
    none.raised_in_vain = !least;
    if (least && (!least_of_this_shaft || *least_of_this_shaft > *least)) none.shortest = least;
    return none;
}

// The worst-known of all longest lengths is taken: any of them may become the greatest.
Length greatest_doubt(const CheckInput& input)
{
    Length greatest;
    for (const FitReading& fit : input.fits)
        for (const Range range : all_ranges)
            if (const auto& longest = fit.fit.longest[range]) greatest = std::max(greatest, longest->plus_minus);
    return greatest;
}

// A longest that the guards would still cover at the worst; none where one of them would be cut away, however long the shaft is drawn.
GuardsReach guards_reach(const CheckInput& input, const Check& cover)
{
    GuardsReach way{std::nullopt, input.reading.has_wide_angle};
    if (std::any_of(cover.findings.begin(), cover.findings.end(), [](const CheckFinding& found) { return std::holds_alternative<GuardCutAway>(found); })) return way;
    Length reach = -greatest_doubt(input);
    for (const Tube tube : both_tubes) {
        reach += *input.plan->guard_half[tube] - input.reading.shaft.halves[tube].guard->plus_minus;
        if (input.plan->cuts_guard(tube)) reach -= input.saw.plus_minus;
    }
    if (!clearly_below(reach, input.fit.shortest->value)) way.longest = reach;
    return way;
}

}  // namespace

std::vector<WayOut> length_ways(const CheckInput& input, const std::vector<Check>& checks)
{
    std::vector<WayOut> ways;
    if (!any_length_failed(checks)) return ways;
    if (failed(checks, CheckId::closing_clearance)) ways.emplace_back(Remedy::measure_more_exactly);
    for (const Range range : all_ranges)
        if (const auto way = longest_served(input, check_of(checks, overlap_check_id(range)), range)) ways.emplace_back(*way);
    if (failed(checks, CheckId::guard_cover)) ways.emplace_back(guards_reach(input, check_of(checks, CheckId::guard_cover)));
    const auto least = shortest_that_serves(input);
    ways.push_back(shortest_served(input, least));
    const WayOut to_order = shaft_to_order(input, least);
    const auto stocked = series_lengths(input);
    const bool none_stocked = stocked && stocked->as_is.empty() && stocked->after_cut.empty();
    // Where no shaft of the series would serve, none of its closed lengths does.
    if (stocked && !(none_stocked && std::holds_alternative<NoNewShaft>(to_order))) ways.emplace_back(*stocked);
    ways.push_back(to_order);
    return ways;
}

}  // namespace shaftcut
