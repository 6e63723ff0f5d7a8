// The example of the documents as it was cut. Kept are 596, 574 and guards of 578, 556; closed 702 between the inner crosses, 766 from the
// outer; ± 1 of the saw and 2 of each of two tapes.
#pragma once

#include "shaftcut/trade/order/after_cut.hpp"
#include "support/jobs.hpp"

namespace shaftcut::test {

// Sawn and read as the sheet has it.
inline MeasuredAfterCut as_kept()
{
    MeasuredAfterCut found;
    found.halves[Tube::inner] = {measured(596), measured(578), std::nullopt};
    found.halves[Tube::outer] = {measured(574), measured(556), std::nullopt};
    found.closed = ClosedAfterCut{measured(766), std::nullopt};
    return found;
}

inline AfterCut judged(const Job& of, const MeasuredAfterCut& read) { return *after_cut(worked(of), of, catalogue(), read); }
inline AfterCut judged(const MeasuredAfterCut& read) { return judged(job(), read); }
inline const PartAfterCut& part(const AfterCut& found, SawnPart which) { return found.parts.at(static_cast<std::size_t>(which)); }
inline CheckResult result(const AfterCut& found, CheckId id) { return check_of(found.checks, id).result; }

}  // namespace shaftcut::test
