// Why a shaft is refused and what would serve instead, as it is said to a customer across a counter: short, the thing named, no place in a
// file. The checks' and the advice's own words stay where figures are compared: on the terminal, in JSON, in the workbook.
// Checked in tests/wording/cut_sheet/refusal_words_test.cpp.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut::cut_sheet {

// Each reason in one sentence, in the order of the checks.
std::vector<std::string> refusal_reasons(const WorkOrder& order, const Wording& w);

// A way out in few words; what is measured and made new after it stands over all of them.
std::string way_in_short(const WayOut& way, const Wording& w);

// A warning in full without the places in a file of what it compares.
std::string says_without_places(Check check, const Wording& w);

}  // namespace shaftcut::cut_sheet
