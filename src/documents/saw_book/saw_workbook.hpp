// A saw plan as an XLSX workbook that recalculates.
//
// Sheet Plan holds the inputs (kerf, trims, reusable leftover), the totals and what to fetch; sheet Bars one row for each piece, its
// stop a formula over the inputs and the piece before it. Lengths are millimetres; in inches two columns more stand beside.
// Checked by tests/oracle/recalculate_saw.py: another program recalculates it, also for other inputs, and must agree.
#pragma once

#include <string>

#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {

// The XLSX file. Workbook-level names: `kerf`, `trim_start`, `trim_end`, `reusable_leftover` (inputs), `bars_used`, `bars_length`,
// `pieces_length`, `rack_length`, `waste_percent`, `verdict` (fits, or that a bar no longer holds its pieces).
std::string saw_workbook_of(const SawOrder& order, Paper paper);

}  // namespace shaftcut
