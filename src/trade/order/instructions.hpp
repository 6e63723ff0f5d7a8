// The work to do: steps in order, cautions, notes. Common practice of published manuals.
#pragma once

#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

// The steps for this order, each with its number; those that it does not need are left out. Their figures hold for the lengths as they
// were stated. A refused order has none; one that fits has 1, 2, 4 where something is confirmed on the parted shaft, and 12 to 16.
std::vector<Step> steps_for(const WorkOrder& order);

std::vector<Caution> cautions_for(const WorkOrder& order);

// The halves whose guard is missing or damaged; nothing where there are none. Before every other warning.
std::optional<GuardWarning> guard_warning_for(const WorkOrder& order);

// What its measures say where they are sure of another series than the job states; else nothing.
std::optional<IdentifiedBy> measures_like_another(const WorkOrder& order);

// What the fitter should know besides the checks: from which cross each length runs, which fit decides.
std::vector<Note> notes_for(const WorkOrder& order);

// What the machines' geometry says besides: where the shortest lies and what a measurement at the ends of the lift would
// miss, and where the pin should be.
std::vector<Note> machine_notes_for(const WorkOrder& order);

}  // namespace shaftcut
