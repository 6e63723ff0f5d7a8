// The shaft as it was cut, made ready for the checks. Private to the order room.
#pragma once

#include "shaftcut/trade/order/after_cut.hpp"

namespace shaftcut {

// The lengths that count now: as read, with the ± of the tape that read them; what was not read is as it is kept, with what that may
// be off.
struct LengthsNow {
    PerEach<Tube, Toleranced> half;
    PerEach<Tube, std::optional<Toleranced>> guard;  // nothing where it is not known or not used again
    PerEach<Tube, bool> half_read, guard_read;
    std::optional<Toleranced> closed;                // telescoping, where it was read
};
LengthsNow lengths_now(const WorkOrder& order, const MeasuredAfterCut& measured);

// What is sawn off again.
struct SawnAgain {
    PerEach<Tube, Length> tube, guard;
    bool any() const;
};

struct Judged {
    const WorkOrder& order;
    const Job& job;
    const Catalogue& catalogue;
    const LengthsNow& now;
};

// Whether a tube's length, or a guard's, after it is sawn again is what the sheet allows. An unknown guard is not.
bool half_within(const Judged& judged, Tube tube, const SawnAgain& again);
bool guard_within(const Judged& judged, Tube tube, const SawnAgain& again);
bool tubes_within(const Judged& judged, const SawnAgain& again);

// Where the tubes stop by what was read now, with the shoulders of the cut.
Stops stops_now(const Judged& judged);

// The closed length by the halves as they read: either path can be the one that stops the shaft.
Expected closed_by_readings(const Stops& stops);

// What the closed length says beside the halves; nothing where it was not read.
std::optional<ClosedFinding> closed_finding(const Judged& judged);

// The shaft that the checks are made of, after it is sawn again.
CutPlan shaft_as_cut(const Judged& judged, const SawnAgain& again);

// The checks of it. `may_lack_clearance`: less than is asked warns while the worst is above 0.
std::vector<Check> checks_as_cut(const Judged& judged, const SawnAgain& again, bool may_lack_clearance);

}  // namespace shaftcut
