// What the checks find, in figures and enumerators: each is said in one sentence or few by src/wording/checks. Lengths are telescoping
// unless they are said to be as stated. A finding that needs no figure is an enumerator of PlainFinding.
// Checked where the checks are, and how each is said in tests/wording/checks/check_sentences_test.cpp.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/cut/datum.hpp"
#include "shaftcut/trade/cut/stops.hpp"
#include "shaftcut/trade/data/half_figure.hpp"
#include "shaftcut/trade/data/limits.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// Why a check was not made.
enum class PlainReason {
    no_shortest,                // a shaft made to order by its closed length alone has none
    shortest_unreadable, halves_unknown, lengths_contradict,
    no_longest_readable, guard_not_measured, no_guard_measured, guard_or_its_stop_unknown,
    no_working_angle, power_not_stated, speed_not_stated, no_known_series, made_new, condition_not_stated, device_not_stated,
    only_closed_ordered, ordered_without_guard
};
struct NoLongest { Range range; };
struct LongestNotOfAll { Range range; std::vector<std::string> tractors; };  // those that leave it out; empty where one has no name
struct SeatNotKnown { Tube tube; };
struct GuardNotUsed { Tube tube; };
struct NoAngle { End end; };
struct NoRating { std::string series; };
struct NotInCatalogue { std::vector<HalfFigure> figures; };  // of what building it would need
using NotCheckedReason = std::variant<PlainReason, NoLongest, LongestNotOfAll, SeatNotKnown, GuardNotUsed, NoAngle, NoRating, NotInCatalogue>;
struct NotChecked { NotCheckedReason reason; };

enum class PlainFinding {
    lengths_agree, overlap_not_known, no_tube_cut, no_joint_folds_so_far, other_half_not_rated,
    nothing_cut, nothing_forbids_cut, nothing_known_forbids_cut, no_lock_stands_out, connections_match, no_device_at_tractor,
    // The shaft as it came in.
    looks_good, welded, cracked, tube_bent, tube_twisted, tubes_do_not_slide, guard_missing, guard_damaged, chain_missing, chain_damaged,
    cross_worn, tube_dented, lock_stiff, lock_damaged, device_stuck, out_of_phase
};

// Which of the lengths that a job states, or that follow from them.
enum class FigureOf {
    closed, closed_between_inner_crosses, half, guard_half, shoulder, shoulder_by_stop_depth, shoulder_by_closed, seat, cut_to, shortest, longest, spacing
};
// With the place where the job states it; a place without a file is not printed.
struct StatedFigure {
    FigureOf of = FigureOf::closed;
    Length length;
    Place place;
    Tube tube = Tube::inner;       // of half, guard, shoulder and cut_to
    Range range = Range::working;  // of a longest
    End end = End::tractor;        // of a spacing
};

// Whether what was measured can be true.
enum class Relation { more, less, not_less, not_more };
struct Contradicting { StatedFigure one; Relation is; StatedFigure than; };
struct AnglesContradict { End end; Angle working, turning; Place place; };
struct TubesDoNotMeet { StatedFigure closed, inner, outer; };
struct OutOfBounds {
    StatedFigure figure;
    Length least, greatest;
    std::optional<Length> if_inches, if_millimetres;  // one at most: what was stated, had it been read in that unit, which explains it
};
struct LengthsUnreadable { WhyUnreadable why; };
struct ReadInLine {
    Range range;
    std::vector<End> ends;          // with no angle
    Length longer;                  // at the limit angles
    std::optional<Length> overlap;  // that it would leave
};
struct MachineDisagrees { std::string tractor; DisputedLength disputed; };  // a name only where there are several fits
struct LimitLoosened { Limit limit; LimitValue value, workshop; };
struct StopImpossible { StatedFigure shoulder; Length least; };
struct StopUnlikeSeries { StatedFigure shoulder; Length series; };
struct StopRestsAlone { StatedFigure shoulder; };
struct ClosedDisagrees {
    Length closed, modelled;
    bool wide_angle, guards_stop;
    ClosedAgreement agreement;
    std::optional<Tube> to_measure;  // the half that was not
};
struct ReadAtOtherCross { StatedFigure closed; Reference meant; };
struct ListedAtOtherCross { StatedFigure closed; Reference meant; };
struct ClosedNotListed { StatedFigure closed; bool any_listed; };
struct HalvesExchanged { StatedFigure inner, outer; bool refuses; };

// Clearance, overlaps, what is left of the tubes.
struct ClearanceLeft { Length clearance, asked; };
struct ClearanceAtWorst { Length worst, floor; };
struct LeftAsCut { PerEach<Tube, std::optional<Length>> kept; };  // by an earlier sheet, that kept so much of one half or both: not cut again
struct OverlapLeft {
    Range range;
    Length overlap, least;
    std::optional<Fraction> part;  // of the new closed overlap, where that decides
    bool fails;                    // after a cut that the shortest asks for
};
struct OverlapAtWorst { Length worst, least; };
struct NeverLongEnough { Length shortest, overlap, least; };  // of a new shaft, pushed together to its clearance
struct TubeTooShort { Length left; };                         // beyond the series' least: below 0
struct TubesLeft { Length left; };

