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

// Of each range that is stated, in order, each movement that it has from one end to the other, the middle among them: 9 turns, 3 pitches,
// 3 rolls; 13 heights. Of a range that does not move one frame. Extremes: the shortest, then of each range the longest and the greatest
// angle of either joint. `fit` must state a machine.
// Checked in tests/trade/order/machine_frames_test.cpp: no frame is shorter or longer than the extremes.
MachineFrames machine_frames(const FitReading& fit);

// The fits of a job that state a machine, read as for its work order.
std::vector<FitReading> machines_of(const Job& job, const Catalogue& catalogue, const Workshop& workshop);

}  // namespace shaftcut
