// What comes off each tube, so that the shaft closes with its clearance at the shortest length.
//
// a, b: half lengths of the inner (A) and outer (B) half; s_A from A's inner cross to the face that stops the outer tube,
// s_B from B's to the face that stops the inner tube; C closed, S shortest, k closing clearance, all telescoping:
//
//     C = max(a + s_B, b + s_A)        overlap v(L) = a + b − L for L ≥ C
//     need_A = a + s_B − (S − k)       cut_A = 0 where need_A ≤ 0, else up(need_A) to the saw's step, at least its least cut
//
// Derived from the geometry of two tubes that slide in one another; checked by the published worked examples in cut_test and
// by its properties there (swap the ends, scale, cut and measure again).
#pragma once

#include <optional>

#include "shaftcut/trade/catalogue.hpp"
#include "shaftcut/trade/shaft.hpp"

namespace shaftcut {

// How the measured closed length C compares with what the halves and shoulders give, M = max(a + s_B, b + s_A).
enum class ClosedAgreement {
    agrees,          // within the tolerances of C, a and b: both shoulders shift by C − M
    longer,          // C above M: what stops the tubes is not known; both shoulders become the greatest possible
    guards_stop,     // C above M, and the guards' own closed length is C: the shoulders stay
    shorter          // C below M: each shoulder is at most what C leaves
};

struct Stops {
    PerEach<Tube, Length> shoulder;  // s_A, s_B as the cut uses them
    ClosedAgreement agreement = ClosedAgreement::agrees;
    Length modelled;                 // M
    Length allowance;                // the sum of the tolerances of C, a and b
};

// Nothing where a half length is neither measured nor derivable.
std::optional<Stops> stops_of(const Shaft& shaft);

// The saw as the documents' units make it: in inches its step is the least multiple of 1/16 in not under the workshop's.
struct SawSettings {
    Fraction step_um;
    Length least_cut;
    Length plus_minus;
};
SawSettings saw_settings(const Saw& saw, Units units);

struct CutPlan {
    PerEach<Tube, Length> cut;                        // off each drive tube's free end
    PerEach<Tube, Length> half;                       // what is kept of each half length
    PerEach<Tube, Length> guard_cut;                  // off each guard tube's free end
    PerEach<Tube, std::optional<Length>> guard_half;  // what is kept of it; nothing where the guard was not measured
    Length closed;                                    // C' = max(a' + s_B, b' + s_A)
    PerEach<Tube, bool> sets_closed;                  // whether this half is one that sets C'

    Length overlap_at(Length telescoping) const { return half[Tube::inner] + half[Tube::outer] - telescoping; }
};

// Nothing where the stops or the shortest length are not known. `clearance` is k.
std::optional<CutPlan> plan_cut(const Shaft& shaft, const std::optional<Stops>& stops, const std::optional<Toleranced>& shortest,
                                Length clearance, const SawSettings& saw);

// True where nothing comes off any tube.
bool nothing_to_cut(const CutPlan& plan);

}  // namespace shaftcut
