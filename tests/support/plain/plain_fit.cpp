// What a fit says, telescoping, in the second implementation.
#include <algorithm>
#include <cmath>

#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

// What lies between a measured length's start and the inner cross at one end.
struct Ends {
    bool known = true;
    std::array<long double, 2> yoke{}, wide{};
};

const Series* series_at(const PlainShaft& shaft, std::size_t end)
{
    return shaft.halves[0].end == end ? shaft.halves[0].series : shaft.halves[1].series;
}

Maybe cross_to_groove(const PlainShaft& shaft, std::size_t end)
{
    const JobEnd& job_end = shaft.job->shaft.ends[static_cast<End>(end)];
    if (job_end.cross_to_groove) return job_end.cross_to_groove->um();
    const Series* series = series_at(shaft, end);
    if (!series || !job_end.connection) return std::nullopt;
    for (const Yoke& yoke : series->yokes)
        if (yoke.connection == *job_end.connection && (!yoke.joint || *yoke.joint == job_end.joint) && yoke.cross_to_groove)
            return yoke.cross_to_groove->um();
    return std::nullopt;
}

Ends ends_of(const JobFit& fit, const PlainShaft& shaft)
{
    Ends ends;
    const bool outer = fit.reference ? *fit.reference == Reference::outer_cross : shaft.from_outer_cross;
    for (std::size_t end = 0; end < 2; ++end) {
        if (fit.between == Between::crosses) {
            if (outer) ends.wide[end] = static_cast<long double>(spacing(shaft, end));
            continue;
        }
        const Maybe groove = cross_to_groove(shaft, end);
        if (!groove) ends.known = false;
        ends.yoke[end] = static_cast<long double>(groove.value_or(0));
        ends.wide[end] = static_cast<long double>(spacing(shaft, end));
    }
    return ends;
}

// |eT·u + wT·m(u,t) + L·t + wI·m(v,t) + eI·v| = D with t = (1, 0), u above it and v below it. Its tolerance grows by dL/dD.
Figure bent_length(Figure distance, const Ends& ends, const std::array<Maybe, 3>& tractor, const std::array<Maybe, 3>& implement, std::size_t range)
{
    const long double pi = 3.141592653589793238462643383279502884L;
    const long double above = static_cast<long double>(tractor[range].value_or(0)) * pi / 180000;
    const long double below = static_cast<long double>(implement[range].value_or(0)) * pi / 180000;
    const long double x = ends.yoke[0] * std::cos(above) + ends.wide[0] * std::cos(above / 2) + ends.wide[1] * std::cos(below / 2) +
                          ends.yoke[1] * std::cos(below);
    const long double y = ends.yoke[0] * std::sin(above) + ends.wide[0] * std::sin(above / 2) - ends.wide[1] * std::sin(below / 2) -
                          ends.yoke[1] * std::sin(below);
    const long double d = static_cast<long double>(distance.value);
    const long double along = std::sqrt(std::max(0.0L, d * d - y * y));
    if (along <= 0) return {std::llround(-x), distance.plus_minus};
    return {std::llround(along - x), std::llround(static_cast<long double>(distance.plus_minus) * std::abs(d) / along)};
}

// The least that a range left out can be: it holds the ranges within it.
MaybeFigure at_least(const PlainFit& fit, std::size_t range)
{
    for (std::size_t within = range + 1; within-- > 0;)
        if (fit.longest[within]) return fit.longest[within];
    return std::nullopt;
}

std::optional<PlainReach> reach_of_all(const std::vector<PlainFit>& fits, std::size_t range)
{
    const auto states = [&](const PlainFit& fit) { return fit.longest[range].has_value(); };
    if (std::none_of(fits.begin(), fits.end(), states)) return std::nullopt;
    Maybe longest, at_most;
    for (const PlainFit& fit : fits) {
        const MaybeFigure one = at_least(fit, range);
        if (!one) continue;
        longest = std::max(longest.value_or(one->value), one->value);
        at_most = std::max(at_most.value_or(one->value), one->value + one->plus_minus);
    }
    return PlainReach{*longest, *at_most, !std::all_of(fits.begin(), fits.end(), states)};
}

// The greatest that the fits state; one that leaves it out stands at no less than at its lesser ranges.
void decide_angle(PlainDeciding& all, const std::vector<PlainFit>& fits, std::size_t end, std::size_t range)
{
    const auto states = [&](const PlainFit& fit) { return fit.angle[end][range].has_value(); };
    if (std::none_of(fits.begin(), fits.end(), states)) return;
    for (const PlainFit& fit : fits) {
        Maybe angle;
        for (std::size_t within = range + 1; within-- > 0 && !angle;) angle = fit.angle[end][within];
        if (angle) all.angle[end][range] = std::max(all.angle[end][range].value_or(*angle), *angle);
    }
    all.angle_left_out[end][range] = !std::all_of(fits.begin(), fits.end(), states);
}

}  // namespace

bool below(Um a, Um b) { return b - a >= 10; }

Figure figure_of(const Measurement& measured, const Workshop& workshop)
{
    return {measured.length.um(), measured.plus_minus.value_or(workshop.measuring_plus_minus).um()};
}

MaybeFigure figure_of(const std::optional<Measurement>& measured, const Workshop& workshop)
{
    return measured ? MaybeFigure(figure_of(*measured, workshop)) : std::nullopt;
}

