// How a shaft came in, as a job states it.
#pragma once

#include "shaftcut/trade/data/job.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// A `condition` element, and where it states the guard.
struct ConditionReading {
    Condition condition;
    Attribute guard;
};

ConditionReading read_condition(Element& element);

// Faults where the condition's word for the guard and what the halves say of theirs cannot both be: complete, and one of them is none or
// damaged; missing, and none of them is none while the guard of each is stated.
// Checked by tests/reading/bad/.
void check_guards(const ConditionReading& condition, const PerEach<Tube, JobHalf>& halves);

}  // namespace shaftcut
