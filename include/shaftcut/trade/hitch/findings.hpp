// What is wrong with a machine's geometry, with what is possible.
#pragma once

#include <variant>
#include <vector>

#include "shaftcut/trade/hitch/placement.hpp"

namespace shaftcut {

// The movements of a trailed machine.
enum class Movement { turn, pitch, roll };
// The links of a mounted one.
enum class Link { lower_link, top_link, mast };

struct NoRangeStated {};

// By 90 degrees or more: the input shaft's axis turns back on itself.
struct TiltedBack {
    Angle tilt;
};

struct MovementOutOfBounds {
    Movement movement;
    Angle angle;
    int below;  // degrees: what it must be under
};

struct PinInFront {
    Length distance;  // in front of the PTO stub's groove
};

struct LinkWithoutLength {
    Link link;
    Length length;
};

struct LowestAboveHighest {
    Length lowest, highest;
};

// Heights of the lower hitch point, each span rounded inwards to a tenth of a millimetre.
struct Heights {
    Length lowest, highest;
};

struct HeightOutOfReach {
    Length height;
    std::vector<Heights> reached;
};

// Each can be reached, but not the one from the other.
struct HeightsApart {
    Length lowest, highest;
    std::vector<Heights> reached;
};

// Top link and mast meet at no height: the lower hitch point is not behind the top link's pivot.
struct TopPivotTooFarBack {
    Length top_link, mast;
    Length hitch_behind;  // the PTO stub's groove, rounded down to a tenth of a millimetre
};

// Top link and mast meet at no height: these top links would at this one. Rounded inwards to a tenth of a millimetre.
struct TopLinkDoesNotClose {
    Length top_link, mast;
    Length height, at_least, at_most;
};

// Between the stubs, at the middle of a range.
struct NoRoomForShaft {
    Length input_behind;
    Posture at;
    Length least;  // which input-behind must be above
};

struct FoldsBack {
    Posture at, last;  // `last`: up to where there is an answer on the way there
};

using HitchFault = std::variant<NoRangeStated, TiltedBack, MovementOutOfBounds, PinInFront, LinkWithoutLength, LowestAboveHighest, HeightOutOfReach, HeightsApart,
                                TopPivotTooFarBack, TopLinkDoesNotClose, NoRoomForShaft, FoldsBack>;

struct HitchProblem {
    Place place;  // of the dimension that has to change
    HitchFault fault;
};
using HitchProblems = std::vector<HitchProblem>;

}  // namespace shaftcut
