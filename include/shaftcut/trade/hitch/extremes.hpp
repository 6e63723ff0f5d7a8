// The greatest value of a smooth function over a whole box of up to three movements, wherever it lies: inside, on a face,
// along an edge or in a corner.
#pragma once

#include <array>
#include <functional>
#include <optional>

namespace shaftcut {

// A box of positions: middle - half to middle + half in each movement. A half of 0 holds that movement still.
struct Box {
    std::array<double, 3> middle{};
    std::array<double, 3> half{};
    std::array<int, 3> points{1, 1, 1};  // of the grid searched first, at least 2 where the half is not 0
};

// Empty where the function has no answer at a position.
using BoxFunction = std::function<std::optional<double>(const std::array<double, 3>&)>;

struct Greatest {
    std::array<double, 3> at{};
    std::optional<double> value;  // empty: the function has no answer at `at`, and no greatest value was found
};

// Searches a grid over the box, then climbs from every grid point that no neighbour exceeds, each step to the greatest
// value that a quadratic through the function has on the faces, edges and corners within reach. Deterministic.
// Positions are never outside the box. Among equals the positive one is taken, and the middle of a movement that changes
// nothing.
// Finds the greatest value to about 1e-12 of itself where the grid parts the function's hills, which is the caller's to see
// to. Checked by dense grids over random machines and by an independent optimiser.
Greatest greatest(const BoxFunction& function, const Box& box);

}  // namespace shaftcut
