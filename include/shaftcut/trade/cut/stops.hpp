// Where the tubes stop: what halves and shoulders say, what the measured closed length says, and what the cut takes for true.
//
// a, b: half lengths of the inner (A) and outer (B) half; s_A from A's inner cross to the face that stops the outer tube, s_B from
// B's to the face that stops the inner tube; C closed, all telescoping. Each half has a path, a + s_B and b + s_A: the closed length
// if it is this one's tube that stops the shaft.
//
//     M = max(a + s_B, b + s_A)      with one half measured that half's path alone
//
// Within the ± of C and of M's own path the measured C wins and the stated shoulders shift by C − M. Further apart nobody knows which
// figure is wrong, and each shoulder becomes the greater of what was stated and what C leaves: too short a cut is the worse mistake.
// Checked by stops_test and, against a second implementation and true shafts, by differential_test and truth_test.
#pragma once

#include <optional>

#include "shaftcut/trade/data/shaft.hpp"

namespace shaftcut {

// How the measured closed length C compares with M.
enum class ClosedAgreement { agrees, longer, shorter };

// One half's tube and the face that it meets.
struct StopPath {
    Length closed;         // half length + the other half's shoulder as stated; C where the one or the other follows from C
    Length tolerance;      // u_C + u of the half + u of the shoulder (0 for one that follows from C)
    bool known = false;    // the half was measured and the shoulder stated: C is a second figure for it
    bool confirmed = false;  // known, and C within tolerance
    bool below = false;      // known, and below C by more than its tolerance
};

struct Stops {
    PerEach<Tube, Length> shoulder;  // s_A, s_B as the cut uses them
    PerEach<Tube, StopPath> path;    // of the half that carries this tube
    PerEach<Tube, bool> in_model;    // M is this half's path, and the half was measured
    ClosedAgreement agreement = ClosedAgreement::agrees;
    bool guards_stop = false;        // C above M, and the guards' own closed length is C
    Length modelled;                 // M
    Length allowance;                // u_C and the u in M's own path
};

// Nothing where a half length is neither measured nor derivable.
std::optional<Stops> stops_of(const Shaft& shaft);

// The path that a half's own shoulder is in: the other half's.
inline const StopPath& path_to(const Stops& stops, Tube shoulder_of) { return stops.path[other(shoulder_of)]; }

// The half's own shoulder is another than its series' by more than 10 mm and more than 10 % of it.
bool differs_from_series(const Half& half);

// A shoulder that rests on one figure: the job states it, no series does, and its path does not confirm it.
bool rests_alone(const Shaft& shaft, const Stops& stops, Tube shoulder_of);

// A shoulder that the series states and the job does not, of a shaft whose series is known by measuring: what measures alike may stop elsewhere.
bool stops_by_measures(const Half& half);

// A shoulder that is to be confirmed before sawing: one that rests alone, one that is known by measuring the series, or one that another series states and
// no path confirms.
bool stop_to_confirm(const Shaft& shaft, const Stops& stops, Tube shoulder_of);

// A measured half whose path is below C is short by its own figure alone; to be confirmed unless its measured guard bears it out:
// 0 ≤ half − guard ≤ `guard_setback`, within the ± of both.
bool half_to_confirm(const Shaft& shaft, const Stops& stops, Tube tube, Length guard_setback);

}  // namespace shaftcut
