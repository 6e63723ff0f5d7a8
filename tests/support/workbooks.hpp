// A work order's workbook in its own units.
#pragma once

#include "wording.hpp"
#include "work_order_book/work_order_workbook.hpp"

namespace shaftcut::test {

inline std::string workbook_bytes(const WorkOrder& order, Paper paper = Paper::a4) { return workbook_of(order, Wording(order.units), paper); }

}  // namespace shaftcut::test
