// The operating lengths of a machine in a few lines of at most 80 columns.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut {

// `order` must hold a machine's geometry.
std::string lengths_text(const WorkOrder& order, Colour colour, const Wording& w);

}  // namespace shaftcut
