#include "shaftcut/trade/order/after_cut.hpp"

#include <algorithm>

#include "cut/sawn.hpp"
#include "data/slip_limits.hpp"
#include "order/rings.hpp"
#include "order/shaft_as_cut.hpp"

namespace shaftcut {
namespace {


// S − k: to where each path must come down.
Length target(const WorkOrder& order) { return order.fit.shortest->value - order.limits.length(Limit::closing_clearance); }

// A closed length that the halves do not explain says nothing of the stops.
const PerEach<Tube, Length>& shoulders_in_use(const Judged& judged, const Stops& now)
{
    return now.agreement == ClosedAgreement::agrees ? now.shoulder : judged.order.stops->shoulder;
}

// What must go goes down to what is kept: what is left above it would be asked for again by the next reading.
Length down_to(Length kept, Length read, Length need) { return clearly_above(need, Length()) ? std::max(need, read - kept) : Length(); }

Length tube_need(const Judged& judged, Tube tube)
{
    const Toleranced& half = judged.now.half[tube];
    const Expected expected = expected_half(judged.order, tube, half.plus_minus);
    if (!clearly_above(half.value, expected.most)) return Length();
    const Stops now = stops_now(judged);
    return down_to(expected.value, half.value, half.value + shoulders_in_use(judged, now)[other(tube)] - target(judged.order));
}

// The most that a guard may measure that was not measured before: no more than its tube, each with its tape and saw.
Length most_beside_tube(const Judged& judged, Tube tube)
{
    const Toleranced& half = judged.now.half[tube];
    const Expected own = expected_half(judged.order, tube, Length());
    return half.value + half.plus_minus + own.most - own.value + judged.order.saw.plus_minus + judged.now.guard[tube]->plus_minus;
}

Length guard_need(const Judged& judged, Tube tube, Length tube_after)
{
    if (!judged.now.guard[tube]) return Length();
    const Toleranced& guard = *judged.now.guard[tube];
    const auto expected = expected_guard(judged.order, tube, guard.plus_minus);
    if (!clearly_above(guard.value, expected ? expected->most : most_beside_tube(judged, tube))) return Length();
    const auto& face = judged.order.reading.shaft.halves[other(tube)].guard_shoulder;
    Length need = guard.value - tube_after;
    if (face) need = std::max(need, guard.value + *face - target(judged.order));
    return expected ? down_to(expected->value, guard.value, need) : need;
}

struct Needs {
    PerEach<Tube, Length> tube, guard;
    SawnAgain sawn_again;
};

Needs needs_of(const Judged& judged)
{
    Needs needs;
    const SawSettings& saw = judged.order.saw;
    for (const Tube tube : both_tubes) {
        needs.tube[tube] = tube_need(judged, tube);
        needs.sawn_again.tube[tube] = sawn(needs.tube[tube], saw);
        needs.guard[tube] = guard_need(judged, tube, judged.now.half[tube].value - needs.sawn_again.tube[tube]);
        needs.sawn_again.guard[tube] = sawn(needs.guard[tube], saw);
    }
    return needs;
}

// What a failed check lacks.
Length lacks(const std::vector<Check>& checks, CheckId id)
{
    const Check& check = check_of(checks, id);
    if (check.result != CheckResult::fail || !check.value) return Length();
    return Length::micrometres(check.limit.value_or(0) - *check.value);
}

// What each part lacks of the shaft as it is after it is sawn again.
class Shortfalls {
public:
    Shortfalls(const Judged& judged, const Needs& needs, const std::vector<Check>& checks)
        : judged_(judged), again_(needs.sawn_again), checks_(checks), plan_(shaft_as_cut(judged, again_))
    {
    }

    Length of_tube(Tube tube) const
    {
        Length most = own_of_tube(tube);
        if (!is_to_blame(tube)) return most;
        for (const Range range : all_ranges) most = std::max(most, lacks(checks_, overlap_check_id(range)));
        return most;
    }

    // Guards part where the worst case of their cover is below 0.
    Length of_guard(Tube tube) const
    {
        const Check& cover = check_of(checks_, CheckId::guard_cover);
        if (cover.result != CheckResult::fail) return Length();
        const Half& half = judged_.order.reading.shaft.halves[tube];
        Length most;
        if (plan_.guard_half[tube] && plan_.cuts_guard(tube)) most = std::max(most, half.guard_seat.value_or(Length()) + least_free_guard - *plan_.guard_half[tube]);
        if (cover.worst && guard_is_to_blame(tube)) most = std::max(most, Length::micrometres(-*cover.worst));
        return most;
    }

private:
    bool is_failed(CheckId id) const { return check_of(checks_, id).result == CheckResult::fail; }

