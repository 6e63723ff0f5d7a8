#include "order/shaft_as_cut.hpp"

#include <algorithm>

#include "checks/check_rules.hpp"

namespace shaftcut {
namespace {

Toleranced as_read(const WorkOrder& order, const Measurement& measured) { return {measured.length, measured.plus_minus.value_or(order.measuring_plus_minus)}; }

// What is kept, with what it may be off: a reading with no tape.
Toleranced as_kept(const Expected& expected) { return {expected.value, expected.most - expected.value}; }

// From the guard's own length, or from how far its tube stands out of it.
std::optional<Toleranced> guard_read(const WorkOrder& order, const HalfAfterCut& measured, const Toleranced& half)
{
    if (measured.guard) return as_read(order, *measured.guard);
    if (!measured.stands_out) return std::nullopt;
    const Toleranced out = as_read(order, *measured.stands_out);
    return Toleranced{half.value - out.value, half.plus_minus + out.plus_minus};
}

// The datum turns a closed length at the outer crosses into the telescoping one.
std::optional<Toleranced> closed_read(const WorkOrder& order, const MeasuredAfterCut& measured)
{
    if (!measured.closed) return std::nullopt;
    const Toleranced closed = as_read(order, measured.closed->length);
    Reaches reaches;
    if (measured.closed->reference.value_or(order.reading.reference) == Reference::outer_cross)
        for (const End end : both_ends) reaches[end].spacing = order.reading.shaft.spacing[end];
    return Toleranced{in_line(closed.value, reaches), closed.plus_minus};
}

// The most that the shoulder which this half meets can truly be above the one of the cut: it is stated within its ±, and the path was
// no longer than the shaft when closed.
Length shoulder_doubt(const WorkOrder& order, Tube tube)
{
    const Shaft& shaft = order.reading.shaft;
    const Toleranced& half = *shaft.halves[tube].length;
    Length most = shaft.closed.value + shaft.closed.plus_minus - half.value + half.plus_minus;
    if (const auto& stated = shaft.halves[other(tube)].shoulder) {
        const Length by_itself = stated->value + stated->plus_minus;
        most = order.stops->agreement == ClosedAgreement::agrees ? std::min(most, by_itself) : std::max(most, by_itself);
    }
    return std::max(Length(), most - order.stops->shoulder[other(tube)]);
}

// Where the closed length was not read it follows from the halves, and doubts none of them.
Toleranced closed_by_halves(const Shaft& shaft)
{
    Length closed, most;
    for (const Tube tube : both_tubes) {
        const Toleranced& half = *shaft.halves[tube].length;
        const Toleranced& shoulder = *shaft.halves[other(tube)].shoulder;
        closed = std::max(closed, half.value + shoulder.value);
        most = std::max(most, half.value + half.plus_minus + shoulder.value + shoulder.plus_minus);
    }
    return {closed, most - closed};
}

Length tube_after(const Judged& judged, Tube tube, const SawnAgain& again) { return judged.now.half[tube].value - again.tube[tube]; }
Length guard_after(const Judged& judged, Tube tube, const SawnAgain& again) { return judged.now.guard[tube]->value - again.guard[tube]; }

// Of those that the sheet knows; as soon as one lies outside, each is as it reads.
bool guards_within(const Judged& judged, const SawnAgain& again)
{
    return std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        return !judged.now.guard[tube] || !expected_guard(judged.order, tube, Length()) || guard_within(judged, tube, again);
    });
}

// Whether the guards are what the sheet's checks were made of.
bool guards_as_the_sheet(const Judged& judged, const SawnAgain& again)
{
    return std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return !judged.now.guard[tube] || guard_within(judged, tube, again); });
}

void put_guards(Shaft& shaft, CutPlan& plan, const Judged& judged, const SawnAgain& again)
{
    const bool within = guards_within(judged, again);
    for (const Tube tube : both_tubes) {
        auto& guard = shaft.halves[tube].guard;
        if (judged.now.guard[tube] && !(within && plan.guard_half[tube])) {
            plan.guard_half[tube] = guard_after(judged, tube, again);
            if (guard) plan.guard_cut[tube] = std::max(Length(), guard->value - *plan.guard_half[tube]);
            guard = judged.now.guard[tube];
        }
        if (guard) guard->value = *plan.guard_half[tube];
    }
}

