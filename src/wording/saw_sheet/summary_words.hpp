// What the summary of a list of orders says. Checked in tests/documents/saw_sheet/batch_summary_test.cpp.
#pragma once

#include "shaftcut/trade/build/batch.hpp"
#include "wording.hpp"

namespace shaftcut::summary_words {

std::string title(const std::string& list, const Wording& w);
std::string subject(const Wording& w);

// "22 TO BUILD", "3 HELD", "1 REFUSED".
std::string to_build(std::int64_t shafts, const Wording& w);
std::string held(std::int64_t orders, const Wording& w);
std::string refused(std::int64_t orders, const Wording& w);

enum class Caption { held, refused, saw, fetch };
std::string say(Caption caption, const Wording& w);

// An order and all that is open of it; an order that is refused.
std::string held_order(const BatchOrder& order, const Wording& w);
std::string refused_order(const BatchOrder& order, const Wording& w);
// "lemon tube 43 x 3.4: 5 × 6000 mm for 20 pieces".
std::string sawn(const std::string& profile, const SawOrder& plan, const Wording& w);
std::string not_planned(const std::string& profile, const Wording& w);
std::string fetched(const PartCount& part, const Wording& w);

}  // namespace shaftcut::summary_words
