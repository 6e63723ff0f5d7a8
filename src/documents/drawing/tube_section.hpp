// The section of a profile tube between the jaws of a calliper.
#pragma once

#include "page/canvas.hpp"
#include "shaftcut/trade/data/terms.hpp"

namespace shaftcut {

// A small drawing in the middle of `picture`, about 12 wide and 14 high.
void draw_section(Canvas& canvas, Rect picture, Shape shape);

}  // namespace shaftcut
