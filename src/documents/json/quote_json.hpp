// A quote for scripts: amounts as decimal strings of its currency, so that none is rounded on the way. What is not known is null.
#pragma once

#include <string>

#include "shaftcut/documents/json/json.hpp"
#include "shaftcut/trade/quote/quote.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string json_of(const Quote& quote, JsonLayout layout, const Wording& w);

}  // namespace shaftcut
