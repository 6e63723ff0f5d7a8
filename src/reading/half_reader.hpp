// A half of a job's shaft.
#pragma once

#include "shaftcut/trade/data/job.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// `sound`: it names no series, or one that `series` holds, or none. Of another nothing is said further.
struct HalfReading {
    JobHalf half;
    Attribute series;
    bool sound = true;
};

// Reads what a `half` states beside its tube. Faults beside those of form: a stop depth beside a shoulder, in whose place it stands, or of a half
// without a length, which it is taken off, and cut-to of a half without a length. Checked in tests/reading/job_says_test.cpp and by tests/reading/bad/.
HalfReading read_half(Element& half, const KnownNames& series);

}  // namespace shaftcut
