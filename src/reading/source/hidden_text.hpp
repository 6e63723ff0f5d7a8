// Characters of a text that nobody sees. Private to the reading layer.
#pragma once

#include <string>
#include <string_view>

namespace shaftcut {

// Each such character in `text` once, however often it stands there. Those in `allowed` are none.
// Checked by tests/reading/bad/ and in tests/reading/source/hidden_text_test.cpp.
std::u32string hidden_in(std::string_view text, std::u32string_view allowed = {});

}  // namespace shaftcut
