// The saw sheet: the paper that a saw plan is cut from.
//
// First what to fetch, the totals and the cautions; then every bar to scale with its pieces in cutting order, their
// labels, lengths and running stops, and what becomes of the leftover. A bar whose figures have no room in its drawing
// gets a table below it. Nothing is computed here: every figure is the saw order's.
// Checked on worst cases by its rectangles (tests/documents/saw_sheet/saw_sheet_test.cpp).
#pragma once

#include <vector>

#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {

// The sheets in order. Throws FontFault.
std::vector<Page> draw_saw_sheet(const SawOrder& order, Paper paper, const FontFiles& files);

// Title and author for the file. A list of pieces has no date: its documents count as made on 2000-01-01, so that equal plans give
// equal bytes.
DocumentInfo saw_sheet_info(const SawOrder& order);

}  // namespace shaftcut
