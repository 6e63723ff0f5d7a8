// What a new shaft's plate says of its use: the figures that the catalogue holds, none that it would take a reading of the shaft for.
//
// The greatest speed n is the least of: the speed ordered, the greatest rated speed of each end's connection, the greatest that the series is
// rated at; what is not stated bounds nothing. The power P is what the series carries at n, by the rule of the check on the rating; the torque
// is T = 60 P / (2 pi n). Checked in tests/trade/build/plate_test.cpp.
#pragma once

#include <cstdint>
#include <optional>

#include "shaftcut/trade/data/build_order.hpp"
#include "shaftcut/trade/data/catalogue.hpp"

namespace shaftcut {

struct PlateFigures {
    std::optional<int> speed;           // min^-1; nothing where nothing bounds it
    std::optional<std::int64_t> power;  // watts; nothing where the series has no rating, or no speed is known
    std::optional<std::int64_t> torque; // newton metres, rounded down; there with the power
};

PlateFigures plate_figures(const BuildOrder& order, const Catalogue& catalogue, const Series& series);

}  // namespace shaftcut
