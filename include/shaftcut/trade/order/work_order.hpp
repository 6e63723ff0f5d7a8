// The answer to a job: all that a document sees. Documents print it; they never compute.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/checks/checks.hpp"
#include "shaftcut/trade/checks/confirmation.hpp"
#include "shaftcut/trade/cut/cut.hpp"
#include "shaftcut/trade/cut/datum.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/order/machine_extremes.hpp"
#include "shaftcut/trade/order/machine_view.hpp"

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
    std::string shaft_title;  // "Alder 2, lemon tubes, primary, 540 min⁻¹"

    Verdict verdict = Verdict::refused;
    std::vector<std::string> reasons;   // why refused, a sentence each; empty otherwise
    std::vector<std::string> ways_out;  // what would serve instead; empty unless refused
    std::vector<Confirmation> confirm;  // before sawing, in the order of the bench; empty when refused
    std::vector<std::string> notes;     // what else the fitter should know: references, several tractors, read in line

    // What was stated and what it means.
    JobShaft shaft;                     // as the job states it
    std::optional<Shape> shape;
    std::vector<Length> listed_closed;  // the closed lengths of its series, between the inner crosses; empty: none listed, or no series
    ShaftReading reading;
    std::vector<FitReading> fits;
    std::vector<MachineView> machines;       // of each fit that holds a machine's geometry
    std::vector<std::string> machine_notes;  // those of the notes that come from it
    MachineExtremes extremes;                // of all of them
    Fit fit;                            // the deciding one
    std::optional<Stops> stops;
    LimitsInForce limits;
    SawSettings saw;
    Length measuring_plus_minus;        // the workshop's: of a measured length that states none
    std::optional<Length> overlap_closed_before;

    // Empty when refused: no document can print what a refused job must not show.
    std::optional<CutFigures> cut;
    std::vector<Check> checks;          // one for each CheckId, in its order

    std::vector<std::string> steps;     // in order
    std::vector<std::string> cautions;
};

// A series that the job names must be one of the catalogue: the job reader refuses any other. `units`: of the documents.
WorkOrder work_up(const Job& job, const Catalogue& catalogue, const Workshop& workshop, Units units);

}  // namespace shaftcut
