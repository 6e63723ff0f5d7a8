// Measured figures beside those of a series.
#pragma once

#include <vector>

#include "identify/parts.hpp"

namespace shaftcut::identifying {

// Of one part, as they were measured, beside the series number `series` in the way in which they fit it best.
std::vector<ComparedFigure> compared_figures(const Parts& parts, const Catalogue& catalogue, std::size_t series, IdentifiedPart part);

// Of all parts.
ComparedSeries compared_series(const Parts& parts, const Catalogue& catalogue, std::size_t series);

// Readings outside the trade's sizes.
std::vector<OutsideTrade> outside_trade(const ShaftFigures& figures);

}  // namespace shaftcut::identifying
