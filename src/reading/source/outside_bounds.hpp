// What a file is told whose length cannot be one. Private to the reading layer.
#pragma once

#include <optional>
#include <string>

#include "data/bounds.hpp"
#include "parse.hpp"

namespace shaftcut {

// Nothing where `length` lies within the bounds. `what` names them: "a shoulder is". Where the other unit explains the figure
// the fault asks by name whether the unit is right.
// Checked by tests/reading/bad/ and in tests/reading/bounds_test.cpp.
std::optional<ParseFault> outside_bounds(Length length, const Bounds& bounds, const std::string& what);

}  // namespace shaftcut
