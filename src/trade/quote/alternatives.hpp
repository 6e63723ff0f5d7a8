// What could be done instead, each by the checks themselves. Private to the trade layer's quote.
#pragma once

#include <vector>

#include "shaftcut/trade/quote/quoting.hpp"

namespace shaftcut {

// In the order in which they are offered: a change at the machine with this shaft then cut; this shaft; a new one, the best of each series that would
// serve, at most three; one made to order. What the checks refuse is not among them. Cheapest and soonest are marked.
std::vector<Alternative> alternatives_to(const Job& job, const WorkOrder& order, const QuoteMeans& means);

}  // namespace shaftcut
