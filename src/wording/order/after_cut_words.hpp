// What is said of a shaft as it was cut. Checked by tests/wording/order/after_cut_words_test.cpp.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/order/after_cut.hpp"
#include "wording.hpp"

namespace shaftcut {

// "RIGHT", "SAW MORE", "MEASURE AGAIN", "DO NOT USE".
std::string verdict_words(AfterCutVerdict verdict, const Wording& w);

// "Saw 8 mm more off the inner tube."
std::string say(const PartAfterCut& part, const Wording& w);
// Nothing to do: empty.
std::string say(const ClosedFinding& closed, const Wording& w);
std::string say(const RingsFinding& rings, const Wording& w);

// What is to be said beside the parts, of the closed length, the halves and the rings; empty where nothing is.
std::vector<std::string> sentences_beside_parts(const AfterCut& found, const Wording& w);
// All of it, part by part; what needs no words left out.
std::vector<std::string> sentences_of(const AfterCut& found, const Wording& w);

}  // namespace shaftcut
