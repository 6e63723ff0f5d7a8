// Limits are written alike in a job, in a series and in the workshop's configuration.
#pragma once

#include "shaftcut/trade/data/limits.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// The limits that a `limits` element states, each with the place of its attribute. Every row of limit_rows() is an
// attribute: a length of 0 or more, a fraction above 0 and at most 1, an angle of 0 to 180 degrees, or 0 to 100 per cent.
// Checked in tests/reading/workshop_reader_test.cpp.
Limits read_limits(Element& element);

}  // namespace shaftcut
