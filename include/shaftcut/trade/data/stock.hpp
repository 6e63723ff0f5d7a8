// Bars that pieces are sawn from: what a shop buys as needed, and what lies on its rack.
#pragma once

#include <cstdint>
#include <optional>

#include "shaftcut/words/length.hpp"

namespace shaftcut {

// Costs are counted in millionths, so that decimals in a file stay exact.
inline constexpr std::int64_t cost_unit = 1'000'000;
inline constexpr std::int64_t most_saw_cost = 1'000'000 * cost_unit;
inline constexpr std::int64_t cost_of_a_micrometre = cost_unit / 1000;  // where no cost is stated: a millimetre costs 1

inline constexpr std::int64_t most_saw_pieces = 2'000'000;  // also the most bars of one kind that a file may count

struct SawStock {
    Length length;                      // of the whole bar, trims included; above 0
    std::optional<std::int64_t> count;  // nothing: as many as needed
    std::int64_t cost = 0;              // of one bar, in millionths, 0 or more
};

}  // namespace shaftcut