// The shaft as it reads now, before it is sawn again.
Shaft shaft_now(const Judged& judged)
{
    Shaft shaft = judged.order.reading.shaft;
    for (const Tube tube : both_tubes) {
        Half& half = shaft.halves[tube];
        half.length = judged.now.half[tube];
        half.measured = true;
        half.shoulder = Toleranced{judged.order.stops->shoulder[tube], shoulder_doubt(judged.order, other(tube))};
        half.shoulder_place.reset();
        half.cut_to.reset();  // what an earlier sheet kept is no measure of what was sawn since
    }
    shaft.closed = judged.now.closed.value_or(closed_by_halves(shaft));
    return shaft;
}

ShaftReading reading_of(const WorkOrder& order, const Shaft& shaft)
{
    ShaftReading reading = order.reading;
    const Length shift = shaft.closed.value - order.reading.shaft.closed.value;
    reading.shaft = shaft;
    reading.closed = {reading.closed.value + shift, shaft.closed.plus_minus};
    for (const Reference reference : {Reference::outer_cross, Reference::inner_cross}) reading.closed_at[reference] += shift;
    return reading;
}

CutPlan plan_now(const Judged& judged, const SawnAgain& again)
{
    const Stops stops = stops_now(judged);
    CutPlan plan;
    plan.cut = again.tube;
    plan.left_as_cut = judged.order.cut->plan.left_as_cut;
    plan.guard_cut = judged.order.cut->plan.guard_cut;
    plan.guard_half = judged.order.cut->plan.guard_half;
    for (const Tube tube : both_tubes) plan.half[tube] = tube_after(judged, tube, again);
    plan.closed = std::max(plan.half[Tube::inner] + stops.shoulder[Tube::outer], plan.half[Tube::outer] + stops.shoulder[Tube::inner]);
    return plan;
}

// What of the halves as they were before is gone: a tube within its ± lost what the sheet says.
CutPlan plan_from_before(const Judged& judged, const SawnAgain& again)
{
    CutPlan plan = judged.order.cut->plan;
    for (const Tube tube : both_tubes) {
        if (half_within(judged, tube, again)) continue;
        plan.half[tube] = tube_after(judged, tube, again);
        plan.cut[tube] = std::max(Length(), judged.order.reading.shaft.halves[tube].length->value - plan.half[tube]);
    }
    return plan;
}

class Checks {
public:
    Checks(const Judged& judged, const SawnAgain& again) : judged_(judged), again_(again), series_(series_of(judged.job.shaft, judged.catalogue).shaft) {}

    std::vector<Check> all() const
    {
        return made({shaft_now(judged_), stops_now(judged_), plan_now(judged_, again_)}, run_checks);
    }
    Check from_before(RunCheck run) const { return made({before().shaft, before().stops, plan_from_before(judged_, again_)}, run); }
    Check of_guards(RunCheck run) const { return made(before(), run); }

private:
    struct Looked {
        Shaft shaft;
        std::optional<Stops> stops;
        std::optional<CutPlan> plan;
    };
    Looked before() const { return {judged_.order.reading.shaft, judged_.order.stops, judged_.order.cut->plan}; }

    template <class Result>
    Result made(Looked at, Result (*run)(const CheckInput&)) const
    {
        const WorkOrder& order = judged_.order;
        put_guards(at.shaft, *at.plan, judged_, again_);
        const ShaftReading reading = reading_of(order, at.shaft);
        return run(CheckInput{judged_.job, judged_.catalogue, series_, order.limits, order.saw, reading, order.fits, order.fit, at.stops, at.plan});
    }

    const Judged& judged_;
    const SawnAgain& again_;
    const Series* series_;
};

void put(std::vector<Check>& checks, Check check) { checks[static_cast<std::size_t>(check.id)] = std::move(check); }

}  // namespace

bool SawnAgain::any() const
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube one) { return tube[one] != Length() || guard[one] != Length(); });
}

