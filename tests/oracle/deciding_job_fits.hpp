// The deciding lengths of several fits as fits of their own, for jobs that change what the workbook holds of them.
#pragma once

#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut::test {

// One fit, between the inner crosses, with the deciding lengths.
JobFit deciding_job_fit(const WorkOrder& order);

// Whether some fits leave out a range that others state.
bool knows_some_as_least(const WorkOrder& order);

// A second fit beside `deciding`, which states what that one leaves out.
JobFit stating_the_rest(const WorkOrder& order, const JobFit& deciding);

}  // namespace shaftcut::test
