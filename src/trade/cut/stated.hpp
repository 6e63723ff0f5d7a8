// From a telescoping length back to what a tape measure reads: the inverse of datum.hpp. Private to the layers above.
// Checked in tests/trade/cut/stated_test.cpp.
#pragma once

#include "shaftcut/trade/cut/datum.hpp"

namespace shaftcut {

// The straight distance whose in_line() is this length.
Length distance_in_line(Length telescoping, const Reaches& reaches);

// The greatest straight distance whose bent() is no more than this length, to the micrometre.
Length distance_bent(Length telescoping, const Reaches& reaches, const PerEach<End, Angle>& angles);

}  // namespace shaftcut
