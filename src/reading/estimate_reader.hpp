// A job before anything was measured: whose it is, and nothing else.
#pragma once

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "source/read.hpp"

namespace shaftcut {

// Reads a `job` with its order, date and `for`. Its shaft and fit are not there yet: a job that holds one is to be quoted as it is. Checked in
// tests/reading/estimate_reader_test.cpp.
Read<Job> read_unmeasured_job(const Source& source);

}  // namespace shaftcut
