// The bounds of each kind of length, and the slip of the unit that explains a length outside. Checked by tests/reading/bad/ and in
// tests/reading/bounds_test.cpp.
#pragma once

#include "data/bounds.hpp"
#include "source/findings.hpp"

namespace shaftcut {

constexpr const Bounds& bounds_of(Bounded kind)
{
    switch (kind) {
    case Bounded::closed:
    case Bounded::shortest:
    case Bounded::longest: break;
    case Bounded::shoulder: return shoulder_bounds;
    case Bounded::spacing: return spacing_bounds;
    case Bounded::kerf: return kerf_bounds;
    case Bounded::plus_minus: return plus_minus_bounds;
    }
    return telescoping_bounds;
}

}  // namespace shaftcut
