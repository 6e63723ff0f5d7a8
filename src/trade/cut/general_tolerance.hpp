// General tolerances for sawn lengths.
#pragma once

#include <optional>

#include "shaftcut/words/length.hpp"

namespace shaftcut {

// What is allowed up or down on a linear size with no tolerance of its own: ISO 2768-1, linear dimensions, class c (coarse).
// A boundary belongs to the lower range. Nothing for a size of 30 mm or less or over 4000 mm. Checked row by row in
// general_tolerance_test.
std::optional<Length> coarse_tolerance(Length size);

}  // namespace shaftcut
