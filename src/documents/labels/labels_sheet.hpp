// Labels to print and stick: one for each piece that is sawn or fetched, and one for each finished shaft.
//
// Two columns of six on a sheet, the whole of it: on A4 105 × 49.5 mm each, on Letter 108 × 46.6 mm; small marks show where to part
// them. What is printed keeps 5 mm from every edge of a label. A code holds the order and the part: "K-1042 inner tube".
// They lie in the order in which the saw yields the pieces, numbered from left to right and from the top down; then what it does not saw, then the shafts.
// Checked by the rectangles, by counting, and by reading the codes back from the printed sheet (tests/documents/build_papers_test.cpp).
#pragma once

#include <cstdint>
#include <functional>

#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/build/batch.hpp"

namespace shaftcut {

// A label for each piece and each shaft of the orders that can be built.
std::int64_t count_labels(const Batch& batch);

// As many as are asked of one file: beyond them the list is to be split.
inline constexpr std::int64_t most_labels = 50'000;

// `batch` must outlive what is given back. `count` sheets, none without a label; `draw` makes one, so that not all need to be held
// at once.
struct LabelSheets {
    std::size_t count = 0;
    std::function<Page(std::size_t)> draw;
};
LabelSheets label_sheets(const Batch& batch, Paper paper, const FontFiles& files);  // throws FontFault

}  // namespace shaftcut
