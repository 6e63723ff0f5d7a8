#include "advice/advice.hpp"

#include <algorithm>

#include "advice/advice_parts.hpp"

namespace shaftcut {
namespace {

void append(std::vector<WayOut>& ways, const std::vector<WayOut>& more) { ways.insert(ways.end(), more.begin(), more.end()); }

bool any_unreadable(const CheckInput& input)
{
    return std::any_of(input.fits.begin(), input.fits.end(), [](const FitReading& fit) { return fit.unreadable.has_value(); });
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

std::vector<WayOut> ways_out(const CheckInput& input, const std::vector<Check>& checks)
{
    std::vector<WayOut> ways;
    if (!any_failed(checks)) return ways;
    if (failed_in_two_kinds(checks) && !failed(checks, CheckId::consistency)) ways.emplace_back(Remedy::mend_every_failure);
    if (!input.stops) ways.emplace_back(Remedy::measure_halves);
    if (any_unreadable(input)) ways.emplace_back(Remedy::measure_between_crosses);
    else if (failed(checks, CheckId::consistency)) ways.emplace_back(Remedy::measure_contradictions);
    else if (input.plan) append(ways, length_ways(input, checks));
    if (!failed(checks, CheckId::consistency)) append(ways, machine_ways(input, checks));
    append(ways, fitting_ways(input, checks));
    return ways;
}

}  // namespace shaftcut
