// A change at the machine that a refusal's way out asks for, made in the job. Private to the trade layer's quote.
#pragma once

#include <optional>

#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/data/prices.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

// Nothing where the way out is no change at the machine. Whether the shaft then serves is for the checks to say.
std::optional<Job> changed_by(const WayOut& way, const Job& job, const WorkOrder& order);

// The service by which the configuration prices such a change.
MachineChange service_for(const WayOut& way);

}  // namespace shaftcut
