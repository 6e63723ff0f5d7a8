// What holds a yoke on its stub, drawn so that it is known by looking.
#pragma once

#include "page/canvas.hpp"
#include "shaftcut/trade/data/terms.hpp"

namespace shaftcut {

// In the middle of `picture`: the stub from the left with its groove, the yoke's hub around it.
void draw_lock(Canvas& canvas, Rect picture, Lock lock);

}  // namespace shaftcut
