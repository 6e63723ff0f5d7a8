// What is measured and looked at to tell a shaft's series, and how: names, lengths as a calliper reads them, how a tool is held.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/identify/identify.hpp"
#include "wording.hpp"

namespace shaftcut::identify_words {

// "the span of the outer cross at the tractor end", "the width of the inner tube"; within a list of one part's figures: "outer span", "inner width".
std::string figure_name(const IdentifyingFigure& figure, const Wording& w);
std::string short_name(const IdentifyingFigure& figure, const Wording& w);
std::string part_name(IdentifiedPart part, const Wording& w);

// To a hundredth of a millimetre, or a thousandth of an inch with the millimetres beside it: sixteenths are too coarse for a cross.
std::string calliper(Length length, const Wording& w);
// Without the unit, in a column that names it.
std::string bare_figure(Length length, const Wording& w);
// Measured less the series' own, each to a hundredth of a millimetre as it is printed. The series states it.
Length printed_off(const ComparedFigure& figure);
// "0.6 mm more", "0.6 mm less", "the same"; of a length off in inches both units.
std::string off_by(Length off, const Wording& w);
// "+0.6", "−0.6", "0": without the unit.
std::string bare_off(Length off, const Wording& w);

// "> 95 %" of what counts as sure, "< 1 %", else whole per cents, rounded down.
std::string percent(double percent, const Wording& w);

// How the tool is held for it, the tubes' shape where it matters and is known; and the time with what must be loosened: "1 min, as it lies".
std::string takes(const IdentifyingFigure& figure, std::optional<Shape> shape, const Wording& w);
std::string effort(MeasuringEffort effort, const Wording& w);

}  // namespace shaftcut::identify_words
