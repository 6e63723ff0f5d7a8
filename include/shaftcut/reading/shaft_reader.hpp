// The shaft in a job, and whether the catalogue knows what it names.
#pragma once

#include "shaftcut/reading/element.hpp"
#include "shaftcut/trade/catalogue.hpp"
#include "shaftcut/trade/job.hpp"

namespace shaftcut {

// Reads a `shaft` element. Faults beside those of form: a series or connection that `catalogue` does not hold; shape or
// spacing beside a series, which states them; neither series nor shape; and where an end has a wide-angle joint: a series
// without one, no spacing without a series, and no reference of the closed length where nothing says from which cross it
// runs. Checked in tests/reading/job_reader_test.cpp and by tests/reading/bad/.
JobShaft read_shaft(Element& element, const Catalogue& catalogue);

}  // namespace shaftcut
