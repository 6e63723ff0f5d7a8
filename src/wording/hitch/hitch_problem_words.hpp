// What is wrong with a machine's geometry, said.
#pragma once

#include <string>

#include "shaftcut/trade/hitch/findings.hpp"
#include "wording.hpp"

namespace shaftcut {

// What is wrong, and what would be right.
struct FaultWords {
    std::string wrong, right;
};

FaultWords say(const HitchFault& fault, const Wording& w);

}  // namespace shaftcut
