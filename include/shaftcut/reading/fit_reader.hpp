// One tractor and machine that a job's shaft must serve.
#pragma once

#include "shaftcut/reading/element.hpp"
#include "shaftcut/trade/job.hpp"

namespace shaftcut {

// Reads a `fit` element. Faults beside those of form: no shortest, no longest with the PTO turning, two lengths for one
// range, two angles for one side, and a reference between grooves, where it says nothing.
// Checked in tests/reading/job_reader_test.cpp and by tests/reading/bad/.
JobFit read_fit(Element& element);

}  // namespace shaftcut
