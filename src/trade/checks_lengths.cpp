// The checks on clearance, overlaps and guards: each a difference of lengths, its worst case a linear sum of tolerances.
#include <algorithm>

#include "check_parts.hpp"
#include "shaftcut/trade/geometry_words.hpp"
#include "shaftcut/trade/slip_limits.hpp"

namespace shaftcut {
namespace {

// A shaft made to order by its closed length alone.
constexpr const char* no_shortest = "no shortest length is given";

// Overlap limits: least overlap at this range, as a length.
struct OverlapLimit {
    Length length;
    std::string words;
    std::string basis;
};

std::string fraction_text(const CheckInput& input, Limit limit)
{
    return limit_text(limit, input.limits[limit].value, input.units) + " of the new closed overlap";
}

OverlapLimit overlap_limit(const CheckInput& input, Range range, const CutPlan& plan)
{
    const Length closed_overlap = plan.overlap_at(plan.closed);
    const Length least_at_range = least_overlap(input.limits, range, closed_overlap);
    if (range == Range::standing)
        return {least_at_range, "the least with the PTO stopped", input.limits.basis(Limit::least_overlap_standing)};
    const Limit part = range == Range::working ? Limit::overlap_working : Limit::overlap_turning;
    OverlapLimit limit{least_at_range, fraction_text(input, part), input.limits.basis(part)};
    if (range == Range::working) return limit;
    const Length least = input.limits.length(Limit::least_overlap_turning);
    limit.basis += "; at least " + limit_text(input, least) + ": " + input.limits.basis(Limit::least_overlap_turning);
    if (least > fraction_of(input.limits.fraction(part), closed_overlap)) limit.words = "the least with the PTO turning";
    return limit;
}

// u_a + u_b + t for each half that is cut.
Length halves_tolerance(const CheckInput& input, const CutPlan& plan)
{
    Length sum;
    for (const Tube tube : both_tubes) {
        sum += input.reading.shaft.halves[tube].length->plus_minus;
        if (plan.cut[tube] != Length()) sum += input.saw.plus_minus;
    }
    return sum;
}


Check check_overlap(const CheckInput& input, Range range)
{
    const CheckId id = overlap_check_id(range);
    const std::string range_words = std::string("longest ") + to_word(range) + " length";
    if (!input.stops && range == Range::turning) {
        Check check = length_check(id, std::nullopt, std::nullopt, std::nullopt);
        check.result = CheckResult::fail;
        check.says = "The overlap cannot be known: the halves were not measured and no shoulders are known to derive them from.";
        check.basis = "overlap is inner half + outer half − length; without the halves it cannot be computed";
        return check;
    }
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    const bool known = input.fit.longest[range].has_value();
    const auto& longest = known ? input.fit.longest[range] : input.fit.longest_at_least[range];
    if (!longest) return not_checked(id, "no " + range_words + " is given");
    const OverlapLimit limit = overlap_limit(input, range, *input.plan);
    const Length value = input.plan->overlap_at(longest->value);
    const Length worst = value - halves_tolerance(input, *input.plan) - longest->plus_minus;
    Check check = length_check(id, value, worst, limit.length);
    if (clearly_below(worst, limit.length)) check.result = CheckResult::warn;
    if (clearly_below(value, limit.length)) check.result = CheckResult::fail;
    // A refused shaft in the fitter's hands still has the overlap that it has: what fails is the overlap after a cut.
    const bool fails = check.result == CheckResult::fail;
    const std::string start = fails ? "Cut to fit the shortest position, at the " : "At the ";
    const std::string found = value < Length() ? start + range_words + " the tubes would be " + text_beside(input, -value, limit.length) + " apart"
                                               : start + range_words + " the overlap " + (fails ? "would be " : "is ") + text_beside(input, value, limit.length);
    check.says = found + "; at least " + text_beside(input, limit.length, value) + " of overlap is asked (" + limit.words + ").";
    if (check.result == CheckResult::warn) check.says += " Tolerances could leave " + text_beside(input, worst, limit.length) + ".";
    check.basis = "inner half + outer half after the cut − " + range_words + "; " + limit.basis;
    if (const ExtremeLength* computed = deciding_longest(input.fits, input.fit, range)) check.basis += "; the length is " + origin_in_words(*computed, input.units);
    return known ? check : known_as_least(check, input, range);
}

// max over the halves of guard half + the other half's guard shoulder; nothing where one of them is unknown.
std::optional<Length> guards_closed(const CheckInput& input)
{
    std::optional<Length> closed;
    for (const Tube tube : both_tubes) {
        const auto& guard = input.plan->guard_half[tube];
        const auto& face = input.reading.shaft.halves[other(tube)].guard_shoulder;
        if (!guard || !face) return std::nullopt;
        closed = std::max(closed.value_or(*guard + *face), *guard + *face);
    }
    return closed;
}

// The greatest known longest, with the ± that reaches to the worst of all of them.
std::optional<Toleranced> greatest_longest(const Fit& fit)
{
    std::optional<Length> greatest, at_worst;
    for (const Range range : all_ranges) {
        const auto& longest = fit.longest[range] ? fit.longest[range] : fit.longest_at_least[range];
        if (!longest) continue;
        greatest = std::max(greatest, std::optional(longest->value));
        at_worst = std::max(at_worst, std::optional(longest->value + longest->plus_minus));
    }
    return greatest ? std::optional(Toleranced{*greatest, *at_worst - *greatest}) : std::nullopt;
}

// A guard that is cut to less than it needs to hold anything, or cut away.
std::optional<Tube> guard_cut_away(const CheckInput& input)
{
    for (const Tube tube : both_tubes) {
        const auto& kept = input.plan->guard_half[tube];
        if (!kept || !input.plan->cuts_guard(tube)) continue;
        if (clearly_below(*kept, input.reading.shaft.halves[tube].guard_seat.value_or(Length()) + least_free_guard)) return tube;
    }
    return std::nullopt;
}

Check too_little_guard(const CheckInput& input, Check check, Tube tube)
{
    check.result = CheckResult::fail;
    check.says += std::string(check.says.empty() ? "" : " ") + "The " + to_word(tube) + " guard would be cut away: nothing, or too little to cover the shaft, would be left of it.";
    if (check.basis.empty()) check.basis = "a guard that is cut keeps its seat and " + limit_text(input, least_free_guard) + " (the project's own choice)";
    return check;
}

// Why a check on the guards cannot be made: one is missing, or damaged and not used again.
std::optional<std::string> no_guards(const CheckInput& input)
{
    for (const Tube tube : both_tubes)
        if (!input.reading.shaft.halves[tube].guard_used) return std::string("the ") + to_word(tube) + " guard is missing or not used again: the shaft must not run before a complete guard is fitted";
    return std::nullopt;
}

// Whether the guard tubes still reach into each other at the greatest length.
Check guards_overlap(const CheckInput& input)
{
    const CheckId id = CheckId::guard_cover;
    if (const auto why = no_guards(input)) return not_checked(id, *why);
    const auto longest = greatest_longest(input.fit);
    if (!longest) return not_checked(id, "no longest length can be read");
    Length value = -longest->value;
    Length doubt = longest->plus_minus;
    for (const Tube tube : both_tubes) {
        const auto& kept = input.plan->guard_half[tube];
        if (!kept) return not_checked(id, "a guard was not measured: hold the halves side by side");
        value += *kept;
        doubt += input.reading.shaft.halves[tube].guard->plus_minus;
        if (input.plan->cuts_guard(tube)) doubt += input.saw.plus_minus;
    }
    const Length limit = input.limits.length(Limit::guard_overlap);
    Check check = length_check(id, value, value - doubt, limit);
    if (clearly_below(value, limit)) check.result = CheckResult::warn;
    if (clearly_below(value - doubt, Length())) check.result = CheckResult::fail;
    const std::string found = value < Length() ? "are " + text_beside(input, -value, limit) + " apart" : "overlap by " + text_beside(input, value, limit);
    check.says = "The guard tubes " + found + " at the greatest length; an overlap of " + limit_text(input, limit) + " is asked.";
    if (check.result == CheckResult::fail && value >= Length()) check.says += " Tolerances could leave them " + text_beside(input, doubt - value, Length()) + " apart: the shaft would lie bare.";
    check.basis = "guard halves after the cut − the greatest known longest; it fails where the worst case is below 0; " +
                  input.limits.basis(Limit::guard_overlap);
    return check;
}

}  // namespace

Length least_overlap(const LimitsInForce& limits, Range range, Length closed_overlap)
{
    if (range == Range::standing) return limits.length(Limit::least_overlap_standing);
    if (range == Range::working) return fraction_of(limits.fraction(Limit::overlap_working), closed_overlap);
    return std::max(fraction_of(limits.fraction(Limit::overlap_turning), closed_overlap), limits.length(Limit::least_overlap_turning));
}

Check check_closing_clearance(const CheckInput& input)
{
    const CheckId id = CheckId::closing_clearance;
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    if (!input.fit.shortest) return not_checked(id, no_shortest);
    const CutPlan& plan = *input.plan;
    const Length limit = input.limits.length(Limit::closing_clearance);
    const Length floor = input.limits.length(Limit::closing_clearance_floor);
    const Length value = input.fit.shortest->value - plan.closed;
    const Length worst = input.fit.shortest->value - input.fit.shortest->plus_minus - closed_at_worst(input.reading.shaft, *input.stops, plan, input.saw);
    Check check = length_check(id, value, worst, limit);
    if (clearly_below(worst, floor)) check.result = CheckResult::warn;
    if (clearly_below(value, limit) || !clearly_above(worst, Length())) check.result = CheckResult::fail;
    check.says = "Clearance left at the shortest length is " + text_beside(input, value, limit) + "; " + limit_text(input, limit) + " is asked.";
    if (check.result != CheckResult::pass)
        check.says += " Tolerances could leave " + text_beside(input, worst, floor) + " (floor " + limit_text(input, floor) + ").";
    check.basis = "shortest − closed length after the cut; " + input.limits.basis(Limit::closing_clearance) + "; floor " +
                  limit_text(input, floor) + ": " + input.limits.basis(Limit::closing_clearance_floor);
    if (const ExtremeLength* computed = deciding_shortest(input.fits, input.fit)) check.basis += "; the shortest is " + origin_in_words(*computed, input.units);
    return check;
}

Check check_overlap_working(const CheckInput& input) { return check_overlap(input, Range::working); }
Check check_overlap_turning(const CheckInput& input) { return check_overlap(input, Range::turning); }
Check check_overlap_standing(const CheckInput& input) { return check_overlap(input, Range::standing); }

Check check_tube_left(const CheckInput& input)
{
    PerEach<Tube, bool> cut;
    if (input.plan)
        for (const Tube tube : both_tubes) cut[tube] = input.plan->cuts_tube(tube);
    return tube_left_of(input, cut);
}

Check tube_left_of(const CheckInput& input, const PerEach<Tube, bool>& sawn)
{
    const CheckId id = CheckId::tube_left;
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    std::optional<Length> least;
    std::optional<Tube> unknown;
    for (const Tube tube : both_tubes) {
        const Half& half = input.reading.shaft.halves[tube];
        if (!sawn[tube]) continue;
        if (!half.seat || !half.least_tube) {
            unknown = tube;
            continue;
        }
        const Length left = input.plan->half[tube] - *half.seat - *half.least_tube;
        least = std::min(least.value_or(left), left);
    }
    // A half that is known to be too short refuses, whatever is known of the other.
    const bool too_short = least && clearly_below(*least, Length());
    if (unknown && !too_short)
        return not_checked(id, std::string("the seat or the least tube of the ") + to_word(*unknown) + " half is not known");
    Check check = length_check(id, least, std::nullopt, Length());
    check.basis = "half after the cut − seat − the series' least tube, the lesser of the halves that are cut";
    if (too_short) {
        check.result = CheckResult::fail;
        check.says = "A tube would be " + limit_text(input, -*least) + " shorter than the series allows.";
    } else {
        check.says = least ? "The tubes stay at least " + value_text(input, *least) + " longer than the series' least." : "No drive tube is cut.";
    }
    return check;
}

Check check_guard_clearance(const CheckInput& input)
{
    const CheckId id = CheckId::guard_clearance;
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    if (!input.fit.shortest) return not_checked(id, no_shortest);
    if (const auto why = no_guards(input)) return not_checked(id, *why);
    const auto closed = guards_closed(input);
    if (!closed) return not_checked(id, "a guard was not measured or the series does not give its guard shoulder");
    const Length limit = input.limits.length(Limit::closing_clearance);
    const Length value = input.fit.shortest->value - *closed;
    Check check = length_check(id, value, std::nullopt, limit);
    if (clearly_below(value, limit)) check.result = CheckResult::warn;
    if (clearly_below(value, Length())) check.result = CheckResult::fail;
    check.says = "The guards have " + text_beside(input, value, limit) + " left to close at the shortest length; " + limit_text(input, limit) + " is asked.";
    check.basis = "shortest − the guards' own closed length; it fails below 0; " + input.limits.basis(Limit::closing_clearance);
    return check;
}

Check check_guard_cover(const CheckInput& input)
{
    if (!input.plan) return not_checked(CheckId::guard_cover, no_plan_reason(input));
    Check check = guards_overlap(input);
    const auto cut_away = guard_cut_away(input);
    return cut_away ? too_little_guard(input, check.result == CheckResult::not_checked ? length_check(check.id, {}, {}, {}) : check, *cut_away) : check;
}

Check check_guard_setback(const CheckInput& input) { return guard_setback_within(input, Limit::guard_setback); }

Check guard_setback_within(const CheckInput& input, Limit setback)
{
    const CheckId id = CheckId::guard_setback;
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    if (const auto why = no_guards(input)) return not_checked(id, *why);
    std::optional<Length> least, greatest;
    for (const Tube tube : both_tubes) {
        const auto& guard = input.plan->guard_half[tube];
        if (!guard) continue;
        const Length short_by = input.plan->half[tube] - *guard;
        least = std::min(least.value_or(short_by), short_by);
        greatest = std::max(greatest.value_or(short_by), short_by);
    }
    if (!least) return not_checked(id, "no guard was measured");
    const Length limit = input.limits.length(setback);
    const Length value = *least < Length() ? *least : *greatest;
    Check check = length_check(id, value, std::nullopt, limit);
    const bool longer = clearly_below(value, Length());
    if (longer || clearly_above(value, limit)) check.result = CheckResult::warn;
    check.says = longer ? "A guard tube ends " + text_beside(input, -value, Length()) + " beyond its drive tube."
                        : "A guard tube ends up to " + text_beside(input, value, limit) + " short of its drive tube; at most " +
                              value_text(input, limit) + " is asked.";
    check.basis = "half − guard half after the cut; " + input.limits.basis(setback);
    return check;
}

}  // namespace shaftcut
