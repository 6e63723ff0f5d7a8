// How saw plans are said. Checked in tests/wording/saw/saw_words_test.cpp.
#pragma once

#include "shaftcut/trade/saw/saw_order.hpp"
#include "wording.hpp"

namespace shaftcut {

// What is wrong with a task, naming the value found; and what would be right.
std::string wrong_of(const SawFinding& finding, const Wording& w);
std::string right_for(const SawFinding& finding, const Wording& w);
// "101 mm is longer than every bar; the longest bar holds 100 mm between its trims".
std::string say(const SawFinding& finding, const Wording& w);

std::string say(SawCaution caution, const SawOrder& order, const Wording& w);
// Why the search for a better plan ended; empty where it was finished.
std::string say(SawEnd end, const Wording& w);
// "Cost 22000, which is the bars' length in mm, for no cost is stated; proven: no plan costs less."
std::string cost_and_bound(const SawOrder& order, const Wording& w);

}  // namespace shaftcut
