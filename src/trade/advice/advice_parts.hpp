// What the parts of a refusal's way out share. Private to the trade layer's advice.
#pragma once

#include "advice/advice.hpp"
#include "checks/check_parts.hpp"

namespace shaftcut {

inline bool failed(const std::vector<Check>& checks, CheckId id)
{
    return check_of(checks, id).result == CheckResult::fail;
}

// What other tubes or positions would serve, for failed checks on lengths; empty where none failed.
std::vector<WayOut> length_ways(const CheckInput& input, const std::vector<Check>& checks);

// What to fit or to limit instead, for failed checks on locks, connections, devices, joint angles, the rating and the condition.
std::vector<WayOut> fitting_ways(const CheckInput& input, const std::vector<Check>& checks);

// How far a machine of known geometry may turn, lift or be hitched, for failed overlaps and joint angles.
std::vector<WayOut> machine_ways(const CheckInput& input, const std::vector<Check>& checks);

// No shortest can be above any longest, of any tractor; nothing where none is known.
std::optional<Length> least_longest(const std::vector<FitReading>& fits);

inline constexpr std::int64_t whole_mm = 1000;

// The least whole millimetre in (low, high] for which `serves` holds, given that it holds for all above; nothing where it
// fails at `high`.
template <class Serves>
std::optional<Length> least_serving(Length low, Length high, Serves serves)
{
    std::int64_t below = low.um() / whole_mm;
    std::int64_t serving = high.um() / whole_mm;
    if (serving <= below || !serves(Length::millimetres(serving))) return std::nullopt;
    while (serving - below > 1) {
        const std::int64_t middle = below + (serving - below) / 2;
        (serves(Length::millimetres(middle)) ? serving : below) = middle;
    }
    return Length::millimetres(serving);
}

}  // namespace shaftcut
