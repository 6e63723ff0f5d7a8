// The checks on guards: they must not stop the shaft, must cover it at its longest, and end where their tubes end.
#include <algorithm>

#include "checks/check_parts.hpp"
#include "data/slip_limits.hpp"

namespace shaftcut {
namespace {

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

Check too_little_guard(Check check, Tube tube)
{
    check.result = CheckResult::fail;
    check.findings.emplace_back(GuardCutAway{tube});
    if (check.basis.empty()) check.basis = {GuardKeeps{least_free_guard}};
    return check;
}

// Why a check on the guards cannot be made: one is missing, or damaged and not used again.
std::optional<GuardNotUsed> no_guards(const CheckInput& input)
{
    for (const Tube tube : both_tubes)
        if (!input.reading.shaft.halves[tube].guard_used) return GuardNotUsed{tube};
    return std::nullopt;
}

// Whether the guard tubes still reach into each other at the greatest length.
Check guards_overlap(const CheckInput& input)
{
    const CheckId id = CheckId::guard_cover;
    if (const auto why = no_guards(input)) return not_checked(id, *why);
    const auto longest = greatest_longest(input.fit);
    if (!longest) return not_checked(id, PlainReason::no_longest_readable);
    Length value = -longest->value;
    Length doubt = longest->plus_minus;
    for (const Tube tube : both_tubes) {
        const auto& kept = input.plan->guard_half[tube];
        if (!kept) return not_checked(id, PlainReason::guard_not_measured);
        value += *kept;
        doubt += input.reading.shaft.halves[tube].guard->plus_minus;
        if (input.plan->cuts_guard(tube)) doubt += input.saw.plus_minus;
    }
    const Length limit = input.limits.length(Limit::guard_overlap);
    Check check = length_check(id, value, value - doubt, limit);
    if (clearly_below(value, limit)) check.result = CheckResult::warn;
    if (clearly_below(value - doubt, Length())) check.result = CheckResult::fail;
    check.findings = {GuardOverlap{value, limit}};
    if (check.result == CheckResult::fail && value >= Length()) check.findings.emplace_back(GuardsApartAtWorst{value - doubt});
    check.basis = {PlainBasis::guard_cover, PlainBasis::guard_cover_fails, input.limits.basis(Limit::guard_overlap)};
    for (const Range range : all_ranges)
        if (input.fit.longest_at_least[range]) return known_as_least(check, input, range);
    return check;
}

// Held to the limit for a shaft that exists, or for a new one.
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
    if (!least) return not_checked(id, PlainReason::no_guard_measured);
    const Length limit = input.limits.length(setback);
    const Length value = *least < Length() ? *least : *greatest;
    Check check = length_check(id, value, std::nullopt, limit);
    const bool longer = clearly_below(value, Length());
    if (longer || clearly_above(value, limit)) check.result = CheckResult::warn;
    if (longer) check.findings = {GuardBeyondTube{value}};
    else check.findings = {GuardSetback{value, limit}};
    check.basis = {PlainBasis::guard_setback, input.limits.basis(setback)};
    return check;
}

}  // namespace

Check check_guard_clearance(const CheckInput& input)
{
    const CheckId id = CheckId::guard_clearance;
    if (!input.plan) return not_checked(id, no_plan_reason(input));
    if (!input.fit.shortest) return not_checked(id, PlainReason::no_shortest);
    if (const auto why = no_guards(input)) return not_checked(id, *why);
    const auto closed = guards_closed(input);
    if (!closed) return not_checked(id, PlainReason::guard_or_its_stop_unknown);
    const Length limit = input.limits.length(Limit::closing_clearance);
    const Length value = input.fit.shortest->value - *closed;
    Check check = length_check(id, value, std::nullopt, limit);
    if (clearly_below(value, limit)) check.result = CheckResult::warn;
    if (clearly_below(value, Length())) check.result = CheckResult::fail;
    check.findings = {GuardClearance{value, limit}};
    check.basis = {PlainBasis::guard_clearance, PlainBasis::guard_clearance_fails, input.limits.basis(Limit::closing_clearance)};
    return check;
}

Check check_guard_cover(const CheckInput& input)
{
    if (!input.plan) return not_checked(CheckId::guard_cover, no_plan_reason(input));
    Check check = guards_overlap(input);
    const auto cut_away = guard_cut_away(input);
    if (!cut_away) return check;
    return too_little_guard(check.result == CheckResult::not_checked ? length_check(check.id, {}, {}, {}) : check, *cut_away);
}

Check check_guard_setback(const CheckInput& input) { return guard_setback_within(input, Limit::guard_setback); }
Check check_guard_setback_of_new(const CheckInput& input) { return guard_setback_within(input, Limit::guard_setback_new); }

}  // namespace shaftcut
