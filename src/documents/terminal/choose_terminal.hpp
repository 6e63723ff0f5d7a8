// What would serve, in lines of at most 80 columns: the best few with their checks, what could be made to order, and why the others do not.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"
#include "shaftcut/trade/choose/choose.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string choices_text(const Choices& choices, Colour colour, const Wording& w);

}  // namespace shaftcut
