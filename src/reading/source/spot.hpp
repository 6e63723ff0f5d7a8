// Line and column in the file that is being read, as in Place.
#pragma once

#include <compare>

namespace shaftcut {

struct Spot {
    int line = 1;
    int column = 1;
    auto operator<=>(const Spot&) const = default;
};

}  // namespace shaftcut
