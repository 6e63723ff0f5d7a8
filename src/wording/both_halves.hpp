// What is wrong and what would be right, each half of a problem's sentence.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut {

struct Said {
    std::string wrong, right;
};

// "what is wrong; what would be right".
inline std::string in_one(const Said& said, const Wording& w) { return w("{wrong}; {right}", {{"wrong", said.wrong}, {"right", said.right}}); }

}  // namespace shaftcut
