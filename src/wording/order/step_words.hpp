// What is done, step by step, said. In its texts ☐ is a square to tick and ▭ a box to write in, with what is expected before it, kept together by
// spaces that do not break: paper draws them.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/order/steps.hpp"
#include "wording.hpp"

namespace shaftcut {

// All of a step's tasks, without its number.
std::string say(const Step& step, const Wording& w);
std::string say(const Task& task, const Wording& w);

// "Mark": a step's name. On paper its number alone stands before it.
std::string step_heading(int number, const Wording& w);

// "A": inner guard A, outer guard B, inner tube C, outer tube D.
std::string letter_of(SawnPart part);

// Where the rings are read: "Shortest", "Longest turning, Demo tractor 60, turned left to the stop: 850 mm, inner cross".
std::string position_of(const ReadRings& position, const Wording& w);
// What stands between P and the box: "P ▭ + 40 mm = ▭".
std::string sum_on_rings(const std::string& pulled_out, const Wording& w);
// "84 mm": whole millimetres, for a position is no more exact than that; `as` says to which side.
std::string pulled_out(Rounded as, Length length, const Wording& w);
// What is done with a reading outside: more, less; and what is never done.
std::string when_outside(const ReadRings& position, const Wording& w);
std::string never(const ReadRings& position, const Wording& w);

}  // namespace shaftcut
