#include "shaftcut/trade/order/expected_after_cut.hpp"

#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

Expected around(Length value, Length plus_minus) { return {value, value - plus_minus, value + plus_minus}; }

// What a sawn half's true length may lie off what is kept of it: its own ± and the saw's.
Length half_doubt(const WorkOrder& order, Tube tube)
{
    const Length own = order.reading.shaft.halves[tube].length->plus_minus;
    return order.cut->plan.cuts_tube(tube) ? own + order.saw.plus_minus : own;
}

Length guard_doubt(const WorkOrder& order, Tube tube)
{
    const Length own = order.reading.shaft.halves[tube].guard->plus_minus;
    return order.cut->plan.cuts_guard(tube) ? own + order.saw.plus_minus : own;
}

// The least to which the shaft can close: whichever half stops it had a path of C.
Length closed_at_least(const WorkOrder& order)
{
    const Toleranced& closed = order.reading.shaft.closed;
    const auto after = [&](Tube tube) {
        const Length doubt = order.cut->plan.cuts_tube(tube) ? half_doubt(order, tube) : Length();
        return closed.value - closed.plus_minus - order.cut->plan.cut[tube] - doubt;
    };
    return std::min(after(Tube::inner), after(Tube::outer));
}

}  // namespace

Expected expected_half(const WorkOrder& order, Tube tube, Length tape)
{
    return around(order.cut->plan.half[tube], half_doubt(order, tube) + tape);
}

std::optional<Expected> expected_guard(const WorkOrder& order, Tube tube, Length tape)
{
    const auto& kept = order.cut->plan.guard_half[tube];
    if (!kept) return std::nullopt;
    return around(*kept, guard_doubt(order, tube) + tape);
}

std::optional<Expected> expected_stands_out(const WorkOrder& order, Tube tube, Length tape)
{
    const auto& kept = order.cut->plan.guard_half[tube];
    if (!kept) return std::nullopt;
    return around(order.cut->plan.half[tube] - *kept, half_doubt(order, tube) + guard_doubt(order, tube) + tape);
}

Expected expected_closed(const WorkOrder& order, Length tape)
{
    const Length most = closed_at_worst(order.reading.shaft, *order.stops, order.cut->plan, order.saw);
    return {order.cut->plan.closed, closed_at_least(order) - tape, most + tape};
}

OnRings rings_at_shortest(const WorkOrder& order, const Expected& closed, Length tape)
{
    const Toleranced& shortest = *order.fit.shortest;
    const Length worst = shortest.value - shortest.plus_minus - closed.most;
    const Length floor = order.limits.length(Limit::closing_clearance_floor);
    const Length value = shortest.value - closed.value;
    return {value, std::min(value, std::max(worst - 2 * tape, floor)), shortest.value + shortest.plus_minus - closed.least + 2 * tape, std::min(floor, worst), std::nullopt};
}

std::optional<OnRings> rings_at_longest(const WorkOrder& order, Range range, const Expected& closed, Length tape)
{
    const auto& longest = order.fit.longest[range];
    if (!longest) return std::nullopt;
    const Length value = longest->value - closed.value;
    const Length read = longest->plus_minus + 2 * tape;
    OnRings rings{value, longest->value - closed.most - read, longest->value - closed.least + read, std::nullopt, std::nullopt};
    const Length overlap = order.cut->plan.overlap_at(closed.value);
    const Length doubt = half_doubt(order, Tube::inner) + half_doubt(order, Tube::outer) + closed.most - closed.value + 2 * tape;
    rings.never_over = std::max(rings.good_to, overlap - least_overlap(order.limits, range, overlap) - doubt);
    return rings;
}

ExpectedAfterCut expected_after_cut(const WorkOrder& order)
{
    const Length tape = order.measuring_plus_minus;
    const Expected closed = expected_closed(order, Length());
    ExpectedAfterCut found{expected_closed(order, tape), {}, {}, {}, rings_at_shortest(order, closed, tape), {}};
    for (const Tube tube : both_tubes) {
        found.half[tube] = expected_half(order, tube, tape);
        found.guard[tube] = expected_guard(order, tube, tape);
        found.stands_out[tube] = expected_stands_out(order, tube, tape);
    }
    for (const Range range : all_ranges) found.longest[range] = rings_at_longest(order, range, closed, tape);
    return found;
}

}  // namespace shaftcut
