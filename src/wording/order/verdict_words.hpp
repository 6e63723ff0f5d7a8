// What the verdict on a shaft that exists is called on every paper.
#pragma once

#include <string>

#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut {

// "CUT", "FITS AS IT IS", "DO NOT CUT".
std::string verdict_name(Verdict verdict, const Wording& w);

// "CUT", "FITS AS IT IS: CONFIRM 2 FIRST", "DO NOT CUT".
std::string verdict_words(const WorkOrder& order, const Wording& w);

// A warning before all others: "WARNING: The shaft must not run …".
std::string warned(const std::string& warning, const Wording& w);

}  // namespace shaftcut
