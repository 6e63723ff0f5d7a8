#include "order/rings.hpp"

#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

// Where the shaft closes and truly may: by the sheet, or by what was read now.
Expected closed_truly(const Judged& judged)
{
    return tubes_within(judged, {}) ? expected_closed(judged.order, Length()) : closed_by_readings(stops_now(judged));
}

// P was read on tubes that met, not on grease: what is over both outer ends is the same dry and greased.
bool truly_closed(const MarksAfterCut& marks)
{
    if (!marks.overall_dry || !marks.overall) return false;
    const Length apart = marks.overall_dry->length - marks.overall->length;
    return !clearly_above(apart, overall_apart) && !clearly_below(apart, -overall_apart);
}

Length tape_of(const WorkOrder& order, const Measurement& a, const Measurement& b)
{
    return std::max(a.plus_minus.value_or(order.measuring_plus_minus), b.plus_minus.value_or(order.measuring_plus_minus));
}

class Rings {
public:
    Rings(const Judged& judged, const MeasuredAfterCut& measured) : judged_(judged), measured_(measured), closed_(closed_truly(judged)) {}

    RingsFinding at_shortest(const Measurement& reading) const
    {
        const Length tape = tape_of(judged_.order, reading, *measured_.marks.closed);
        RingsFinding found{std::nullopt, RingsShow::not_closed, pulled_out(reading), rings_at_shortest(judged_.order, closed_, tape), std::nullopt, std::nullopt};
        if (!truly_closed(measured_.marks)) return found;
        // Both readings' ± against it, as the worst clearance may be passed by what two tapes leave open.
        const Toleranced& shortest = *judged_.order.fit.shortest;
        const Length worst = shortest.value - shortest.plus_minus - closed_.most - 2 * tape;
        found.least = std::min(judged_.order.limits.length(Limit::closing_clearance_floor), worst);
        found.show = clearly_above(found.pulled_out, found.expected.good_to) ? RingsShow::not_the_shortest : RingsShow::as_expected;
        if (found.show == RingsShow::not_the_shortest) return found;
        found.proven = found.pulled_out;
        if (clearly_below(found.pulled_out, found.expected.good_from)) found.show = holds(found) ? RingsShow::outside : RingsShow::too_little;
        return found;
    }

    std::optional<RingsFinding> at_longest(Range range, const Measurement& reading) const
    {
        const Length tape = tape_of(judged_.order, reading, *measured_.marks.closed);
        const auto expected = rings_at_longest(judged_.order, range, closed_, tape);
        if (!expected) return std::nullopt;
        RingsFinding found{range, RingsShow::not_closed, pulled_out(reading), *expected, std::nullopt, std::nullopt};
        if (!truly_closed(measured_.marks) || !judged_.now.closed) return found;
        const Length closed_overlap = judged_.now.half[Tube::inner].value + judged_.now.half[Tube::outer].value - judged_.now.closed->value;
        found.proven = closed_overlap - found.pulled_out;
        found.least = least_overlap(judged_.order.limits, range, closed_overlap);
        found.show = show_at_longest(found);
        return found;
    }

private:
    Length pulled_out(const Measurement& reading) const { return reading.length - measured_.marks.closed->length; }
    // Not so far apart as expected shows no overlap that the halves do not: where they are as the sheet allows, that is the sheet's.
    RingsShow show_at_longest(const RingsFinding& found) const
    {
        const bool near = clearly_below(found.pulled_out, found.expected.good_from), far = clearly_above(found.pulled_out, found.expected.good_to);
        if (!near && !far && tubes_within(judged_, {})) return RingsShow::as_expected;
        return holds(found) || (!far && tubes_within(judged_, {})) ? RingsShow::outside : RingsShow::too_little;
    }
    static bool holds(const RingsFinding& found) { return !clearly_below(*found.proven, *found.least); }

    const Judged& judged_;
    const MeasuredAfterCut& measured_;
    Expected closed_;
};

}  // namespace

std::vector<RingsFinding> rings_findings(const Judged& judged, const MeasuredAfterCut& measured)
{
    std::vector<RingsFinding> found;
    const MarksAfterCut& marks = measured.marks;
    if (!marks.closed) return found;
    const Rings rings(judged, measured);
    if (marks.shortest) found.push_back(rings.at_shortest(*marks.shortest));
    for (const Range range : all_ranges) {
        if (!marks.longest[range]) continue;
        if (const auto one = rings.at_longest(range, *marks.longest[range])) found.push_back(*one);
    }
    return found;
}

}  // namespace shaftcut
