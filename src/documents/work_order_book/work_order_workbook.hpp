// The work order as a workbook that recalculates: the measured lengths are unlocked cells, everything else follows from them
// by formulas that give what the program itself would give.
//
// Three sheets, and with a machine's geometry "Machine" with the table and the chart of its lengths. "Order": lengths, cut, checks, and the block for the shaft as cut. "Parts and operations": what is sawn, the
// steps with cells to tick. "Basis": every figure and limit the formulas use, and where it comes from.
//
// Workbook-level names, in the documents' units: `closed`, `shortest`, `longest_working`, `longest_turning`,
// `longest_standing`, `inner_half`, `outer_half`, `inner_guard_half`, `outer_guard_half` (inputs, at the references the job
// used; with several fits or a geometry the deciding lengths between the inner crosses); `cut_inner_tube`, `cut_outer_tube`,
// `cut_inner_guard`, `cut_outer_guard`, `keep_inner_half`, `keep_outer_half`, `keep_inner_guard_half`,
// `keep_outer_guard_half`, `closed_after`, `overlap_closed_before`, `overlap_closed_after`, `overlap_shortest`,
// `overlap_working`, `overlap_turning`, `overlap_standing`, `clearance`, `verdict` ("cut", "fits", "refused"); for the shaft as cut
// `after_inner_half`, `after_outer_half`, `after_inner_guard_half`, `after_outer_guard_half` (inputs), `after_clearance`,
// `after_overlap_turning`, `after_overlap_standing`, `after_verdict` ("fits", "refused", "measure"). For each check
// `check_…_result`, `…_value`, `…_worst` and `…_limit`, "-" written as "_". Other names hold expressions in millimetres.
//
// While the verdict is "refused" no cell holds a cut, a kept or a new closed length; a refused job's workbook never did.
//
// Checked by: workbook_test.cpp (the file's parts) and recalculate.py, which changes the inputs in another program and
// compares every result with the program's own.
#pragma once

#include <string>

#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut {

// The bytes of the XLSX file, worded as told; the same for the same order. Throws WorkbookFault where it cannot be written.
std::string workbook_of(const WorkOrder& order, const Wording& w, Paper paper = Paper::a4);

}  // namespace shaftcut
