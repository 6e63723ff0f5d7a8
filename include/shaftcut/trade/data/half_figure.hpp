// A figure of a half that a series may or may not state.
#pragma once

#include <array>

#include "shaftcut/trade/data/terms.hpp"

namespace shaftcut {

// What a series may state of each half and building needs, each with the word of its attribute.
enum class HalfFigureKind { shoulder, seat, guard_seat, guard_seat_wide_angle };
template <> struct Words<HalfFigureKind> { static constexpr std::array all{"shoulder", "seat", "guard-seat", "guard-seat-wide-angle"}; };
struct HalfFigure {
    Tube half = Tube::inner;
    HalfFigureKind kind = HalfFigureKind::shoulder;
    bool operator==(const HalfFigure&) const = default;
};

}  // namespace shaftcut
