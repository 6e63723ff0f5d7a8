// What a series of the catalogue states, one figure after the other.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/data/catalogue.hpp"

namespace shaftcut {

enum class SeriesFigure {
    name, shape, cap, span, spacing, reference, inner_cap, inner_span, outer_cap, outer_span,  // of the whole shaft
    shoulder, seat, least_tube, width, wall, guard_shoulder, guard_seat, guard_seat_wide_angle, pin_hole, mass_per_metre, shortening,  // of a half
    cross_to_groove,  // of a connection's yoke
    power,            // at a speed
    closed_lengths,
    own_parts, cross_part, inner_part, outer_part, part, replaces,  // whether it names any; a cross's; any other's; of a device's part
    own_limits, limit                                               // whether it sets any
};

// A figure that is asked for. `tube`: of a half's; `connection` and `joint`: of a yoke's; `speed`: of a power's, min^-1;
// `part`, with what it is for, and `device`: of a part's; `limit`: of a limit's.
struct SeriesQuestion {
    SeriesFigure figure = SeriesFigure::name;
    std::optional<Tube> tube = {};
    std::string connection = {};
    std::optional<JointKind> joint = {};
    int speed = 0;
    std::optional<PartKind> part = {};
    std::optional<Device> device = {};
    std::optional<Limit> limit = {};
    bool operator==(const SeriesQuestion&) const = default;
};

}  // namespace shaftcut
