// A limit's figure, and where it comes from.
#pragma once

#include <string>

#include "shaftcut/trade/data/limits.hpp"
#include "wording.hpp"

namespace shaftcut {

// "40 mm", "1/2", "35°", "10 %".
std::string limit_text(Limit limit, LimitValue value, const Wording& w);

// "set by the job"; of a default its source, or that it is common practice or the project's own choice.
std::string say(const LimitBasis& basis, const Wording& w);

}  // namespace shaftcut
