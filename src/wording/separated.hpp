// Lists whose parts stand one behind the other. Private to the wording.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace shaftcut {

// The parts with `by` between them: "a; b; c".
std::string separated(const std::vector<std::string>& parts, std::string_view by);

}  // namespace shaftcut
