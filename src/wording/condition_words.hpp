// How a shaft came in, as every paper says it.
#pragma once

#include <string>

#include "shaftcut/trade/data/job.hpp"
#include "wording.hpp"

namespace shaftcut {

// "guard complete, tubes straight, slides by hand": what was looked at.
std::string condition_words(const Condition& found, const Wording& w);

}  // namespace shaftcut
