// The summary of a list of orders: how many shafts to build, what is held and refused, which bars to saw, and one pick list of all parts.
//
// Nothing of an order that is held or refused is in what is sawn or fetched. Tubes that are sawn are fetched as bars; all other parts
// stand in the pick list by their names. Checked in tests/documents/saw_sheet/batch_summary_test.cpp.
#pragma once

#include <vector>

#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/build/batch.hpp"

namespace shaftcut {

// One sheet, or more where the lists are long. Throws FontFault.
std::vector<Page> draw_batch_summary(const Batch& batch, Paper paper, const FontFiles& files);

DocumentInfo batch_summary_info(const Batch& batch);

}  // namespace shaftcut
