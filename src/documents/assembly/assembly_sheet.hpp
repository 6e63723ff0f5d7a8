// The assembly work order: the one paper that a shaft made to order is fetched, sawn and put together from.
//
// One sheet: the finished shaft drawn and dimensioned, the lengths to saw in their boxes, parts, operations, checks, boxes to
// write the control lengths in. Only what does not fit at its least lettering goes on to a second sheet, and the first says so.
// Nothing is computed here: every figure is the plan's. A refused order has no lengths, so none can be printed.
// Checked on worst cases by its rectangles, and by reading the printed page back (tests/documents/assembly/assembly_sheet_test.cpp).
#pragma once

#include <vector>

#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/build/build_plan.hpp"

namespace shaftcut {

// The sheets in order. Throws FontFault.
std::vector<Page> draw_assembly_sheet(const BuildPlan& plan, Paper paper, const FontFiles& files);

// Title and author for the file. A list of orders has no date: its documents count as made on 2000-01-01, so that equal orders
// give equal bytes.
DocumentInfo assembly_sheet_info(const BuildPlan& plan);

}  // namespace shaftcut
