// All texts of the bench page, which holds none itself: its HTML and scripts name them by key. %1 is a place that the page fills.
// Checked in tests/wording/bench/bench_words_test.cpp.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "wording.hpp"

namespace shaftcut {

// Key and text, no key twice. KEY_hint says beside a box how to hold the tape.
std::vector<std::pair<std::string, std::string>> bench_words(const Wording& w);

}  // namespace shaftcut
