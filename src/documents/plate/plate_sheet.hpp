// The plates of an order's new shafts, on one sheet to be cut out or to copy from: firm and address, series, greatest speed, what the series
// carries at it where it is rated, and boxes for serial number, year and mass, which nothing in the configuration holds.
//
// No mark of conformity stands on them, and the sheet says so. Checked in tests/documents/plate.
#pragma once

#include <vector>

#include "shaftcut/documents/page/document.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/build/build_plan.hpp"
#include "wording.hpp"

namespace shaftcut {

// `plan` must have a built shaft.
std::vector<Page> draw_plates(const BuildPlan& plan, Paper paper, const FontFiles& files, const Wording& w);

DocumentInfo plates_info(const BuildPlan& plan, const Wording& w);

}  // namespace shaftcut
