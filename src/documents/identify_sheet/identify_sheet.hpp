// One page for the bench: a shaft whose series is asked for, its parts drawn with what was measured of each against the series' figures, what is off,
// and what to measure next with the tool drawn as it is held. No probability finer than a whole per cent stands on it.
// Checked for every sample, paper and unit by its rectangles in tests/documents/identify_sheet.
#pragma once

#include <vector>

#include "page/cairo_pages.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/identify/identified_shaft.hpp"
#include "wording.hpp"

namespace shaftcut {

// One page, always. Throws FontFault.
std::vector<Page> draw_identify_sheet(const IdentifiedShaft& shaft, Paper paper, const FontFiles& files, const Wording& w);

DocumentInfo identify_sheet_info(const IdentifiedShaft& shaft, const Wording& w);

}  // namespace shaftcut
