// What the steps at the saw and those on the machine are made of. Private to the order room.
#pragma once

#include "order/instructions.hpp"

namespace shaftcut::steps {

// Puts the tasks under this number; no step where there are none.
void add(std::vector<Step>& steps, int number, std::vector<Task> tasks);

inline bool cuts_a_tube(const WorkOrder& order) { return order.cut->plan.cuts_tube(Tube::inner) || order.cut->plan.cuts_tube(Tube::outer); }

// 1 to 8, up to the bare ends.
void add_saw_steps(std::vector<Step>& steps, const WorkOrder& order);
// 1, 2, 4 of a shaft from which nothing comes off.
void add_looks(std::vector<Step>& steps, const WorkOrder& order);
// 9 to 11, of a shaft that was sawn.
void add_reading_steps(std::vector<Step>& steps, const WorkOrder& order);
// 12 to 16.
void add_machine_steps(std::vector<Step>& steps, const WorkOrder& order);

}  // namespace shaftcut::steps
