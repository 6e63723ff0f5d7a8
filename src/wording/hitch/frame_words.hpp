// What stands under a machine's drawing that moves. Lengths come in the wording's unit.
#pragma once

#include <cstddef>
#include <string>

#include "shaftcut/trade/cut/datum.hpp"
#include "wording.hpp"

namespace shaftcut {

// "straight ahead and level: 812 mm".
std::string frame_said(const Posture& at, const std::string& length, const Wording& w);

// "Shortest of all: 742 mm, turned 12° to the left".
std::string shortest_said(const std::string& length, const Posture& at, const Wording& w);
std::string longest_said(Range range, const std::string& length, const Posture& at, const Wording& w);
std::string angle_said(End end, Range range, Angle angle, const Posture& at, const Wording& w);

std::string why_no_frames(const WhyUnreadable& why, const Wording& w);
// Of a machine beyond the first `most` of a job.
std::string only_first_drawn(std::size_t most, const Wording& w);

}  // namespace shaftcut
