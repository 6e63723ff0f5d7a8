// A machine's geometry as measured: where its hitch and its input shaft lie, and how far it moves.
//
// Frame: x rearwards, y to the right of the direction of travel, z up; the origin is on the ground below the locking
// groove of the tractor's PTO stub. Distances "behind" run rearwards from that groove, heights from the ground.
// Plain data as it was read: whether a machine can exist is for geometry_problems() in hitch_problems.hpp.
#pragma once

#include <optional>
#include <variant>

#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// A measured length.
struct Dimension {
    Length value;
    std::optional<Length> plus_minus;  // the workshop's own tolerance applies where it is left out
    Place place;
};

// A stated or measured angle.
struct AngleDimension {
    Angle value;
    std::optional<Angle> plus_minus;  // exact where it is left out: a workshop has no tolerance of angles
    Place place;
};

// What a machine does in the usual working position, in any position with the PTO turning, and with it stopped.
template <class Range>
struct Ranges {
    std::optional<Range> working;
    std::optional<Range> turning;
    std::optional<Range> standing;

    const std::optional<Range>& operator[](shaftcut::Range which) const
    {
        return which == shaftcut::Range::working ? working : which == shaftcut::Range::turning ? turning : standing;
    }
};

// How far a trailed machine moves about its pin: each is plus or minus, from straight ahead on level ground.
struct TrailedRange {
    AngleDimension turn;   // about the upright axis; positive: the machine's rear to the right
    AngleDimension pitch;  // positive: its rear down
    AngleDimension roll;   // positive: its right side up
};

// A machine drawn by a pin, about which it turns, pitches and rolls.
struct Trailed {
    Dimension pto_height;
    Dimension pin_behind;
    Dimension pin_height;
    Dimension input_behind;      // from the pin to the locking groove of the machine's input shaft
    Dimension input_height;      // above the ground, straight ahead on level ground
    Dimension input_left;        // to the left of the middle in the direction of travel, so -y
    AngleDimension input_tilt;   // positive: the input shaft's axis rises rearwards
    Ranges<TrailedRange> ranges;
    Place place;                 // the element itself
};

// The heights above ground between which the lower hitch point moves.
struct MountedRange {
    Dimension lowest;
    Dimension highest;
};

// A machine carried by a three-point linkage, in side view.
struct Mounted {
    Dimension pto_height;
    Dimension lower_pivot_behind;
    Dimension lower_pivot_height;
    Dimension lower_link;        // pivot to lower hitch point
    Dimension top_pivot_behind;
    Dimension top_pivot_height;
    Dimension top_link;          // pivot to upper hitch point
    Dimension mast;              // lower to upper hitch point
    Dimension input_behind;      // from the lower hitch point to the input shaft's groove, square to the mast
    Dimension input_above;       // the same, along the mast
    AngleDimension input_tilt;   // positive: the axis rises rearwards from square to the mast
    Ranges<MountedRange> ranges;
    Place place;                 // the element itself
};

using Machine = std::variant<Trailed, Mounted>;

}  // namespace shaftcut
