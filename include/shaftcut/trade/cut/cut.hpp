// What comes off each tube, so that the shaft closes with its clearance at the shortest length.
//
// a, b: half lengths of the inner (A) and outer (B) half; s_A from A's inner cross to the face that stops the outer tube,
// s_B from B's to the face that stops the inner tube; C closed, S shortest, k closing clearance, all telescoping:
//
//     C = max(a + s_B, b + s_A)        overlap v(L) = a + b − L for L ≥ C
//     need_A = a + s_B − (S − k)       cut_A = 0 where need_A ≤ 0, else up(need_A) to the saw's step, at least its least cut
//
// A half that an earlier sheet kept a_0 of (cut_to), t the saw's ±, u the half's own, is not cut again where it is no longer than that
// sheet allowed, a ≤ a_0 + t + 2u (it was read once before the saw and once now): cut_A = 0. Its guard is cut only where it would stop
// the shaft before the tubes do, by more than t + 2u of its own.
//
// Derived from the geometry of two tubes that slide in one another; checked by the published worked examples in cut_test and
// by its properties there (swap the ends, scale, cut and measure again).
#pragma once

#include <optional>

#include "shaftcut/trade/cut/stops.hpp"
#include "shaftcut/trade/data/catalogue.hpp"

namespace shaftcut {

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
    PerEach<Tube, std::optional<Length>> guard_cut;   // off each guard tube's free end; nothing where it is not used again
    PerEach<Tube, std::optional<Length>> guard_half;  // what is kept of it; nothing where it was not measured or is not used again
    Length closed;                                    // C' = max(a' + s_B, b' + s_A)
    PerEach<Tube, bool> left_as_cut;                  // by an earlier sheet, as that allowed: nothing more comes off

    bool cuts_tube(Tube tube) const { return cut[tube] != Length(); }
    bool cuts_guard(Tube tube) const { return guard_cut[tube].value_or(Length()) != Length(); }

    Length overlap_at(Length telescoping) const { return half[Tube::inner] + half[Tube::outer] - telescoping; }
};

// Nothing where the stops or the shortest length are not known. `clearance` is k.
std::optional<CutPlan> plan_cut(const Shaft& shaft, const std::optional<Stops>& stops, const std::optional<Toleranced>& shortest,
                                Length clearance, const SawSettings& saw);

// t + 2u: how far what was sawn may read from what was to be kept, `plus_minus` being that of its reading.
Length saw_and_two_readings(Length plus_minus, const SawSettings& saw);

// True where nothing comes off any tube.
bool nothing_to_cut(const CutPlan& plan);

// The most to which the shaft can close after the cut. With y = C + u_C, and for each half i with the other one's shoulder as
// stated x_i = half + shoulder + u of the shoulder (none stated: infinite), u_i the half's own ± (u_C + u of the shoulder where it was
// derived from C by it, for a cut that is marked from the cross keeps what was derived):
//
//     Q_i = min(y, x_i + u_i)                        not cut
//         = min(max(x_i, y), min(x_i, y) + u_i)      cut
//         = max(y, x_i + u_i), max(x_i, y) + u_i     the same two where C and M disagree (no shoulder stated: x_i counts for nothing)
//     closed at worst = max over the halves of Q_i − cut_i + the saw's ± where it is cut
//
// For the true path of a half is at most the true closed length and at most x_i + u_i; a cut marked from the free end takes off
// what is printed, one marked from the cross leaves what is printed. Each bound is reached by some shaft that reads as this one.
// Checked by truth_test, which draws such shafts, saws them and pushes them together.
Length closed_at_worst(const Shaft& shaft, const Stops& stops, const CutPlan& plan, const SawSettings& saw);

}  // namespace shaftcut
