#include "shaftcut/trade/build/build_inputs.hpp"

namespace shaftcut {

BuildInputs build_inputs(const BuildPlan& plan, const Series& series)
{
    BuildInputs inputs;
    inputs.beyond = plan.built->closed_at[plan.reference] - plan.built->lengths.closed;
    inputs.closed = plan.ordered_closed ? plan.ordered_closed->length : plan.fit.shortest->value - plan.limits.length(Limit::closing_clearance) + inputs.beyond;
    inputs.setback = plan.limits.length(Limit::guard_setback_new);
    inputs.step_um = plan.saw.step_um;
    for (const Tube tube : both_tubes) {
        const SeriesHalf& half = series.halves[tube];
        inputs.shoulder[tube] = *half.shoulder;
        inputs.seat[tube] = *half.seat;
        inputs.guard_shoulder[tube] = half.guard_shoulder;
        inputs.guard_seat[tube] = guard_seat_of(series, plan.ordered, tube);
    }
    return inputs;
}

}  // namespace shaftcut
