// What would serve: where the pin should be, and how far a machine may move with this shaft.
#pragma once

#include <optional>

#include "shaftcut/trade/hitch/hitch.hpp"

namespace shaftcut {

// The furthest that advice moves a pin along the tractor's drawbar, either way.
inline constexpr Length furthest_pin_move = Length::millimetres(200);

// The pin and the machine moved together along the tractor's drawbar; the machine's own dimensions stay.
struct PinAdvice {
    Length move;      // positive: rearwards
    Angle tractor;    // greatest joint angle over the range at the advised place
    Angle implement;
    bool equal = false;  // to 0.01 degrees; otherwise this is where they differ least within the furthest move
};

// The least move that makes the greatest joint angles over the range equal. Found by steps of 25 mm and halving, the move
// exact to 0.1 mm. The pin is never moved in front of the PTO. Empty where the shaft has no answer somewhere in the range at any place
// tried.
// Source: in plan on level ground both angles of two standard joints are equal where the pin is midway between the crosses.
std::optional<PinAdvice> pin_for_equal_angles(const Trailed& machine, const HitchShaft& shaft, const TrailedRange& range);

// How far the pin lies behind the middle of a wide-angle joint's two crosses, straight ahead on level ground: such a joint
// takes a turn alone where this is 0. Empty for a standard joint, and where the shaft has no answer straight ahead.
struct PinFromCentre {
    std::optional<Length> tractor;
    std::optional<Length> implement;
};
PinFromCentre pin_from_wide_angle_centre(const Trailed& machine, const HitchShaft& shaft);

// What a shaft bears. A limit left out limits nothing.
struct ShaftLimits {
    std::optional<Length> longest;  // telescoping length; less than 0.01 mm above it is not above it
    std::optional<Angle> tractor;   // joint angles
    std::optional<Angle> implement;
};

// The greatest plus or minus of one movement, at most the range's own, over which the limits hold with the other two moving
// through the whole range. Exact to 0.001 degrees, to the safe side. Empty where not even 0 serves.
// A wider range holds every position of a narrower one, so halving is exact.
std::optional<Angle> movement_served(const Trailed& machine, const HitchShaft& shaft, const TrailedRange& range,
                                     const ShaftLimits& limits, Movement movement);

// How high from the range's lowest, and how low from its highest, the limits hold all the way. Exact to 0.01 mm, to the safe
// side. Empty where the end it starts from does not serve.
struct LiftServed {
    std::optional<Length> up_to;
    std::optional<Length> down_to;
};
LiftServed lift_served(const Mounted& machine, const HitchShaft& shaft, const MountedRange& range, const ShaftLimits& limits);

// The least move of the pin (as in PinAdvice) with which the limits hold over the whole range, positive rearwards. Found by
// steps of 5 mm and halving, to 0.1 mm, to the safe side: a shaft that is served only over less than 5 mm may be missed.
// Empty where no move up to the furthest serves.
std::optional<Length> pin_move_served(const Trailed& machine, const HitchShaft& shaft, const TrailedRange& range,
                                      const ShaftLimits& limits);

}  // namespace shaftcut