    // A tube that was sawn and must keep its least, its hole, or must not be sawn at all.
    Length own_of_tube(Tube tube) const
    {
        const Half& half = judged_.order.reading.shaft.halves[tube];
        const Length left = plan_.half[tube], before = half.length->value;
        if (!clearly_below(left, before) || (half_within(judged_, tube, again_) && !judged_.order.cut->plan.cuts_tube(tube))) return Length();
        Length most;
        if (is_failed(CheckId::tube_left) && half.seat && half.least_tube) most = std::max(most, *half.seat + *half.least_tube - left);
        if (!is_failed(CheckId::shortening_allowed)) return most;
        if (half.shortening_forbidden) most = std::max(most, before - left);
        if (half.lubrication_hole) most = std::max(most, *half.lubrication_hole - left);
        return most;
    }

    // Of what both tubes are too short for: those below what the sheet allows, else those below what it keeps, else both.
    bool is_to_blame(Tube tube) const
    {
        const auto below = [&](Tube one, bool outside) {
            const Expected expected = expected_half(judged_.order, one, judged_.now.half[one].plus_minus);
            return clearly_below(plan_.half[one], outside ? expected.least : expected.value);
        };
        for (const bool outside : {true, false})
            if (below(tube, outside) || below(other(tube), outside)) return below(tube, outside);
        return true;
    }

    bool guard_is_to_blame(Tube tube) const
    {
        const auto within = [&](Tube one) { return guard_within(judged_, one, again_); };
        return !within(tube) || within(other(tube));
    }

