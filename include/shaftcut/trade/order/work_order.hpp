// The answer to a job: all that a document sees. Documents print it; they never compute.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/advice/findings.hpp"
#include "shaftcut/trade/checks/checks.hpp"
#include "shaftcut/trade/checks/confirmation.hpp"
#include "shaftcut/trade/cut/cut.hpp"
#include "shaftcut/trade/cut/datum.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/data/shaft_title.hpp"
#include "shaftcut/trade/order/findings.hpp"
#include "shaftcut/trade/order/machine_extremes.hpp"
#include "shaftcut/trade/order/machine_view.hpp"
#include "shaftcut/trade/order/steps.hpp"

namespace shaftcut {

enum class Verdict { cut, fits, refused };
template <> struct Words<Verdict> { static constexpr std::array all{"cut", "fits", "refused"}; };

// Overlaps at the telescoping lengths that are known.
struct Overlaps {
    Length closed;
    std::optional<Length> shortest;
    PerEach<Range, std::optional<Length>> longest;
};

// What is cut and what is left. All lengths telescoping or from the half's inner cross.
struct CutFigures {
    CutPlan plan;
    PerEach<Reference, Length> closed_at;  // the new closed length at either cross
    Overlaps overlap;
};

struct WorkOrder {
    // Heading: what ISO 7200:2004 asks of a title block comes from here.
    std::string order, date, customer, machine, tractor, owner;
    Circumstances circumstances;
    Units units = Units::mm;  // of the documents
    ShaftTitle shaft_title;

    Verdict verdict = Verdict::refused;
    std::vector<WayOut> ways_out;       // what would serve instead; empty unless refused
    std::vector<Confirmation> confirm;  // before sawing, in the order of the bench; empty when refused
    std::vector<Note> notes;            // what else the fitter should know: references, several tractors, read in line

    // What was stated and what it means.
    JobShaft shaft;                     // as the job states it
    std::optional<Shape> shape;
    std::vector<Length> listed_closed;  // the closed lengths of its series, between the inner crosses; empty: none listed, or no series
    ShaftReading reading;
    std::vector<FitReading> fits;
    std::vector<MachineView> machines;       // of each fit that holds a machine's geometry
    std::vector<Note> machine_notes;         // those of the notes that come from it
    MachineExtremes extremes;                // of all of them
    Fit fit;                            // the deciding one
    std::optional<Stops> stops;
    LimitsInForce limits;
    SawSettings saw;
    Length measuring_plus_minus;        // the workshop's: of a measured length that states none
    std::optional<Length> overlap_closed_before;
    std::optional<IdentifiedBy> identified;  // of a job that holds what its series was identified by

    // Empty when refused: no document can print what a refused job must not show.
    std::optional<CutFigures> cut;
    std::vector<Check> checks;          // one for each CheckId, in its order

    std::vector<Step> steps;            // in order; empty when refused
    std::vector<Caution> cautions;
};

// A series that the job names must be one of the catalogue: the job reader refuses any other. `units`: of the documents.
WorkOrder work_up(const Job& job, const Catalogue& catalogue, const Workshop& workshop, Units units);

}  // namespace shaftcut
