// The answer to an order: all that a document sees of a shaft made to order. Documents print it; they never compute.
//
// Every check of checks.hpp is made on the finished shaft as if somebody had measured it: its sawn lengths carry the saw's
// tolerance, nothing is left to cut. Three differ because the shaft is new: guard-setback is held to guard-setback-new,
// tube-left looks at both tubes, and a lock that stands out on a primary shaft is refused, for no year of building excuses it.
// Checked in build_plan_test: a shaft that is built to a fit fits as it is when it is worked up as one that exists.
#pragma once

#include "shaftcut/trade/build/findings.hpp"
#include "shaftcut/trade/build/open_points.hpp"
#include "shaftcut/trade/build/operations.hpp"
#include "shaftcut/trade/build/parts.hpp"
#include "shaftcut/trade/build/plate.hpp"
#include "shaftcut/trade/data/firm.hpp"
#include "shaftcut/trade/data/shaft_title.hpp"

namespace shaftcut {

// Held: it could be built, but something must be known first.
enum class BuildVerdict { build, held, refused };
template <> struct Words<BuildVerdict> { static constexpr std::array all{"build", "held", "refused"}; };

// A telescoping length, and the same between the outer crosses in line. Without a wide-angle joint they are one.
using AtEither = PerEach<Reference, Length>;

// Where this shaft can be used, at the worst of all tolerances.
struct UseRange {
    AtEither shortest;                               // the closed length and the closing clearance
    PerEach<Range, std::optional<AtEither>> longest; // that it may be pulled to; nothing where it may not be so used at all
};

// What the shaft is ordered for: the fit's deciding lengths. Nothing where only a closed length is ordered, and where one is not stated.
struct OrderedUse {
    std::optional<AtEither> shortest;
    PerEach<Range, std::optional<AtEither>> longest;
};

// The finished shaft. All lengths telescoping or from the half's inner cross.
struct BuiltShaft {
    BuiltLengths lengths;
    AtEither closed_at;
    JobShaft shaft;                        // as somebody would measure it
    ShaftReading reading;                  // of that
    Length overlap_closed;
    std::optional<Length> overlap_shortest;                 // at the fit's lengths; nothing where it is not known
    PerEach<Range, std::optional<Length>> overlap_longest;
    UseRange use;
    PerEach<Tube, std::optional<Length>> coarse_tolerance;  // ISO 2768-1 class c of each drive tube's blank, to hold the saw's against
    PerEach<Tube, bool> sawn;              // false: the series forbids shortening that tube; it is fetched made to its length
    std::vector<ShaftPart> parts;               // of one shaft
    std::optional<std::int64_t> tubes_mass;  // of both drive tubes of one shaft, in grams; nothing where one is not known
    std::vector<Operation> operations;     // in order
    PlateFigures plate;
};

struct BuildPlan {
    std::string order, customer, machine, due, owner;
    Firm firm;                 // whom the plate names
    int count = 1;
    Units units = Units::mm;   // of the documents
    ShaftTitle shaft_title;
    Shape shape = Shape::other;
    std::string series;
    bool guard = true;

    BuildVerdict verdict = BuildVerdict::refused;
    std::vector<BuildReason> reasons;  // why refused; empty otherwise
    std::vector<OpenPoint> open;       // why held; empty otherwise
    std::vector<BuildWay> ways_out;    // what could be built instead; empty unless refused
    std::vector<BuildNote> notes;
    std::vector<BuildCaution> cautions;

    JobShaft ordered;                       // as the list states it; its closed length is no figure of it
    std::optional<Measurement> ordered_closed;  // nothing where the fit says how long
    Reference reference = Reference::inner_cross;  // of the closed length
    bool has_wide_angle = false;
    std::vector<FitReading> fits;           // one without lengths where only a closed length is ordered
    Fit fit;                                // the deciding one
    OrderedUse ordered_use;
    LimitsInForce limits;
    SawSettings saw;
    Length measuring_plus_minus;

    std::optional<BuiltShaft> built;        // empty when refused or held: no document can print what must not be sawn
    std::vector<Check> checks;              // one for each CheckId, in its order
};

// The order's series must be one of the catalogue. `units`: of the documents.
BuildPlan plan_build(const BuildOrder& order, const Catalogue& catalogue, const Workshop& workshop, Units units);

// The shaft of these lengths as a job states one that exists: closed length, halves and guards, each with the saw's tolerance.
JobShaft finished_shaft(const BuildOrder& order, const Series& series, const BuiltLengths& lengths, Length saw_plus_minus);

}  // namespace shaftcut