LengthsNow lengths_now(const WorkOrder& order, const MeasuredAfterCut& measured)
{
    LengthsNow now;
    for (const Tube tube : both_tubes) {
        const HalfAfterCut& half = measured.halves[tube];
        now.half_read[tube] = half.length.has_value();
        now.half[tube] = half.length ? as_read(order, *half.length) : as_kept(expected_half(order, tube, Length()));
        if (!order.reading.shaft.halves[tube].guard_used) continue;
        now.guard[tube] = guard_read(order, half, now.half[tube]);
        now.guard_read[tube] = now.guard[tube].has_value();
        const auto kept = expected_guard(order, tube, Length());
        if (!now.guard[tube] && kept) now.guard[tube] = as_kept(*kept);
    }
    now.closed = closed_read(order, measured);
    return now;
}

bool half_within(const Judged& judged, Tube tube, const SawnAgain& again)
{
    return expected_half(judged.order, tube, judged.now.half[tube].plus_minus).holds(tube_after(judged, tube, again));
}

bool guard_within(const Judged& judged, Tube tube, const SawnAgain& again)
{
    const auto& guard = judged.now.guard[tube];
    const auto expected = guard ? expected_guard(judged.order, tube, guard->plus_minus) : std::nullopt;
    return expected && expected->holds(guard_after(judged, tube, again));
}

bool tubes_within(const Judged& judged, const SawnAgain& again) { return half_within(judged, Tube::inner, again) && half_within(judged, Tube::outer, again); }

Stops stops_now(const Judged& judged) { return *stops_of(shaft_now(judged)); }

Expected closed_by_readings(const Stops& stops)
{
    const StopPath &inner = stops.path[Tube::inner], &outer = stops.path[Tube::outer];
    return {stops.modelled, std::max(inner.closed - inner.tolerance, outer.closed - outer.tolerance), std::max(inner.closed + inner.tolerance, outer.closed + outer.tolerance)};
}

std::optional<ClosedFinding> closed_finding(const Judged& judged)
{
    if (!judged.now.closed) return std::nullopt;
    const Toleranced& read = *judged.now.closed;
    Expected expected = expected_closed(judged.order, read.plus_minus);
    if (!tubes_within(judged, {})) expected = closed_by_readings(stops_now(judged));
    const ClosedAfterCutIs is = clearly_above(read.value, expected.most)    ? ClosedAfterCutIs::longer
                                : clearly_below(read.value, expected.least) ? ClosedAfterCutIs::shorter
                                                                            : ClosedAfterCutIs::as_expected;
    return ClosedFinding{is, read.value, expected};
}

CutPlan shaft_as_cut(const Judged& judged, const SawnAgain& again)
{
    CutPlan plan = tubes_within(judged, again) ? judged.order.cut->plan : plan_now(judged, again);
    Shaft shaft = judged.order.reading.shaft;
    put_guards(shaft, plan, judged, again);
    return plan;
}

std::vector<Check> checks_as_cut(const Judged& judged, const SawnAgain& again, bool may_lack_clearance)
{
    const Checks made(judged, again);
    const bool as_the_sheet = tubes_within(judged, again);
    const auto closed = again.any() ? std::nullopt : closed_finding(judged);
    const bool closes_late = closed && closed->is == ClosedAfterCutIs::longer;
    std::vector<Check> checks = as_the_sheet ? judged.order.checks : made.all();
    if (as_the_sheet && closes_late) put(checks, check_of(made.all(), CheckId::closing_clearance));
    if (!as_the_sheet)
        for (const RunCheck run : {check_tube_left, check_shortening_allowed}) put(checks, made.from_before(run));
    if (as_the_sheet && !guards_as_the_sheet(judged, again))
        for (const RunCheck run : {check_guard_clearance, check_guard_cover, check_guard_setback}) put(checks, made.of_guards(run));
    Check& clearance = checks[static_cast<std::size_t>(CheckId::closing_clearance)];
    if (may_lack_clearance && clearance.result == CheckResult::fail && clearly_above(Length::micrometres(clearance.worst.value_or(0)), Length())) clearance.result = CheckResult::warn;
    return checks;
}

}  // namespace shaftcut
