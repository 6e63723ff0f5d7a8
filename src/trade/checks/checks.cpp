#include "shaftcut/trade/checks/checks.hpp"

#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

int severity(CheckResult result)
{
    switch (result) {
    case CheckResult::pass: return 0;
    case CheckResult::not_checked: return 1;
    case CheckResult::warn: return 2;
    case CheckResult::fail: break;
    }
    return 3;
}

std::optional<std::int64_t> micrometres(std::optional<Length> length)
{
    return length ? std::optional(length->um()) : std::nullopt;
}

// Beside lengths that contradict each other no length passes: nobody knows which of them is right.
void doubt_lengths(std::vector<Check>& checks)
{
    if (check_of(checks, CheckId::consistency).result != CheckResult::fail) return;
    for (Check& check : checks) {
        if (rule_of(check.id).unit != CheckUnit::mm || (check.result != CheckResult::pass && check.result != CheckResult::warn)) continue;
        check.result = CheckResult::not_checked;
        check.findings = {NotChecked{PlainReason::lengths_contradict}};
        check.basis.insert(check.basis.begin(), PlainBasis::contradicting_lengths);
    }
}

}  // namespace

std::vector<Check> run_checks(const CheckInput& input)
{
    std::vector<Check> checks;
    for (const CheckRule& rule : check_rules) checks.push_back((input.new_shaft ? rule.run_new : rule.run)(input));
    doubt_lengths(checks);
    return checks;
}

bool any_failed(const std::vector<Check>& checks)
{
    return std::any_of(checks.begin(), checks.end(), [](const Check& check) { return check.result == CheckResult::fail; });
}

Check not_checked(CheckId id, NotCheckedReason reason)
{
    Check check;
    check.id = id;
    check.findings = {NotChecked{reason}};
    check.basis = {std::move(reason)};
    return check;
}

Check passed(CheckId id, CheckUnit unit)
{
    Check check;
    check.id = id;
    check.result = CheckResult::pass;
    check.unit = unit;
    return check;
}

Check length_check(CheckId id, std::optional<Length> value, std::optional<Length> worst, std::optional<Length> limit)
{
    Check check = passed(id, CheckUnit::mm);
    check.value = micrometres(value);
    check.worst = micrometres(worst);
    check.limit = micrometres(limit);
    return check;
}

Check known_as_least(Check check, const CheckInput& input, Range range)
{
    if (check.result == CheckResult::fail) return check;
    LongestNotOfAll reason{range, {}};
    for (const FitReading& fit : input.fits)
        if (!fit.fit.longest[range]) reason.tractors.push_back(fit.tractor);
    check.result = CheckResult::not_checked;
    check.findings = {NotChecked{reason}};
    check.basis.insert(check.basis.begin(), reason);
    return check;
}

PlainReason no_plan_reason(const CheckInput& input) { return input.stops ? PlainReason::shortest_unreadable : PlainReason::halves_unknown; }

void at_least(Check& check, CheckResult result)
{
    if (severity(result) > severity(check.result)) check.result = result;
}

}  // namespace shaftcut
