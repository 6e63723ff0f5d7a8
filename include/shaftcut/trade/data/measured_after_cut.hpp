// What was measured of a shaft after it was sawn, and on the machine, as its file states it: nothing is converted here.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/data/job.hpp"

namespace shaftcut {

// Pushed fully together; the reference is the job's own where none is stated.
struct ClosedAfterCut {
    Measurement length;
    std::optional<Reference> reference;
};

struct HalfAfterCut {
    std::optional<Measurement> length;      // inner cross to the tube's free end
    std::optional<Measurement> guard;       // inner cross to the guard tube's free end
    std::optional<Measurement> stands_out;  // in the guard's place: how far the tube stands out of its guard
};

// Over both outer ends when pushed together, dry and again greased with its guards on; and between the two rings on the guards,
// when closed and in each position on the machine.
struct MarksAfterCut {
    std::optional<Measurement> overall_dry, overall;
    std::optional<Measurement> closed;
    std::optional<Measurement> shortest;
    PerEach<Range, std::optional<Measurement>> longest;  // working is not read
};

// What is left out was not measured.
struct MeasuredAfterCut {
    std::string order;
    std::string date, by;  // may be empty
    Units units = Units::mm;
    std::optional<ClosedAfterCut> closed;
    PerEach<Tube, HalfAfterCut> halves;
    MarksAfterCut marks;
    Place place;
};

}  // namespace shaftcut
