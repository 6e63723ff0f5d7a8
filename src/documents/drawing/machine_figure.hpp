// Every dimension of a machine to measure, drawn where it is measured, by the words of a job file. Not to scale. Private to
// the documents.
#pragma once

#include "page/canvas.hpp"
#include "wording.hpp"

namespace shaftcut {

// From above and from the side; over the whole width of `room`, from its top down. The y below.
double draw_trailed_figure(Canvas& canvas, Rect room, const Wording& w);
// From the side.
double draw_mounted_figure(Canvas& canvas, Rect room, const Wording& w);

}  // namespace shaftcut
