// A text in one line where it can be narrowed to that, else in several. Checked in tests/documents/cut_sheet/sides_test.cpp.
#pragma once

#include <string_view>

#include "page/canvas.hpp"

namespace shaftcut {

// Within `width` mm below `top_left`; the y below it.
double draw_fitted_lines(Canvas& canvas, Point top_left, double width, std::string_view text, Lettering lettering);
double fitted_lines_height(const Canvas& canvas, double width, std::string_view text, Lettering lettering);

}  // namespace shaftcut
