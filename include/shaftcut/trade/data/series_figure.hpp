// What a series of the catalogue states, one figure after the other.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/data/terms.hpp"

namespace shaftcut {

enum class SeriesFigure {
    name, shape, cap, span, spacing, reference, inner_cap, inner_span, outer_cap, outer_span,  // of the whole shaft
    shoulder, seat, least_tube, width, wall, guard_shoulder, guard_seat, guard_seat_wide_angle, pin_hole, mass_per_metre, shortening,  // of a half
    cross_to_groove,  // of a connection's yoke
    power,            // at a speed
    closed_lengths
};

// A figure that is asked for. `tube`: of a half's; `connection` and `joint`: of a yoke's; `speed`: of a power's, min^-1.
struct SeriesQuestion {
    SeriesFigure figure = SeriesFigure::name;
    std::optional<Tube> tube = {};
    std::string connection = {};
    std::optional<JointKind> joint = {};
    int speed = 0;
    bool operator==(const SeriesQuestion&) const = default;
};

}  // namespace shaftcut
