// What the lengths of a shaft made to order follow from, as figures of their own: for a table that recalculates.
//
// The symbols and formulas are those of build.hpp. Checked by batch_workbook_test and by another program that recalculates the batch
// workbook (tests/oracle/recalculate_batch.py).
#pragma once

#include "shaftcut/trade/build/build_plan.hpp"

namespace shaftcut {

struct BuildInputs {
    Length closed;   // to build to, at the plan's reference: as ordered, or the shortest less the closing clearance
    Length beyond;   // how much of it lies outside the inner crosses: C = closed − beyond
    Length setback;  // z, of a guard on a new shaft
    Fraction step_um;
    PerEach<Tube, Length> shoulder, seat;
    PerEach<Tube, std::optional<Length>> guard_shoulder, guard_seat;  // nothing where the series does not state it
};

// Of a plan that can be built, and its series.
BuildInputs build_inputs(const BuildPlan& plan, const Series& series);

}  // namespace shaftcut
