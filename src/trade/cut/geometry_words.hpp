// What a machine's geometry gave, in words: positions, and which of several fits' figures decides.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/cut/datum.hpp"
#include "shaftcut/trade/data/rounding.hpp"

namespace shaftcut {

// How an operating length is rounded on every paper, drawing and line: to the side on which the shaft must be able to serve.
inline constexpr Toward shortest_rounds = toward_of(Rounded::shortest), longest_rounds = toward_of(Rounded::longest);

// "turned 35° to the right, rear 10° down, right side 5° up"; "straight ahead and level"; "with the lower hitch point at 421 mm".
std::string in_words(const Posture& posture, Units units);

// The figure of the deciding fit where that one computed it, else null: the decided figure was measured, or is not known.
const ExtremeLength* deciding_shortest(const std::vector<FitReading>& fits, const Fit& deciding);
const ExtremeLength* deciding_longest(const std::vector<FitReading>& fits, const Fit& deciding, Range range);
const ExtremeAngle* deciding_angle(const std::vector<FitReading>& fits, const Fit& deciding, End end, Range range);

// "± 7.1 mm, most of it from input-behind (1.9 mm) and lower-link (1.3 mm)": what to measure again first.
std::string doubt_in_words(const ExtremeLength& length, Units units);

// "computed from the machine's geometry, turned 35° to the right, ± 7 mm, most of it from input-behind (1.9 mm) and pto-height (1.3 mm)".
std::string origin_in_words(const ExtremeLength& length, Units units);

// "the tractor's name: " where there are several fits and this one has a name, else empty.
std::string whose(const FitReading& fit, std::size_t fits);

}  // namespace shaftcut
