#include "support/plain_method.hpp"

#include <algorithm>
#include <cmath>

namespace shaftcut::test::plain {
namespace {

Maybe um(const std::optional<Length>& length) { return length ? Maybe(length->um()) : std::nullopt; }

PlainHalf read_half(const PlainShaft& shaft, std::size_t which)
{
    const Tube tube = static_cast<Tube>(which);
    const JobHalf& from = shaft.job->shaft.halves[tube];
    PlainHalf half;
    const std::size_t inner_end = static_cast<std::size_t>(shaft.job->shaft.inner_tube);
    half.end = which == 0 ? inner_end : 1 - inner_end;
    half.length = figure_of(from.length, *shaft.workshop);
    half.guard = figure_of(from.guard, *shaft.workshop);
    if (from.lubrication_hole) half.hole = from.lubrication_hole->length.um();
    for (const Feature feature : from.features) {
        half.coated |= feature == Feature::coated;
        half.end_stop |= feature == Feature::end_stop;
        half.one_chain |= feature == Feature::one_chain_guard;
    }
    if (shaft.series) {
        const SeriesHalf& known = shaft.series->halves[tube];
        half.shoulder = um(known.shoulder);
        half.guard_shoulder = um(known.guard_shoulder);
        half.seat = um(known.seat);
        half.least_tube = um(known.least_tube);
        half.forbidden = known.shortening_forbidden || shaft.series->shortening_forbidden;
    }
    if (from.shoulder) half.shoulder = from.shoulder->length.um();
    return half;
}

// a = C − s_B and b = C − s_A where they were not measured; derived halves carry C's tolerance.
void derive_halves(PlainShaft& shaft)
{
    for (std::size_t which = 0; which < 2; ++which)
        if (!shaft.halves[which].length && shaft.halves[1 - which].shoulder)
            shaft.halves[which].length = Figure{shaft.closed.value - *shaft.halves[1 - which].shoulder, shaft.closed.plus_minus};
}

bool guards_stop_it(const PlainShaft& shaft)
{
    const PlainHalf& a = shaft.halves[0];
    const PlainHalf& b = shaft.halves[1];
    if (!a.guard || !b.guard || !a.guard_shoulder || !b.guard_shoulder) return false;
    const Um guards = std::max(a.guard->value + *b.guard_shoulder, b.guard->value + *a.guard_shoulder);
    return std::abs(guards - shaft.closed.value) < shaft.closed.plus_minus + a.guard->plus_minus + b.guard->plus_minus + 10;
}

void find_shoulders(PlainShaft& shaft)
{
    const PlainHalf& a = shaft.halves[0];
    const PlainHalf& b = shaft.halves[1];
    if (!a.length || !b.length) return;
    const Um c = shaft.closed.value;
    const Um greatest_a = c - b.length->value;  // the greatest s_A that C leaves
    const Um greatest_b = c - a.length->value;
    const Um allowance = shaft.closed.plus_minus + a.length->plus_minus + b.length->plus_minus;
    if (!a.shoulder && !b.shoulder) {
        shaft.shoulders = {greatest_a, greatest_b};
        return;
    }
    if (!a.shoulder || !b.shoulder) {
        // The unknown one is what the closed length leaves; the known one cannot be more than that.
        const Um known_a = a.shoulder.value_or(greatest_a);
        const Um known_b = b.shoulder.value_or(greatest_b);
        shaft.shoulders = {std::min(known_a, greatest_a), std::min(known_b, greatest_b)};
        shaft.shoulders_disagree = std::max(known_a - greatest_a, known_b - greatest_b) >= allowance + 10;
        return;
    }
    const Um model = std::max(a.length->value + *b.shoulder, b.length->value + *a.shoulder);
    if (std::abs(c - model) < allowance + 10) {
        shaft.shoulders = {*a.shoulder + c - model, *b.shoulder + c - model};
        return;
    }
    shaft.shoulders_disagree = true;
    if (c < model) shaft.shoulders = {std::min(*a.shoulder, greatest_a), std::min(*b.shoulder, greatest_b)};
    else if (guards_stop_it(shaft)) shaft.shoulders = {*a.shoulder, *b.shoulder};
    else shaft.shoulders = {greatest_a, greatest_b};
}

// The saw's step, in half micrometres so that sixteenths of an inch are whole.
std::int64_t half_micrometre_step(const Saw& saw, Units units)
{
    if (units == Units::mm) return 2 * saw.step.um();
    std::int64_t step = 3175;
    while (step < 2 * saw.step.um()) step += 3175;
    return step;
}

Um up(Um need, const Saw& saw, Units units)
{
    const std::int64_t step = half_micrometre_step(saw, units);
    std::int64_t steps = 2 * need / step;
    if (2 * need - steps * step >= 20) ++steps;
    return (steps * step + 1) / 2;
}

// In inches the least cut too is a whole number of steps, so that paper can say it.
Um cut_for(Um need, const Saw& saw, Units units)
{
    if (need < 10) return 0;
    const Um least = units == Units::in ? up(saw.least_cut.um(), saw, units) : saw.least_cut.um();
    return std::max(up(need, saw, units), least);
}

void make_cut(PlainShaft& shaft, Units units)
{
    if (!shaft.shoulders || !shaft.deciding.shortest) return;
    const Saw& saw = shaft.workshop->saw;
    const Um room = shaft.deciding.shortest->value - shaft.clearance;
    PlainCut plan;
    std::array<Um, 2> reach{};
    for (std::size_t i = 0; i < 2; ++i) {
        const Um half = shaft.halves[i].length->value;
        const Um faces = (*shaft.shoulders)[1 - i];
        plan.cut[i] = cut_for(half + faces - room, saw, units);
        plan.half[i] = half - plan.cut[i];
        reach[i] = plan.half[i] + faces;
    }
    plan.closed = std::max(reach[0], reach[1]);
    for (std::size_t i = 0; i < 2; ++i) {
        plan.sets_closed[i] = plan.closed - reach[i] < 10;
        plan.guard_cut[i] = plan.cut[i];
        if (!shaft.halves[i].guard) continue;
        const Um guard = shaft.halves[i].guard->value;
        const Maybe faces = shaft.halves[1 - i].guard_shoulder;
        plan.guard_cut[i] = cut_for(std::max(plan.cut[i], faces ? guard + *faces - room : guard - plan.half[i]), saw, units);
        plan.guard_half[i] = guard - plan.guard_cut[i];
    }
    shaft.cut = plan;
}

}  // namespace

PlainAnswer answer(const Job& job, const Catalogue& catalogue, const Workshop& workshop, Units units, const std::vector<std::optional<PlainMachine>>& machines)
{
    PlainAnswer result;
    PlainShaft& shaft = result.shaft;
    shaft.job = &job;
    shaft.catalogue = &catalogue;
    shaft.workshop = &workshop;
    for (const Series& series : catalogue.series)
        if (job.shaft.series == series.name) shaft.series = &series;
    shaft.closed = figure_of(job.shaft.closed, workshop);
    if (closed_from_outer_cross(shaft)) shaft.closed.value -= spacing(shaft, 0) + spacing(shaft, 1);
    shaft.halves = {read_half(shaft, 0), read_half(shaft, 1)};
    derive_halves(shaft);
    for (std::size_t i = 0; i < job.fits.size(); ++i) shaft.fits.push_back(read_fit(job.fits[i], shaft, i < machines.size() ? machines[i] : std::nullopt));
    shaft.deciding = decide(shaft.fits);
    shaft.clearance = limit_of(shaft, Limit::closing_clearance).numerator;
    find_shoulders(shaft);
    make_cut(shaft, units);
    result.checks = plain_checks(shaft);
    bool failed = !shaft.cut;
    for (const PlainCheck& check : result.checks) failed |= check.result == CheckResult::fail;
    if (failed) return result;
    const auto& cut = shaft.cut->cut;
    const auto& guard = shaft.cut->guard_cut;
    result.verdict = cut[0] + cut[1] + guard[0] + guard[1] == 0 ? Verdict::fits : Verdict::cut;
    return result;
}

}  // namespace shaftcut::test::plain
