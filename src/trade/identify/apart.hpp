// How far apart two series are by their figures.
#pragma once

#include <optional>
#include <vector>

#include "identify/figure_kinds.hpp"
#include "shaftcut/trade/identify/look_alikes.hpp"

namespace shaftcut::identifying {

// A series' figures that can be compared with another's. Where a standard joint has several crosses to choose from, none is its own.
struct StatedFigure {
    IdentifyingFigure what{};
    std::optional<Length> size{};
    double deviation = 1;  // S_q, mm
};
using StatedFigures = std::vector<StatedFigure>;  // the same figures of every series, in the same order
StatedFigures stated_figures(const Series& series);

// Of a spacing, or of a cross whose place is stated: a figure that only a wide-angle joint has.
bool only_wide_angle(const IdentifyingFigure& figure);

struct Apart {
    double distance = 0;                  // √Σ v²
    std::vector<IdentifyingFigure> by{};  // the fewest that tell them apart; empty: nothing does
};

// Of two series of one shape. with_wide_angle: a wide-angle joint's figures too.
Apart apart(const StatedFigures& a, const StatedFigures& b, bool with_wide_angle);

// The same without what tells them apart: whether anything does.
bool are_apart(const StatedFigures& a, const StatedFigures& b, bool with_wide_angle);

// Both state every figure, or neither does: nothing else is in the catalogue.
bool state_the_same(const StatedFigures& a, const StatedFigures& b);

}  // namespace shaftcut::identifying
