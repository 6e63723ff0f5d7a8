// The operating lengths of a machine whose geometry is known: every extreme with its position, the dimensions that the job gave,
// then the machine and its shaft to scale and the curve of its lengths. The same tables and drawings follow the checks in a cut sheet.
//
// A refused order's sheets show telescoping lengths only: no overlap after a cut, no limit that a cut sets.
// Checked by its rectangles on worst cases (tests/documents/geometry_sheet/geometry_sheet_test.cpp).
#pragma once

#include <vector>

#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut {

// The sheets in order. Throws FontFault. Some fit of the order must hold a machine's geometry.
std::vector<Page> draw_geometry_sheet(const WorkOrder& order, Paper paper, const FontFiles& files, const Wording& w);

// The sheet of the first machine to scale, alone. Throws as draw_geometry_sheet().
Page draw_machine_picture(const WorkOrder& order, Paper paper, const FontFiles& files, const Wording& w);

// Title, author and date for the file, as cut_sheet_info().
DocumentInfo geometry_sheet_info(const WorkOrder& order, const Wording& w);

}  // namespace shaftcut
