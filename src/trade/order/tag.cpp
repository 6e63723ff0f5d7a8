#include "shaftcut/trade/order/tag.hpp"

#include <algorithm>

namespace shaftcut {

std::optional<WhyNoTag> why_no_tag(const WorkOrder& order)
{
    if (!order.cut || order.verdict == Verdict::refused) return WhyNoTag::refused;
    if (!std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return guard_is_used(order.shaft, tube); })) return WhyNoTag::guard_not_used;
    const auto& condition = order.shaft.condition;
    if (condition && condition->guard && *condition->guard != Completeness::complete) return WhyNoTag::guard_incomplete;
    return std::nullopt;
}

}  // namespace shaftcut
