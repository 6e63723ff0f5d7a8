// What could be measured of a shaft, or looked at, or measured once more.
#pragma once

#include <vector>

#include "identify/shaft_figures.hpp"

namespace shaftcut::identifying {

// Everything that was not measured yet, in the order of the parts. A cap may be measured in the yoke's bore or laid bare. Of a joint of which nobody looked whether it has one
// cross or two, the figures of its cross are asked for as of a standard joint's. A width or wall is of a stated tube, or, where one was measured and nobody knows
// which, of that one or of the other. `catalogue`: circlips and nipples are asked for where some series states one.
std::vector<IdentifyingFigure> not_measured(const Catalogue& catalogue, const Measures& measures, const ShaftFigures& figures);

// What was measured of the cross that such a figure of an end is of; null: nothing.
const CrossFigures* cross_of(const EndFigures& end, const IdentifyingFigure& figure);

MeasuringEffort effort_of(const IdentifyingFigure& figure);

}  // namespace shaftcut::identifying
