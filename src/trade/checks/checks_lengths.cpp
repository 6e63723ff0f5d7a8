// The checks on clearance and overlaps: each a difference of lengths, its worst case a linear sum of tolerances.
#include <algorithm>

#include "checks/check_parts.hpp"
#include "cut/deciding.hpp"

namespace shaftcut {
namespace {

// The least overlap at a range, and where it comes from.
struct OverlapLimit {
    Length length;
    std::optional<Fraction> part;  // of the new closed overlap, where that decides
    std::vector<CheckBasis> basis;
};

OverlapLimit overlap_limit(const LimitsInForce& limits, Range range, const CutPlan& plan)
{
    const Length closed_overlap = plan.overlap_at(plan.closed);
    const Length least_at_range = least_overlap(limits, range, closed_overlap);
    if (range == Range::standing) return {least_at_range, {}, {limits.basis(Limit::least_overlap_standing)}};
    const Limit part = range == Range::working ? Limit::overlap_working : Limit::overlap_turning;
    OverlapLimit limit{least_at_range, limits.fraction(part), {limits.basis(part)}};
    if (range == Range::working) return limit;
    const Length least = limits.length(Limit::least_overlap_turning);
    limit.basis.emplace_back(LimitAtLeast{least, limits.basis(Limit::least_overlap_turning)});
    if (least > fraction_of(limits.fraction(part), closed_overlap)) limit.part.reset();
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

// Without halves and without shoulders to derive them from.
Check overlap_not_known(CheckId id)
{
    Check check = length_check(id, std::nullopt, std::nullopt, std::nullopt);
    check.result = CheckResult::fail;
    check.findings = {PlainFinding::overlap_not_known};
    check.basis = {PlainBasis::overlap_not_computed};
    return check;
}

Check check_overlap(const CheckInput& input, Range range)
{
    const CheckId id = overlap_check_id(range);
    if (!input.stops && range == Range::turning) return overlap_not_known(id);
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    const bool known = input.fit.longest[range].has_value();
    const auto& longest = known ? input.fit.longest[range] : input.fit.longest_at_least[range];
    if (!longest) return not_checked(id, NoLongest{range});
    const OverlapLimit limit = overlap_limit(input.limits, range, *input.plan);
    const Length value = input.plan->overlap_at(longest->value);
    const Length worst = value - halves_tolerance(input, *input.plan) - longest->plus_minus;
    Check check = length_check(id, value, worst, limit.length);
    if (clearly_below(worst, limit.length)) check.result = CheckResult::warn;
    if (clearly_below(value, limit.length)) check.result = CheckResult::fail;
    check.findings = {OverlapLeft{range, value, limit.length, limit.part, check.result == CheckResult::fail}};
    if (check.result == CheckResult::warn) check.findings.emplace_back(OverlapAtWorst{worst, limit.length});
    check.basis = {OverlapOf{range}};
    check.basis.insert(check.basis.end(), limit.basis.begin(), limit.basis.end());
    if (const ExtremeLength* computed = deciding_longest(input.fits, input.fit, range)) check.basis.emplace_back(LengthOfGeometry{*computed, false});
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
    if (unknown && !too_short) return not_checked(id, SeatNotKnown{*unknown});
    Check check = length_check(id, least, std::nullopt, Length());
    check.basis = {PlainBasis::tube_left};
    if (too_short) check.result = CheckResult::fail;
    if (too_short) check.findings = {TubeTooShort{*least}};
    else if (least) check.findings = {TubesLeft{*least}};
    else check.findings = {PlainFinding::no_tube_cut};
    return check;
}

}  // namespace

Length least_overlap(const LimitsInForce& limits, Range range, Length closed_overlap)
{
    if (range == Range::standing) return limits.length(Limit::least_overlap_standing);
    if (range == Range::working) return fraction_of(limits.fraction(Limit::overlap_working), closed_overlap);
    return std::max(fraction_of(limits.fraction(Limit::overlap_turning), closed_overlap), limits.length(Limit::least_overlap_turning));
}

// Those halves that an earlier sheet cut: they alone can lack the clearance, any other is cut to leave it.
void add_left_as_cut(Check& check, const CheckInput& input)
{
    LeftAsCut found;
    for (const Tube tube : both_tubes)
        if (input.plan->left_as_cut[tube]) found.kept[tube] = input.reading.shaft.halves[tube].cut_to;
    if (found.kept[Tube::inner] || found.kept[Tube::outer]) check.findings.emplace_back(found);
}

Check check_closing_clearance(const CheckInput& input)
{
    const CheckId id = CheckId::closing_clearance;
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    if (!input.fit.shortest) return not_checked(id, PlainReason::no_shortest);
    const CutPlan& plan = *input.plan;
    const Length limit = input.limits.length(Limit::closing_clearance);
    const Length floor = input.limits.length(Limit::closing_clearance_floor);
    const Length value = input.fit.shortest->value - plan.closed;
    const Length worst = input.fit.shortest->value - input.fit.shortest->plus_minus - closed_at_worst(input.reading.shaft, *input.stops, plan, input.saw);
    Check check = length_check(id, value, worst, limit);
    const bool lacks = clearly_below(value, limit), as_cut = plan.left_as_cut[Tube::inner] || plan.left_as_cut[Tube::outer];
    if (lacks || clearly_below(worst, floor)) check.result = CheckResult::warn;
    // What the saw and two tapes explain never comes near the floor: then it is another machine, or a wrong figure.
    if ((lacks && (!as_cut || clearly_below(value, floor))) || !clearly_above(worst, Length())) check.result = CheckResult::fail;
    check.findings = {ClearanceLeft{value, limit}};
    if (check.result != CheckResult::pass) check.findings.emplace_back(ClearanceAtWorst{worst, floor});
    if (lacks) add_left_as_cut(check, input);
    check.basis = {PlainBasis::clearance, input.limits.basis(Limit::closing_clearance), LimitFloor{floor, input.limits.basis(Limit::closing_clearance_floor)}};
    if (const ExtremeLength* computed = deciding_shortest(input.fits, input.fit)) check.basis.emplace_back(LengthOfGeometry{*computed, true});
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
    if (check.result != CheckResult::not_checked) check.basis = {PlainBasis::new_tube_left};
    return check;
}

}  // namespace shaftcut
