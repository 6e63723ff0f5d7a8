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
        check.says = "Not checked: the measured lengths contradict each other.";
        check.basis = "computed from lengths that contradict each other; " + check.basis;
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

std::vector<std::string> reasons_to_refuse(const std::vector<Check>& checks)
{
    std::vector<std::string> reasons;
    for (const Check& check : checks) {
        if (check.result != CheckResult::fail) continue;
        if (check.contradictions.empty()) reasons.push_back(check.says);
        reasons.insert(reasons.end(), check.contradictions.begin(), check.contradictions.end());
    }
    return reasons;
}

Check not_checked(CheckId id, const std::string& reason)
{
    Check check;
    check.id = id;
    check.says = "Not checked: " + reason + ".";
    check.basis = reason;
    return check;
}

Check length_check(CheckId id, std::optional<Length> value, std::optional<Length> worst, std::optional<Length> limit)
{
    Check check;
    check.id = id;
    check.result = CheckResult::pass;
    check.unit = CheckUnit::mm;
    check.value = micrometres(value);
    check.worst = micrometres(worst);
    check.limit = micrometres(limit);
    return check;
}

Check known_as_least(Check check, const CheckInput& input, Range range)
{
    if (check.result == CheckResult::fail) return check;
    std::string names;
    for (const FitReading& fit : input.fits)
        if (!fit.fit.longest[range]) names += (names.empty() ? "" : ", ") + (fit.tractor.empty() ? "one fit" : fit.tractor);
    check.result = CheckResult::not_checked;
    const std::string reason = std::string("no longest ") + to_word(range) + " length is given for " + names + ": it is known only as at least what is stated";
    check.says = "Not checked: " + reason + ".";
    check.basis = reason + "; " + check.basis;
    return check;
}

std::string value_text(const CheckInput& input, Length length, Rounded as) { return figure_of_with_millimetres(as, length, input.units); }

std::string limit_text(const CheckInput& input, Length length, Rounded as) { return figure_of_with_millimetres(as, length, input.units); }

std::string text_beside(const CheckInput& input, Length length, Length other, Rounded as)
{
    return figure_of_with_millimetres(as, length, input.units, decimals_that_tell(as, length, other));
}

std::string below_zero_text(const CheckInput& input, Length length, Length other, Rounded as)
{
    return size_of_with_millimetres(as, length, input.units, decimals_that_tell(as, length, other));
}

std::string joined(const std::vector<std::string>& sentences)
{
    std::string all;
    for (const std::string& sentence : sentences) all += (all.empty() ? "" : " ") + sentence;
    return all;
}

std::string end_named(End end) { return std::string("the ") + to_word(end) + " end"; }

std::string no_plan_reason(const CheckInput& input)
{
    return input.stops ? "the shortest length cannot be read" : "the half lengths are not known";
}

void at_least(Check& check, CheckResult result)
{
    if (severity(result) > severity(check.result)) check.result = result;
}

}  // namespace shaftcut
