// Which series of a catalogue no measurement tells apart.
//
// Two series of one shape, over the figures q that both state:
//
//     v_q = |x_q − x'_q| / S_q        S_q: the standard deviation of a reading, with wear and dirt, at the usual ±
//
// One figure of v ≥ 4 tells them apart; else the fewest, the farthest apart first, whose v² add up to 16; else nothing does. 4 is the project's own choice: about
// 2 % err halfway. Series of different shapes are told apart by a look. Checked in tests/trade/identify/look_alikes_test.cpp.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/identify/identify.hpp"

namespace shaftcut {

// By their places in the catalogue: of some thousands of series that are all alike there are millions of pairs.
struct LookAlike {
    std::array<std::uint32_t, 2> series;   // in the catalogue's order
    double apart = 0;                      // √Σ v² over all figures that both state
};

struct LookAlikes {
    std::vector<LookAlike> never{};            // whatever is measured
    std::vector<LookAlike> only_wide_angle{};  // but at a wide-angle joint
};

LookAlikes look_alikes(const Catalogue& catalogue);

}  // namespace shaftcut
