// Jobs that hold a slip, or rest on a single figure: those among the base jobs that take the ways through consistency and confirmation.
#pragma once

#include "oracle/base_jobs.hpp"

namespace shaftcut::test {

BaseJob base(std::string name, Job job_);
BaseJob standard();  // two standard joints, both halves measured, to be cut

std::vector<BaseJob> slipped_jobs();

}  // namespace shaftcut::test