// Guards.
struct GuardClearance { Length clearance, asked; };
struct GuardOverlap { Length overlap, asked; };
struct GuardsApartAtWorst { Length overlap; };
struct GuardCutAway { Tube tube; };
struct GuardSetback { Length setback, most; };
struct GuardBeyondTube { Length setback; };

// Joint angles and irregularity. Per cents are thousandths.
struct AngleInRange { Range range; Angle angle, limit; std::optional<Posture> at; };  // at: where the machine's geometry gave it
struct JointAngles { End end; JointKind joint; std::vector<AngleInRange> angles; };
struct SpeedRipple { std::int64_t percent, limit; };
struct RippleGreatestAt { Posture at; };
struct RippleOutOfPhase { Angle step; std::optional<std::int64_t> percent; };  // nothing: it cannot turn

// What may be cut, locks, couplings, the device, the load.
struct ShorteningForbidden { Tube tube; };
struct HoleCutOff { Tube tube; Length hole; };
struct WorkAfterCut { Tube tube; Feature feature; Length one_chain; };
enum class LockRule { secondary, before_it, under_it, year_not_known };
struct LockNotStated { End end; };
struct LockUnknown { End end; };
struct LockStandsOut { End end; Lock lock; LockRule rule; };
struct CouplingNotStated { End end; };
struct CouplingDiffers { End end; std::string connection, onto; };
struct SpeedNotRated { End end; std::string connection; std::vector<int> rated; int speed; };
struct DeviceAtTractor { Device device; };
enum class LoadLevel { within, near, above };
struct LoadTaken { std::int64_t taken, carried; std::string series; int speed; LoadLevel level; };  // watts
struct HalfWithoutGuard { Tube tube; GuardUse guard; };
struct OtherTractor { std::string tractor; };

using CheckFinding =
    std::variant<PlainFinding, NotChecked, Contradicting, AnglesContradict, TubesDoNotMeet, OutOfBounds, LengthsUnreadable, ReadInLine, MachineDisagrees, LimitLoosened,
                 StopImpossible, StopUnlikeSeries, StopRestsAlone, ClosedDisagrees, ReadAtOtherCross, ListedAtOtherCross, ClosedNotListed, HalvesExchanged, ClearanceLeft,
                 ClearanceAtWorst, LeftAsCut, OverlapLeft, OverlapAtWorst, NeverLongEnough, TubeTooShort, TubesLeft, GuardClearance, GuardOverlap, GuardsApartAtWorst, GuardCutAway,
                 GuardSetback, GuardBeyondTube, JointAngles, SpeedRipple, RippleGreatestAt, RippleOutOfPhase, ShorteningForbidden, HoleCutOff, WorkAfterCut, LockNotStated,
                 LockUnknown, LockStandsOut, CouplingNotStated, CouplingDiffers, SpeedNotRated, DeviceAtTractor, LoadTaken, HalfWithoutGuard, OtherTractor>;

// How a check's value is computed and where its limit comes from, a clause each.
enum class PlainBasis {
    geometry, contradicting_lengths, overlap_not_computed, overlap_at_clearance, tube_left, new_tube_left, clearance, guard_clearance, guard_clearance_fails,
    guard_cover, guard_cover_fails, guard_setback, ripple_of_geometry, ripple_of_angles, series_statement, lubrication_passage, locks, lock_not_stated, coupling,
    couplings_not_stated, device, load_warning, half_without_rating, as_it_came_in
};
struct OverlapOf { Range range; };
struct LimitFloor { Length floor; LimitBasis from; };
struct LimitAtLeast { Length least; LimitBasis from; };
struct AngleLimitOf { Range range; LimitBasis from; };
struct AngleNotOfAll { Range range; };
struct OneChainLimit { LimitBasis from; };
struct GuardKeeps { Length free; };  // beyond its seat
struct LengthOfGeometry { ExtremeLength length; bool is_shortest; };
enum class RatingRule { stated, next_higher, highest };
struct RatingOf { std::string series; std::int64_t power, speed; RatingRule rule; };  // watts, min⁻¹
struct RatedSpeedSource { std::string connection, source; };
struct RatedSpeedsBy { std::vector<RatedSpeedSource> sources; };

using CheckBasis = std::variant<PlainBasis, NotCheckedReason, LimitBasis, OverlapOf, LimitFloor, LimitAtLeast, AngleLimitOf, AngleNotOfAll, OneChainLimit, GuardKeeps,
                                LengthOfGeometry, RatingOf, RatedSpeedsBy>;

}  // namespace shaftcut
