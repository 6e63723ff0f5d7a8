// What every file is told whose text holds a character that nobody sees. Private to the reading layer.
#pragma once

#include <string_view>
#include <vector>

#include "parse.hpp"

namespace shaftcut {

// "holds the invisible character U+202E", and what would be right. `point` is one that is_hidden() names.
ParseFault hidden_fault(char32_t point);

// One fault for each such character in `text`, however often it stands there. Those in `allowed` are none.
// Checked by tests/reading/bad/ and in tests/reading/source/hidden_text_test.cpp.
std::vector<ParseFault> hidden_faults(std::string_view text, std::u32string_view allowed = {});

}  // namespace shaftcut
