// Changes to a job's measured lengths by the names that its workbook gives them.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base_jobs.hpp"

namespace shaftcut::test {

// Nothing: the cell is emptied.
using Changes = std::map<std::string, std::optional<Length>>;

// The job as if its file had held these lengths. With several fits the workbook holds the deciding lengths, so the changed
// job has one fit between the inner crosses with those.
Job changed_job(const BaseJob& base, const Changes& changes);

// The lengths as issued.
Changes issued_lengths(const BaseJob& base);

// Sets of changes: for every input every place, found by bisection to the micrometre, where a check's result, the verdict or
// the agreement of the closed length changes, at it, one micrometre, 0.009, 0.010 and 0.011 mm to both sides; every optional
// length emptied; and `random` sets that change everything at once (the same ones in every run).
std::vector<Changes> changes_around_limits(const BaseJob& base, int random);

}  // namespace shaftcut::test
