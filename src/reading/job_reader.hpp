// A job: one shaft and the fits that it must serve.
#pragma once

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/choose/choose.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "source/read.hpp"

namespace shaftcut {

// Reads `job`, whose parts may stand in any order, and compares what it names with `catalogue` (see read_shaft). An
// order is 1 to 40 letters, digits, ".", "_" or "-" and does not begin with ".", and what stands before its
// first dot is no device's name on Windows (CON, PRN, AUX, NUL, COM0-9, LPT0-9); a date is a day of the calendar as
// YYYY-MM-DD. Lengths that contradict each other are no fault of the file: the trade's checks refuse them.
// config/job.xsd says the same for editors. Checked in tests/reading/job_reader_test.cpp and by tests/reading/bad/.
Read<Job> read_job(const Source& source, const Catalogue& catalogue);

// A job to choose a shaft for: `job` likewise, but for its shaft (see read_shaft_to_choose), and no length of its fits runs between crosses.
// config/choose.xsd says the same for editors. Checked in tests/reading/choose_reader_test.cpp and by tests/reading/bad/choose.
Read<JobToChooseFor> read_job_to_choose_for(const Source& source, const Catalogue& catalogue);

// A job before anything was measured: `job` with its order, date and `for`. Its shaft and fit are not there yet: a job that holds one is to be quoted
// as it is. Checked in tests/reading/unmeasured_job_test.cpp.
Read<Job> read_unmeasured_job(const Source& source);

}  // namespace shaftcut
