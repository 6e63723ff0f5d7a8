#include "advice/advice.hpp"

#include <algorithm>

#include "advice/advice_parts.hpp"

namespace shaftcut {
namespace {

void append(std::vector<std::string>& ways, const std::vector<std::string>& more) { ways.insert(ways.end(), more.begin(), more.end()); }

bool any_unreadable(const CheckInput& input)
{
    return std::any_of(input.fits.begin(), input.fits.end(), [](const FitReading& fit) { return !fit.unreadable.empty(); });
}

// Whether lengths and something else failed, so that no one way out cures all.
bool failed_in_two_kinds(const std::vector<Check>& checks)
{
    const auto any = [&](bool lengths) {
        return std::any_of(checks.begin(), checks.end(), [&](const Check& check) { return check.result == CheckResult::fail && rule_of(check.id).mended_by_lengths == lengths; });
    };
    return any(true) && any(false);
}

}  // namespace

std::optional<Length> least_longest(const std::vector<FitReading>& fits)
{
    std::optional<Length> least;
    for (const FitReading& fit : fits)
        for (const Range range : all_ranges)
            if (const auto& longest = fit.fit.longest[range]) least = std::min(least.value_or(longest->value), longest->value);
    return least;
}

std::vector<std::string> ways_out(const CheckInput& input, const std::vector<Check>& checks)
{
    std::vector<std::string> ways;
    if (!any_failed(checks)) return ways;
    if (failed_in_two_kinds(checks) && !failed(checks, CheckId::consistency)) ways.emplace_back("Each failed check must be put right: no one of the ways below cures all of them.");
    if (!input.stops)
        ways.emplace_back("Measure both half lengths, from the inner cross to the tube's free end, and write them into the job.");
    if (any_unreadable(input))
        ways.emplace_back("Measure the shortest and longest lengths between the crosses instead of between the grooves.");
    else if (failed(checks, CheckId::consistency))
        ways.emplace_back("Measure again what contradicts: one figure of each pair is wrong, or they are swapped or in another unit.");
    else if (input.plan)
        append(ways, length_ways(input, checks));
    if (!failed(checks, CheckId::consistency)) append(ways, machine_ways(input, checks));
    append(ways, fitting_ways(input, checks));
    return ways;
}

}  // namespace shaftcut
