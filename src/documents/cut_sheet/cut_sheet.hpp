// The cut sheet: the paper that goes to the saw.
//
// Sheet 1 holds what the fitter needs at the bench; what does not fit at its least lettering continues on the next sheet,
// and says so. Then come all checks, the notes, how each length was read, and the limits in force. Nothing is computed
// here: every figure is the work order's. A refused job has no cut plan, so no cut or kept length can be printed.
// Checked on worst cases by its rectangles, and by reading the printed page back (tests/documents).
#pragma once

#include <vector>

#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut {

// The sheets in order. Throws FontFault.
std::vector<Page> draw_cut_sheet(const WorkOrder& order, Paper paper, const FontFiles& files, const Wording& w);

// Title, author and date for the file; a job without a date counts as made on 2000-01-01, so that its bytes stay the same.
DocumentInfo cut_sheet_info(const WorkOrder& order, const Wording& w);

}  // namespace shaftcut
