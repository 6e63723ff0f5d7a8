// What was measured of a shaft after it was sawn.
#pragma once

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/data/measured_after_cut.hpp"
#include "source/read.hpp"

namespace shaftcut {

// Reads `measured`, whose parts may stand in any order and be left out. `job`: the one that the shaft was cut by, or nothing where it could
// not be read. Faults beside those of form: another order's number than the job's, a guard's length beside what its tube stands out of it,
// and either of a guard that the job says is not used again.
// config/measured.xsd says the same for editors. Checked in tests/reading/measured_reader_test.cpp and by tests/reading/bad/.
Read<MeasuredAfterCut> read_measured(const Source& source, const Job* job);

}  // namespace shaftcut
