// Which shafts have no tag: those that go on no stub.
#pragma once

#include <optional>

#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

enum class WhyNoTag { refused, guard_not_used, guard_incomplete };

// Nothing where the shaft may have one. A guard counts as incomplete where the shaft came in without its whole guard.
// Checked in tests/documents/tag.
std::optional<WhyNoTag> why_no_tag(const WorkOrder& order);

}  // namespace shaftcut
