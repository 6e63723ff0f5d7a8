// What is wrong and what would be right, each half of a problem's sentence.
#pragma once

#include <string>

namespace shaftcut {

struct Said {
    std::string wrong, right;
};

}  // namespace shaftcut
