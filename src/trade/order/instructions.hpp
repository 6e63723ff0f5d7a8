// The work in words: steps in order, cautions, notes. Common practice of published manuals, in our own words.
#pragma once

#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

// The steps for this order; they name no figure that comes from a measured length, so they hold for a document whose lengths
// are changed. A refused order has none.
std::vector<std::string> steps_for(const WorkOrder& order);

std::vector<std::string> cautions_for(const WorkOrder& order);

// Of each half whose guard is missing or damaged: that the shaft must not run without it. Before every other warning.
std::vector<std::string> guard_warnings_for(const WorkOrder& order);

// What the fitter should know besides the checks: from which cross each length runs, which fit decides.
std::vector<std::string> notes_for(const WorkOrder& order);

// What the machines' geometry says besides: where the shortest lies and what a measurement at the ends of the lift would
// miss, and where the pin should be.
std::vector<std::string> machine_notes_for(const WorkOrder& order);

}  // namespace shaftcut