bool is_wide(const PlainShaft& shaft, std::size_t end)
{
    return shaft.job->shaft.ends[static_cast<End>(end)].joint == JointKind::wide_angle;
}

Um spacing(const PlainShaft& shaft, std::size_t end)
{
    if (!is_wide(shaft, end)) return 0;
    const JobEnd& job_end = shaft.job->shaft.ends[static_cast<End>(end)];
    if (job_end.spacing) return job_end.spacing->um();
    const Series* series = series_at(shaft, end);
    if (series && series->wide_angle) return series->wide_angle->spacing.um();
    return shaft.job->shaft.spacing->um();
}

std::optional<bool> usual_from_outer_cross(const Series* series, Shape shape)
{
    if (series && series->wide_angle_reference) return *series->wide_angle_reference == Reference::outer_cross;
    if (shape == Shape::lemon || shape == Shape::star) return true;
    return shape == Shape::triangular ? std::optional(false) : std::nullopt;
}

PlainFit read_fit(const JobFit& from, const PlainShaft& shaft, const std::optional<PlainMachine>& machine)
{
    PlainFit fit;
    for (std::size_t end = 0; end < 2; ++end)
        for (std::size_t range = 0; range < 3; ++range) {
            const auto& angle = from.angles[static_cast<End>(end)][static_cast<Range>(range)];
            if (angle) fit.angle[end][range] = angle->mdeg();
            else if (machine) fit.angle[end][range] = machine->angle[end][range];
            fit.angle_measured[end][range] = angle.has_value();
        }
    fit.machine = machine;
    const Ends ends = ends_of(from, shaft);
    if (!ends.known) return fit;
    const Um inline_sum = static_cast<Um>(ends.yoke[0] + ends.yoke[1] + ends.wide[0] + ends.wide[1]);
    fit.shortest_measured = from.shortest.has_value();
    fit.shortest = fit.shortest_measured ? figure_of(from.shortest, *shaft.workshop) : machine ? MaybeFigure(machine->shortest) : std::nullopt;
    if (fit.shortest_measured) fit.shortest->value -= inline_sum;
    for (std::size_t range = 0; range < 3; ++range) {
        fit.longest[range] = figure_of(from.longest[static_cast<Range>(range)], *shaft.workshop);
        fit.longest_measured[range] = fit.longest[range].has_value();
        if (!fit.longest[range] && machine) fit.longest[range] = machine->longest[range];
        if (!fit.longest_measured[range]) continue;
        fit.longest[range] = bent_length(*fit.longest[range], ends, fit.angle[0], fit.angle[1], range);
        for (std::size_t end = 0; end < 2; ++end)
            if ((ends.yoke[end] != 0 || ends.wide[end] != 0) && !fit.angle[end][range]) fit.unbent = true;
    }
    return fit;
}

PlainDeciding decide(const std::vector<PlainFit>& fits)
{
    PlainDeciding all;
    bool readable = true;
    for (const PlainFit& fit : fits) {
        if (!fit.shortest) {
            readable = false;
            continue;
        }
        const Um at_worst = fit.shortest->value - fit.shortest->plus_minus;
        all.shortest_at_worst = all.shortest ? std::min(all.shortest_at_worst, at_worst) : at_worst;
        all.shortest = std::min(all.shortest.value_or(fit.shortest->value), fit.shortest->value);
    }
    if (!readable) all.shortest.reset();
    for (std::size_t range = 0; range < 3; ++range) {
        all.longest[range] = reach_of_all(fits, range);
        for (std::size_t end = 0; end < 2; ++end) decide_angle(all, fits, end, range);
    }
    return all;
}

bool fit_contradicts(const PlainFit& fit)
{
    if (fit.shortest) {
        if (fit.shortest->value < 10) return true;
        for (const MaybeFigure& longest : fit.longest)
            if (longest && below(longest->value, fit.shortest->value)) return true;
    }
    const auto& [working, turning, standing] = fit.longest;
    const auto& measured = fit.longest_measured;  // a machine's ranges need not contain each other
    if (measured[0] && measured[1] && working && turning && below(turning->value, working->value)) return true;
    if (measured[2] && measured[1] && standing && turning && below(standing->value, turning->value)) return true;
    for (std::size_t end = 0; end < 2; ++end)
        if (fit.angle_measured[end][0] && fit.angle_measured[end][1] && *fit.angle[end][0] > *fit.angle[end][1]) return true;
    return false;
}

bool disputed(const PlainFit& fit)
{
    if (!fit.machine) return false;
    const auto apart = [](const Figure& measured, const Figure& reached) { return below(measured.plus_minus, std::abs(measured.value - reached.value)); };
    if (fit.shortest_measured && fit.shortest && apart(*fit.shortest, fit.machine->shortest)) return true;
    for (std::size_t range = 0; range < 3; ++range)
        if (fit.longest_measured[range] && fit.machine->longest[range] && apart(*fit.longest[range], *fit.machine->longest[range])) return true;
    return false;
}

bool machine_ripples(const PlainFit& fit, const Job& job)
{
    if (!fit.machine || !fit.machine->has_working_range) return false;
    for (std::size_t end = 0; end < 2; ++end)
        if (job.shaft.ends[static_cast<End>(end)].joint == JointKind::standard && fit.angle_measured[end][0]) return false;
    return true;
}

}  // namespace shaftcut::test::plain
