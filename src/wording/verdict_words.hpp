// What the verdict is called on every paper. Private to the documents.
#pragma once

#include <string>

#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

// "CUT", "FITS AS IT IS: CONFIRM 2 FIRST", "DO NOT CUT".
std::string verdict_words(const WorkOrder& order);

}  // namespace shaftcut
