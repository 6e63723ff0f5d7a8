#include "support/plain/plain_method.hpp"

#include <algorithm>
#include <cmath>

namespace shaftcut::test::plain {
namespace {

// a = C − s_B and b = C − s_A where they were not measured; derived halves carry C's tolerance and the shoulder's.
void derive_halves(PlainShaft& shaft)
{
    for (std::size_t which = 0; which < 2; ++which) {
        const MaybeFigure& face = shaft.halves[1 - which].shoulder;
        if (!shaft.halves[which].measured && face)
            shaft.halves[which].length = Figure{shaft.closed.value - face->value, shaft.closed.plus_minus + face->plus_minus};
    }
}

void read_closed(PlainShaft& shaft)
{
    const JobShaft& from = shaft.job->shaft;
    const auto usual = usual_from_outer_cross(shaft.series, shaft.series ? shaft.series->shape : from.shape.value_or(Shape::other));
    shaft.from_outer_cross = from.closed_reference ? *from.closed_reference == Reference::outer_cross : usual.value_or(false);
    shaft.closed_as_stated = shaft.closed = figure_of(from.closed, *shaft.workshop);
    if (shaft.from_outer_cross) shaft.closed.value -= spacing(shaft, 0) + spacing(shaft, 1);
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

void cut_guard(PlainCut& plan, const PlainShaft& shaft, std::size_t i, Um room, Units units)
{
    if (!shaft.halves[i].guard_used) return;
    plan.guard_cut[i] = plan.cut[i];
    if (!shaft.halves[i].guard) return;
    const Um guard = shaft.halves[i].guard->value;
    const Maybe faces = shaft.halves[1 - i].guard_shoulder;
    // Beside a tube that stays as it is a guard may reach as far as the tubes do.
    const Um beyond = faces ? guard + *faces - (plan.spared[i] && plan.closed > room ? plan.closed : room) : guard - plan.half[i];
    plan.guard_cut[i] = cut_for(std::max(plan.cut[i], beyond), shaft.workshop->saw, units);
    if (plan.spared[i] && !below(saw_and_two_tapes(shaft, shaft.halves[i].guard->plus_minus), beyond)) plan.guard_cut[i] = 0;
    plan.guard_half[i] = guard - *plan.guard_cut[i];
}

// Sawn by an earlier sheet, and no longer now than saw and tapes explain.
bool spared(const PlainShaft& shaft, std::size_t i)
{
    const PlainHalf& half = shaft.halves[i];
    return half.cut_to && !below(*half.cut_to + saw_and_two_tapes(shaft, half.length->plus_minus), half.length->value);
}

void make_cut(PlainShaft& shaft, Units units)
{
    if (!shaft.stops.shoulders || !shaft.deciding.shortest) return;
    const Um room = *shaft.deciding.shortest - shaft.clearance;
    PlainCut plan;
    std::array<Um, 2> reach{};
    for (std::size_t i = 0; i < 2; ++i) {
        const Um half = shaft.halves[i].length->value;
        const Um faces = (*shaft.stops.shoulders)[1 - i];
        plan.spared[i] = spared(shaft, i);
        plan.cut[i] = plan.spared[i] ? 0 : cut_for(half + faces - room, shaft.workshop->saw, units);
        plan.half[i] = half - plan.cut[i];
        reach[i] = plan.half[i] + faces;
    }
    plan.closed = std::max(reach[0], reach[1]);
    for (std::size_t i = 0; i < 2; ++i) cut_guard(plan, shaft, i, room, units);
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
    for (std::size_t i = 0; i < 2; ++i) shaft.halves[i] = read_half(shaft, i);
    read_closed(shaft);
    derive_halves(shaft);
    for (std::size_t i = 0; i < job.fits.size(); ++i) shaft.fits.push_back(read_fit(job.fits[i], shaft, i < machines.size() ? machines[i] : std::nullopt));
    shaft.deciding = decide(shaft.fits);
    shaft.clearance = length_limit(shaft, Limit::closing_clearance);
    shaft.stops = find_stops(shaft);
    make_cut(shaft, units);
    result.checks = plain_checks(shaft);
    bool failed = !shaft.cut;
    for (const PlainCheck& check : result.checks) failed |= check.result == CheckResult::fail;
    if (failed) return result;
    const auto& cut = shaft.cut->cut;
    const auto& guard = shaft.cut->guard_cut;
    result.verdict = cut[0] + cut[1] + guard[0].value_or(0) + guard[1].value_or(0) == 0 ? Verdict::fits : Verdict::cut;
    result.confirm = confirmations(shaft);
    return result;
}

}  // namespace shaftcut::test::plain
