// Every dimension of a machine to measure, drawn where it is measured, each with a letter. Not to scale. Private to the documents.
#pragma once

#include "data/machine_words.hpp"
#include "page/canvas.hpp"
#include "wording.hpp"

namespace shaftcut {

// The letters run through a machine's dimensions and then its movements, in the order in which one measures them.
std::string figure_letter(TrailedDimension dimension);
std::string figure_letter(MountedDimension dimension);
std::string figure_letter(TrailedMovement movement);
std::string figure_letter(MountedMovement movement);

// Of both, mm.
inline constexpr double machine_figure_width = 190 * 0.5;

// From above and from the side, from the top left corner of `room`. The y below.
double draw_trailed_figure(Canvas& canvas, Rect room, const Wording& w);
// From the side.
double draw_mounted_figure(Canvas& canvas, Rect room, const Wording& w);

}  // namespace shaftcut
