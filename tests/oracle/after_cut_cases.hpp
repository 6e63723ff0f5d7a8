// Lengths measured after the cut, and what the program says of the shaft by them, for the workbook's block of the shaft as cut.
#pragma once

#include <random>
#include <vector>

#include "oracle/base_jobs.hpp"
#include "shaftcut/trade/order/after_cut.hpp"

namespace shaftcut::test {

struct AfterCutCase {
    MeasuredAfterCut measured;
    AfterCut found;
};

// Of an answer that is not refused: halves and guards as kept, a little off, far off, exchanged, or not read.
std::vector<AfterCutCase> after_cut_cases(const BaseJob& base, const Job& job, const WorkOrder& order, int count, std::mt19937& random);

}  // namespace shaftcut::test
