// What a fitter is to know, as it is found: cautions, notes. What is to be done stands in steps.hpp. Lengths are telescoping where nothing else is said.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/data/rounding.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/trade/hitch/hitch.hpp"

namespace shaftcut {

enum class IdentifyVerdict;  // identify.hpp

enum class Caution { leave_shaft_alone, turning_shaft_kills, guards_complete, bottoming_or_parting, manuals_come_first };

// The notes that carry no figure.
enum class Remark {
    least_and_greatest_count,     // of several fits
    machine_not_here,
    guard_clearance_by_hand,
    guard_cover_by_hand,
    tube_left_by_hand,
    guard_not_measured,
    half_not_measured,
    half_not_measured_to_be_sawn
};

// A fit's lengths as stated, and as the cut works with them where that is something else.
struct FitLengths {
    enum class Read { between_crosses, between_grooves, from_outer_cross, from_inner_cross };
    std::string tractor;  // may be empty
    Read read;
    Length shortest, longest_turning;
    std::optional<Length> shortest_between_inner, longest_between_inner;  // both or none
};

struct UnmeasuredTractors {
    std::vector<std::string> names;  // that drive the machine and were not measured
};

struct LooserLimit {
    std::string why, by;  // `by` may be empty
};

// The saw's tolerance, and that of ISO 2768-1 class c for the shortest of the lengths sawn.
struct SawnWithin {
    Length saw, general;
};

// A tape measure at the two ends of the lift would miss the shortest between them.
struct MissedByLift {
    Length at_ends;              // the shorter of the two
    Rounded at_ends_rounded;
    Length missed;               // by which the shortest is less
    Length clearance;            // with which a shaft would be cut to what was measured
};

// What a machine's geometry gives. `tractor`: whose it is, where there are several.
struct ShortestOfMachine {
    std::string tractor;
    ExtremeLength shortest;
    std::optional<MissedByLift> missed;
};

// Where the pin makes the greatest joint angles come out equal, or nearest to it.
struct PinForEqualAngles {
    Angle tractor, implement;    // the greatest, with the pin there
    bool equal;
    Length move;                 // of the pin, positive rearwards; 0: it stands there, to a millimetre
};

// How far the pin lies behind the centre of the wide-angle joint at this end, under which that joint would take the whole turn.
struct PinBehindCentre {
    End end;
    Length distance;             // negative: in front of it
};

// What the series of a shaft was identified by, and what its measures say of the series that the job states.
struct IdentifiedBy {
    IdentifyVerdict verdict{};
    std::string likeliest;               // by its measures
    double percent = 0;                  // that the whole shaft is of it
    std::optional<std::string> stated;   // the job's series
    bool excluded = false;               // the stated series, by the measures
};

using Note = std::variant<Remark, FitLengths, UnmeasuredTractors, LooserLimit, SawnWithin, ShortestOfMachine, PinForEqualAngles, PinBehindCentre, IdentifiedBy>;

// The halves without a guard that can be used: the shaft must not run until it has new ones.
struct GuardWarning {
    struct Half {
        End end;
        bool damaged;  // else it has none
    };
    std::vector<Half> halves;
    Length setback;    // the greatest by which a tube may stand out of a new one
};

}  // namespace shaftcut
