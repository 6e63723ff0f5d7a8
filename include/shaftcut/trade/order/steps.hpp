// What is done with a shaft at the bench and on its machine, step by step. A step's number is its own on every sheet; a step, or a
// task in it, that a job does not need is left out. Lengths are telescoping or from a half's inner cross where nothing else is said.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/checks/confirmation.hpp"
#include "shaftcut/trade/hitch/hitch.hpp"
#include "shaftcut/trade/order/expected.hpp"

namespace shaftcut {

// What is sawn, each with its letter on the sheet: C, D, A, B.
enum class SawnPart { inner_tube, outer_tube, inner_guard, outer_guard };
constexpr SawnPart tube_part(Tube tube) { return tube == Tube::inner ? SawnPart::inner_tube : SawnPart::outer_tube; }
constexpr SawnPart guard_part(Tube tube) { return tube == Tube::inner ? SawnPart::inner_guard : SawnPart::outer_guard; }

// The tasks that carry no figure.
enum class PlainTask {
    slide_or_stop,               // 1: welded, cracked, will not slide
    find_out_why_not_closed,     // 2
    open_guards, look_at_forks, stroke_and_part,  // 3
    guards_off, guard_that_stays, take_end_stop_off, compare_tube_left, part_and_stroke,  // 4
    no_hole_in_waste,            // 5
    hold_to_saw, saw_coated,     // 7
    deburr, treat_coated_edge, refit_end_stop, clear_lubrication,  // 8
    grease_and_guards_on, fit_new_guard,  // 11
    together, push_home, two_rings,  // 12: of a shaft that was parted; of one that was not
    go_to_machine,               // 13
    hook_chains, fit_second_chain, turn_by_hand, try_every_tractor, sign_and_hand_out  // 16
};

// 1. `device`: a clutch on the shaft is tried by hand.
struct LookOver {
    bool device;
};

// 2, 3, 4.
struct ConfirmTask {
    Confirmation confirm;
};

// 4: these guards are not used again.
struct NewGuard {
    std::vector<SawnPart> guards;
    Length setback;  // the most that the tube may stand out of a new one
};

// 5. Those that are not sawn are named too.
struct MarkCuts {
    std::vector<SawnPart> tubes, guards, not_cut;
    Length apart;    // by which a tube's mark from the free end and that from the cross may differ
    std::vector<SawnPart> guess;  // guards that were not measured: by what comes off their tube
};

// 6, where the machine is elsewhere or the halves cannot be held up to it.
struct ReadShortestAgain {
    Length shortest, plus_minus;
};

// 6: both halves side by side on the bare stubs at the shortest position: the check that owes nothing to tape, typing or program.
struct SideBySide {
    Length from_face;        // from the face on the inner half's yoke to the outer half's mark
    bool from_face_at_least; // the shoulder was derived from the closed length: `from_face` is the least that it can be
    Length past;             // by which the inner tube's mark lies past the outer tube's; negative: before it
    Length plus_minus;
    bool inner_cut, outer_cut;  // a tube that is not sawn has its end for a mark
    std::string at;          // the shortest position as the job names it; may be empty
    std::optional<Posture> posture;
    ReadShortestAgain otherwise;
};

// 7
struct SawCuts {
    std::vector<SawnPart> guards, tubes, not_cut;
};

// 9. At the cross that the job states, of a shaft with a wide-angle joint.
struct CloseDry {
    std::optional<Reference> from;
    Expected closed;
    std::optional<Length> at_other_cross;  // the most, at the other cross
};

// 10
struct KeptTubes {
    PerEach<Tube, Expected> half;
};

// 11: how far each tube stands out of its guard; nothing of one that is not used or was not measured.
struct StandsOut {
    PerEach<Tube, std::optional<Expected>> by;
    Length setback;
    PerEach<Tube, bool> used;
};

// 12: over both outer ends as in 9.
struct CloseGreased {
    Length apart;
    std::optional<Length> shorten;  // the most that may come off a guard that stops it; nothing where not known
};

// By how much the speed ripples in per cent, rightly in phase and one step of the tubes out of it.
struct Ripple {
    double in_phase, out_of_phase;
    Angle step;
};

// 13
struct Couple {
    Length shields;  // the least by which they overlap the guard
};

// 14, 15: a position in which the rings are read. `longest`: nothing for the shortest.
struct ReadRings {
    std::optional<Range> longest;
    Length length;                    // as stated, at its own cross, where there is one
    std::optional<Reference> from;    // of a shaft with a wide-angle joint
    std::string tractor, at;          // may be empty
    std::optional<Posture> posture;   // where the machine's geometry gives it
    OnRings rings;
};
// 15, where it was not measured.
struct StandingNotMeasured {};

using Task = std::variant<PlainTask, LookOver, ConfirmTask, NewGuard, MarkCuts, SideBySide, ReadShortestAgain, SawCuts, CloseDry, KeptTubes, StandsOut, CloseGreased, Ripple,
                          Couple, ReadRings, StandingNotMeasured>;

// The last that is done before the first file stroke.
inline constexpr int last_saw_step = 7;

struct Step {
    int number = 0;
    std::vector<Task> tasks;
};

}  // namespace shaftcut
