// A machine's movement as a row of positions, for a drawing that moves.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/order/machine_view.hpp"

namespace shaftcut {

// Turn, pitch and roll are a trailed machine's, one at a time with the other two level; lift is a mounted one's.
enum class FrameOf { turn, pitch, roll, lift };
template <> struct Words<FrameOf> { static constexpr std::array all{"turn", "pitch", "roll", "lift"}; };

struct MachineFrame {
    Range range = Range::working;
    FrameOf movement = FrameOf::turn;
    MachineScene scene;              // its `of` and `range` say nothing here
};

enum class ExtremeOf { shortest, longest, tractor_angle, implement_angle };
template <> struct Words<ExtremeOf> { static constexpr std::array all{"shortest", "longest", "tractor-angle", "implement-angle"}; };

// A position in which a length or an angle is greatest or least over the whole range.
struct ExtremeFrame {
    ExtremeOf of = ExtremeOf::shortest;
    std::optional<Range> range;      // nothing: the shortest of all ranges
    MachineScene scene;
};

// `unreadable`: why there is no frame.
struct MachineFrames {
    std::string tractor;             // whose it is; may be empty
    bool mounted = false;
    std::vector<MachineFrame> frames;
    std::vector<ExtremeFrame> extremes;
    std::optional<WhyUnreadable> unreadable;
};

// Of each range that is stated, in order, each movement that it has from one end to the other, the middle among them: 9 turns, 5 pitches,
// 5 rolls; 13 heights. Of a machine that does not move one frame. A position without an answer is left out. Extremes: the shortest, then of
// each range the longest and the greatest angle of either joint. `fit` must state a machine.
// Checked by the lengths of lengths_against_turn() and lengths_against_lift(), and by the extremes of operating_lengths().
MachineFrames machine_frames(const FitReading& fit);

}  // namespace shaftcut
