#include "choose/margin.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// What a check's worst case is held to: below it, it warns, the guards fail.
Length held_to(const Check& check, const LimitsInForce& limits)
{
    switch (check.id) {
    case CheckId::closing_clearance: return limits.length(Limit::closing_clearance_floor);
    case CheckId::guard_cover: return {};
    default: return Length::micrometres(*check.limit);
    }
}

}  // namespace

// Rounded down, below 0 too.
std::int64_t Margin::thousandths() const
{
    const std::int64_t parts = 1000 * left.um();
    return parts / limit.um() - (parts % limit.um() < 0 ? 1 : 0);
}

bool operator<(const Margin& one, const Margin& other) { return one.left.um() * other.limit.um() < other.left.um() * one.limit.um(); }

AllFigures figures_of(const std::vector<Check>& checks)
{
    AllFigures figures;
    for (const Check& check : checks) figures[check.id] = {check.result, check.unit, check.value, check.worst, check.limit};
    return figures;
}

std::optional<Margin> least_margin(const std::vector<Check>& checks, const LimitsInForce& limits)
{
    std::optional<Margin> least;
    for (const Check& check : checks) {
        if (check.unit != CheckUnit::mm || !check.worst || check.limit.value_or(0) <= 0) continue;
        const Margin margin{check.id, Length::micrometres(*check.worst) - held_to(check, limits), Length::micrometres(*check.limit)};
        if (!least || margin < *least) least = margin;
    }
    return least;
}

std::size_t count_warnings(const AllFigures& checks)
{
    std::size_t count = 0;
    for (std::size_t i = 0; i < Words<CheckId>::all.size(); ++i) count += checks[static_cast<CheckId>(i)].result == CheckResult::warn ? 1 : 0;
    return count;
}

}  // namespace shaftcut
