// A shaft as it was cut in a few lines of at most 80 columns: verdict, each part, what else was found, and each check that warns or fails.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string after_cut_text(const ShaftAfterCut& shaft, Colour colour, const Wording& w);

}  // namespace shaftcut
