// What a machine's geometry gave, in words.
#pragma once

#include <string>

#include "data/machine_dimensions.hpp"
#include "shaftcut/trade/cut/datum.hpp"
#include "wording.hpp"

namespace shaftcut {

// "turned 35° to the right, rear 10° down, right side 5° up"; "straight ahead and level"; "with the lower hitch point at 421 mm".
std::string in_words(const Posture& posture, const Wording& w);

// "± 7.1 mm, most of it from input-behind (1.9 mm) and lower-link (1.3 mm)": what to measure again first.
std::string doubt_in_words(const ExtremeLength& length, const Wording& w);

// "in front", "rises".
std::string say(Side side, const Wording& w);

}  // namespace shaftcut
