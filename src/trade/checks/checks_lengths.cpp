// The checks on clearance and overlaps: each a difference of lengths, its worst case a linear sum of tolerances.
#include <algorithm>

#include "checks/check_parts.hpp"
#include "cut/geometry_words.hpp"

namespace shaftcut {
namespace {

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
    const std::string found = value < Length() ? start + range_words + " the tubes would be " + below_zero_text(input, value, limit.length) + " apart"
                                               : start + range_words + " the overlap " + (fails ? "would be " : "is ") + text_beside(input, value, limit.length);
    check.says = found + "; at least " + text_beside(input, limit.length, value) + " of overlap is asked (" + limit.words + ").";
    if (check.result == CheckResult::warn) check.says += " Tolerances could leave " + text_beside(input, worst, limit.length) + ".";
    check.basis = "inner half + outer half after the cut − " + range_words + "; " + limit.basis;
    if (const ExtremeLength* computed = deciding_longest(input.fits, input.fit, range)) check.basis += "; the length is " + origin_in_words(*computed, input.units);
    return known ? check : known_as_least(check, input, range);
}

// The tubes that this check is about: those that are sawn.
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
        check.says = "A tube would be " + below_zero_text(input, *least, Length(), Rounded::kept) + " shorter than the series allows.";
    } else {
        check.says = least ? "The tubes stay at least " + value_text(input, *least, Rounded::kept) + " longer than the series' least." : "No drive tube is cut.";
    }
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

Check check_tubes_left_of_new(const CheckInput& input)
{
    PerEach<Tube, bool> both;
    both[Tube::inner] = both[Tube::outer] = true;
    Check check = tube_left_of(input, both);
    if (check.result != CheckResult::not_checked) check.basis = "half − seat − the series' least tube, the lesser of both halves";
    return check;
}

}  // namespace shaftcut
