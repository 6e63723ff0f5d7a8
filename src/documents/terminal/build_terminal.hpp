// Shafts made to order in a few lines of at most 80 columns each.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"
#include "shaftcut/trade/build/batch.hpp"
#include "wording.hpp"

namespace shaftcut {

// One order: verdict, lengths, and each check that warns or fails.
std::string terminal_text(const BuildPlan& plan, Colour colour, const Wording& w);

// The batch: how many can be built, each profile's saw plan, and what has none.
std::string terminal_text(const Batch& batch, Colour colour, const Wording& w);

}  // namespace shaftcut
