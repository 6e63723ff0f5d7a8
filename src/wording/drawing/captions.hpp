// Captions of a machine's drawings: texts that hold no figure.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut::geometry {

// In the figure of what to measure, and in the machine to scale.
enum class FigureCaption { trailed_from_above, trailed_from_left, mounted_from_left, pto_stub, hitch_pin, input_shaft, lower_hitch_point, upper_hitch_point, pin, pto };
// Of the boxes that hold what the job states.
enum class StatedCaption { stated, workshops, not_stated, hold_against_form };
// Of the plot.
enum class PlotCaption { least_allowed, turn };

std::string say(FigureCaption caption, const Wording& w);
std::string say(StatedCaption caption, const Wording& w);
std::string say(PlotCaption caption, const Wording& w);

}  // namespace shaftcut::geometry
