// Figures of a half that a series does not state.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/data/half_figure.hpp"
#include "wording.hpp"

namespace shaftcut {

// "the inner half's seat", of those that no catalogue states: "... and the outer half's guard-seat".
std::string say(const std::vector<HalfFigure>& figures, const Wording& w);

}  // namespace shaftcut
