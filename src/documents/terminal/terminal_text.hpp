// A work order in a few lines of at most 80 columns: verdict, the four cuts, and each check that is not a pass.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string terminal_text(const WorkOrder& order, Colour colour, const Wording& w);

// A saw plan likewise: what to fetch, what it costs and how good that is proven to be, waste, and whether it was stopped.
std::string terminal_text(const SawOrder& order, Colour colour, const Wording& w);

}  // namespace shaftcut
