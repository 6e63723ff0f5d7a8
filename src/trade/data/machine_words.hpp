// The words for a machine's dimensions: the attributes of a job file, and what the measuring form and the answers call them.
#pragma once

#include "shaftcut/trade/data/terms.hpp"

namespace shaftcut {

// Of machine.hpp's Trailed and Mounted, in the order in which one measures them.
enum class TrailedDimension { pto_height, pin_behind, pin_height, input_behind, input_height, input_left, input_tilt };
enum class MountedDimension {
    pto_height, lower_pivot_behind, lower_pivot_height, lower_link, top_pivot_behind, top_pivot_height, top_link, mast, input_behind, input_above, input_tilt
};
// How a trailed machine moves, and between what the lower hitch point of a mounted one does.
enum class TrailedMovement { turn, pitch, roll };
enum class MountedMovement { lowest, highest };

template <> struct Words<TrailedDimension> {
    static constexpr std::array all{"pto-height", "pin-behind", "pin-height", "input-behind", "input-height", "input-left", "input-tilt"};
};
template <> struct Words<MountedDimension> {
    static constexpr std::array all{"pto-height", "lower-pivot-behind", "lower-pivot-height", "lower-link", "top-pivot-behind", "top-pivot-height",
                                    "top-link", "mast", "input-behind", "input-above", "input-tilt"};
};
template <> struct Words<TrailedMovement> { static constexpr std::array all{"turn", "pitch", "roll"}; };
template <> struct Words<MountedMovement> { static constexpr std::array all{"lowest", "highest"}; };

}  // namespace shaftcut
