// The saw plans of a batch as one file's sheets: each profile's saw sheet, then what is not planned, with its pieces and why.
//
// Sheets are numbered through the file. Checked by tests/documents/saw_sheet/batch_saw_sheets_test.cpp.
#pragma once

#include <vector>

#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/build/batch.hpp"

namespace shaftcut {

// Empty where the batch has no piece to saw.
std::vector<Page> draw_batch_saw_sheets(const Batch& batch, Paper paper, const FontFiles& files);

}  // namespace shaftcut