    const Judged& judged_;
    const SawnAgain& again_;
    const std::vector<Check>& checks_;
    CutPlan plan_;
};

// Nothing where what lacks decides nothing (length.hpp).
Length that_decides(Length lacks) { return clearly_above(lacks, Length()) ? lacks : Length(); }

AfterCutVerdict result_of(bool was_read, Length off, Length short_by)
{
    if (short_by != Length()) return AfterCutVerdict::too_short;
    if (!was_read) return AfterCutVerdict::measure;
    return off == Length() ? AfterCutVerdict::right : AfterCutVerdict::saw_more;
}

std::optional<SawMore> saw_more(const AfterCutVerdict result, Length off, Length need, const SawSettings& saw)
{
    if (result != AfterCutVerdict::saw_more) return std::nullopt;
    return SawMore{off, need, clearly_above(off, round_up_to_step(need, saw.step_um))};
}

PartAfterCut tube_found(const Judged& judged, const Needs& needs, const Shortfalls& shortfalls, Tube tube)
{
    const Toleranced& half = judged.now.half[tube];
    const bool was_read = judged.now.half_read[tube];
    const Length off = needs.sawn_again.tube[tube], short_by = that_decides(shortfalls.of_tube(tube));
    PartAfterCut part{tube_part(tube), result_of(was_read, off, short_by), std::nullopt, std::nullopt, std::nullopt, short_by};
    if (was_read) part.measured = half.value;
    part.expected = expected_half(judged.order, tube, was_read ? half.plus_minus : judged.order.measuring_plus_minus);
    part.saw_more = saw_more(part.result, off, needs.tube[tube], judged.order.saw);
    return part;
}

PartAfterCut guard_found(const Judged& judged, const Needs& needs, const Shortfalls& shortfalls, Tube tube)
{
    const auto& guard = judged.now.guard[tube];
    const bool was_read = judged.now.guard_read[tube];
    const Length off = needs.sawn_again.guard[tube], short_by = that_decides(shortfalls.of_guard(tube));
    PartAfterCut part{guard_part(tube), result_of(was_read, off, short_by), std::nullopt, std::nullopt, std::nullopt, short_by};
    if (was_read) part.measured = guard->value;
    part.expected = expected_guard(judged.order, tube, was_read ? guard->plus_minus : judged.order.measuring_plus_minus);
    part.saw_more = saw_more(part.result, off, needs.guard[tube], judged.order.saw);
    return part;
}

std::vector<PartAfterCut> parts_found(const Judged& judged, const Needs& needs, const std::vector<Check>& checks)
{
    const Shortfalls shortfalls(judged, needs, checks);
    std::vector<PartAfterCut> parts;
    for (const Tube tube : both_tubes) parts.push_back(tube_found(judged, needs, shortfalls, tube));
    for (const Tube tube : both_tubes)
        if (judged.order.reading.shaft.halves[tube].guard_used) parts.push_back(guard_found(judged, needs, shortfalls, tube));
    return parts;
}

// The other way round each reading is the other tube's.
bool perhaps_exchanged(const Judged& judged)
{
    const auto exchanged = [&](Tube tube) {
        const Toleranced& half = judged.now.half[tube];
        return !half_within(judged, tube, {}) && expected_half(judged.order, other(tube), half.plus_minus).holds(half.value);
    };
    return exchanged(Tube::inner) && exchanged(Tube::outer) && !(judged.now.closed && stops_now(judged).agreement == ClosedAgreement::agrees);
}

// Nothing is sawn on readings that may be each other's, nor where a check would still fail that no part explains.
void withhold(AfterCut& found, const std::vector<Check>& after)
{
    const bool too_short = std::any_of(found.parts.begin(), found.parts.end(), [](const PartAfterCut& part) { return part.result == AfterCutVerdict::too_short; });
    for (PartAfterCut& part : found.parts) {
        const bool is_tube = part.part == SawnPart::inner_tube || part.part == SawnPart::outer_tube;
        const bool unsure = part.saw_more && any_failed(after) && !too_short;
        if (!unsure && !(is_tube && found.perhaps_exchanged)) continue;
        part = {part.part, AfterCutVerdict::measure, part.measured, part.expected, std::nullopt, Length()};
    }
}

// A shaft that comes nearer to its stop than it may must be measured and answered anew.
AfterCutVerdict verdict_of(const RingsFinding& rings)
{
    if (rings.show != RingsShow::too_little) return AfterCutVerdict::right;
    return rings.longest ? AfterCutVerdict::too_short : AfterCutVerdict::measure;
}

// The worst of what was found; a check that still fails and no part explains asks for other readings.
AfterCutVerdict verdict_of(const AfterCut& found, const std::vector<Check>& checks)
{
    AfterCutVerdict worst = AfterCutVerdict::right;
    const auto take = [&](AfterCutVerdict one) { worst = std::max(worst, one); };
    for (const PartAfterCut& part : found.parts) take(part.result);
    for (const RingsFinding& one : found.rings) take(verdict_of(one));
    if (found.closed && found.closed->is == ClosedAfterCutIs::longer) take(AfterCutVerdict::measure);
    if (any_failed(checks)) take(AfterCutVerdict::measure);
    return worst;
}

void put_lengths(AfterCut& found, const Judged& judged)
{
    const CutPlan plan = shaft_as_cut(judged, {});
    found.half = plan.half;
    found.guard = plan.guard_half;
    found.closes_at = plan.closed;
    found.overlap.closed = plan.overlap_at(plan.closed);
    found.overlap.shortest = plan.overlap_at(judged.order.fit.shortest->value);
    for (const Range range : all_ranges)
        if (const auto& longest = judged.order.fit.longest[range]) found.overlap.longest[range] = plan.overlap_at(longest->value);
}

}  // namespace

std::optional<AfterCut> after_cut(const WorkOrder& order, const Job& job, const Catalogue& catalogue, const MeasuredAfterCut& measured)
{
    if (!order.cut) return std::nullopt;
    const LengthsNow now = lengths_now(order, measured);
    const Judged judged{order, job, catalogue, now};
    const Needs needs = needs_of(judged);
    const bool again = needs.sawn_again.any();
    AfterCut found;
    found.as_the_sheet = tubes_within(judged, {});
    found.closed = closed_finding(judged);
    found.rings = rings_findings(judged, measured);
    found.checks = checks_as_cut(judged, {}, !again);
    const std::vector<Check> after = again ? checks_as_cut(judged, needs.sawn_again, true) : found.checks;
    found.parts = parts_found(judged, needs, after);
    found.perhaps_exchanged = perhaps_exchanged(judged);
    withhold(found, after);
    put_lengths(found, judged);
    found.verdict = verdict_of(found, after);
    return found;
}

}  // namespace shaftcut
