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
    const std::string found = value < Length() ? "are " + below_zero_text(input, value, limit) + " apart" : "overlap by " + text_beside(input, value, limit);
    check.says = "The guard tubes " + found + " at the greatest length; an overlap of " + limit_text(input, limit) + " is asked.";
    if (check.result == CheckResult::fail && value >= Length()) check.says += " Tolerances could leave them " + below_zero_text(input, value - doubt, Length()) + " apart: the shaft would lie bare.";
    check.basis = "guard halves after the cut − the greatest known longest; it fails where the worst case is below 0; " +
                  input.limits.basis(Limit::guard_overlap);
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
    if (!least) return not_checked(id, "no guard was measured");
    const Length limit = input.limits.length(setback);
    const Length value = *least < Length() ? *least : *greatest;
    Check check = length_check(id, value, std::nullopt, limit);
    const bool longer = clearly_below(value, Length());
    if (longer || clearly_above(value, limit)) check.result = CheckResult::warn;
    check.says = longer ? "A guard tube ends " + below_zero_text(input, value, Length(), Rounded::setback) + " beyond its drive tube."
                        : "A guard tube ends up to " + text_beside(input, value, limit, Rounded::setback) + " short of its drive tube; at most " +
                              value_text(input, limit, Rounded::setback) + " is asked.";
    check.basis = "half − guard half after the cut; " + input.limits.basis(setback);
    return check;
}

}  // namespace

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
Check check_guard_setback_of_new(const CheckInput& input) { return guard_setback_within(input, Limit::guard_setback_new); }

}  // namespace shaftcut
