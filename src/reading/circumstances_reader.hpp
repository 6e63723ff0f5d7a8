// What a job says around its lengths: whom and what the shaft is for, who measured, why a limit was loosened.
#pragma once

#include "shaftcut/trade/data/job.hpp"
#include "xml/element.hpp"

namespace shaftcut {

inline constexpr std::size_t most_other_tractors = 20;  // of one machine (the project's own choice)

// Reads `for`, `measured-by` and what `limits` says beside the limits, into a job that is returned with them. Faults beside those of form:
// other-tractors="none" beside an other-tractor, and more than most_other_tractors.
// Checked in tests/reading/job_says_test.cpp and by tests/reading/bad/.
Job with_for(Element& element, Job job);
Job with_measured_by(Element& element, Job job);
Job with_limits(Element& element, Job job);

}  // namespace shaftcut
