// Running text with boxes in it: ☐ stands for a square to tick, ▭ for a box to write in. What stands before a box in one piece, by spaces
// that do not break, is set as large as figures are. Checked in tests/documents/page/boxed_text_test.cpp.
#pragma once

#include <string_view>

#include "page/canvas.hpp"

namespace shaftcut {

struct BoxedText {
    Lettering words{2.5, Weight::regular, 0.85, 1.5};
    Lettering figures{3.5, Weight::regular, 0.8};
    double box_width = 19;
};

inline constexpr double written_box_height = 6.4;

// Lines of at most `width` mm below `top_left`; the y below the last.
double draw_boxed(Canvas& canvas, Point top_left, double width, std::string_view text, const BoxedText& style = {});
double boxed_height(const Canvas& canvas, double width, std::string_view text, const BoxedText& style = {});

}  // namespace shaftcut
