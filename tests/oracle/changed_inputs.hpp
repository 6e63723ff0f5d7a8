// Changes to a job's measured lengths by the names that its workbook gives them.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "oracle/base_jobs.hpp"

namespace shaftcut::test {

// Nothing: the cell is emptied.
using Changes = std::map<std::string, std::optional<Length>>;

// The job as if its file had held these lengths. With several fits the workbook holds the deciding lengths, so the changed
// job has one fit between the inner crosses with those; where one of them has a machine only the shaft's lengths change. Beside
// a machine an emptied length is the machine's again, and so is one that is what the machine gives.
Job changed_job(const BaseJob& base, const Changes& changes);

// The lengths as issued.
Changes issued_lengths(const BaseJob& base);

// Finds sets of changes that are worth trying in a workbook.
class ChangeSearch {
public:
    // For every input every place, found by bisection to the micrometre, where a check's result, the verdict or the agreement
    // of the closed length changes, or a confirmation is asked or falls away: at it, one micrometre past it, and 0.009 to 0.011 mm to
    // both sides. A change is taken the first two times that an input makes it (in inches once more), so the order of calls matters.
    // About the lengths that a machine gives by itself every change is taken.
    // Each input also goes past the ends of what it may be, and is as if its unit were the other one.
    // Besides: every optional length emptied or filled, every length changed by as little as decides nothing.
    std::vector<Changes> around_limits(const BaseJob& base);

    // Sets that change everything at once, the same ones in every run.
    static std::vector<Changes> at_random(const BaseJob& base, int count);

private:
    // Where to look for changes of one input, and how many of each kind of change are taken.
    struct Around {
        Length middle, span, step;
        std::string kind;
        int most_inputs = 1;
    };
    std::vector<Changes> around_limits_of(const BaseJob& base, const std::string& name, const Around& around);

    // Whether any of these changes came up no more than `most` times so far, with this one; each is counted.
    bool is_new(const std::vector<std::string>& changes, const std::string& kind, int most);

    std::map<std::string, int> seen_;
};

}  // namespace shaftcut::test
