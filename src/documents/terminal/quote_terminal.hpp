// A quote in a few lines of at most 80 columns: verdict, each line with its amount, the totals, and what is offered instead.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"
#include "shaftcut/trade/quote/quote.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string quote_text(const Quote& quote, Colour colour, const Wording& w);

}  // namespace shaftcut
