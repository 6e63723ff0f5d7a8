// The work in words: steps in order, cautions, notes. Common practice of published manuals, in our own words.
#pragma once

#include "shaftcut/trade/work_order.hpp"

namespace shaftcut {

// The steps for this order; they name no computed figure, so they hold for a document whose lengths are changed. A refused
// order has none.
std::vector<std::string> steps_for(const WorkOrder& order);

std::vector<std::string> cautions_for(const WorkOrder& order);

// What the fitter should know besides the checks: from which cross each length runs, which fit decides.
std::vector<std::string> notes_for(const WorkOrder& order);

}  // namespace shaftcut
