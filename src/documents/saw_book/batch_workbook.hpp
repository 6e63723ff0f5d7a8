// A batch as an XLSX workbook that recalculates.
//
// Sheet Orders has a row for each order: its lengths are formulas over the pale cells of the row (closed length, shoulders, seats,
// guard setback) and the saw's step; Parts what to pick, summed over PartsByOrder, which follows the orders' counts; Saw the bars
// with every piece's stop. The checks are not repeated: a row whose lengths are no longer those that were checked says so instead
// of "build". Lengths are millimetres.
// Checked by tests/oracle/recalculate_batch.py: another program recalculates it, also for other inputs, and must agree.
#pragma once

#include <string>

#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/build/batch.hpp"

namespace shaftcut {

// The XLSX file. Workbook-level names: `step` (of the saw), `kerf`, `trim_start`, `trim_end`, `reusable_leftover` (inputs).
std::string batch_workbook_of(const Batch& batch, Paper paper);

}  // namespace shaftcut
