// What would serve instead of a refused shaft, said.
#pragma once

#include <string>

#include "shaftcut/trade/advice/findings.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string say(const WayOut& way, const Wording& w);

}  // namespace shaftcut
