// What a series of the catalogue can do, in lines. Checked in tests/trade/build/abilities_test.cpp.
#pragma once

#include "shaftcut/trade/build/abilities.hpp"
#include "wording.hpp"

namespace shaftcut {

// "  can           cut, cut with halves measured, build", what is missing for the rest, and figures that cannot be.
std::string ability_lines(const SeriesAbilities& abilities, const Wording& w);

}  // namespace shaftcut
