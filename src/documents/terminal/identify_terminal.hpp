// Which series a measured shaft can be, for the terminal. Private to the documents.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"
#include "shaftcut/trade/identify/identified_shaft.hpp"
#include "wording.hpp"

namespace shaftcut {

// The verdict on the first line, then why, what to measure next, what it does not say, and how sure each series is. No probability is finer than a
// whole per cent.
std::string identify_text(const IdentifiedShaft& shaft, Colour colour, const Wording& w);

}  // namespace shaftcut
