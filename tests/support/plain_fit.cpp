// What a fit says, telescoping, in the second implementation.
#include <algorithm>
#include <cmath>

#include "support/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

// What lies between a measured length's start and the inner cross at one end.
struct Ends {
    bool known = true;
    std::array<long double, 2> yoke{}, wide{};
};

Ends ends_of(const JobFit& fit, const PlainShaft& shaft)
{
    Ends ends;
    const bool outer = fit.reference ? *fit.reference == Reference::outer_cross : closed_from_outer_cross(shaft);
    for (std::size_t end = 0; end < 2; ++end) {
        if (fit.between == Between::crosses) {
            if (outer) ends.wide[end] = static_cast<long double>(spacing(shaft, end));
            continue;
        }
        const JobEnd& job_end = shaft.job->shaft.ends[static_cast<End>(end)];
        Maybe groove;
        if (shaft.series && job_end.connection)
            for (const Yoke& yoke : shaft.series->yokes)
                if (!groove && yoke.connection == *job_end.connection && (!yoke.joint || *yoke.joint == job_end.joint))
                    groove = yoke.cross_to_groove ? Maybe(yoke.cross_to_groove->um()) : std::nullopt;
        if (!groove) ends.known = false;
        ends.yoke[end] = static_cast<long double>(groove.value_or(0));
        ends.wide[end] = static_cast<long double>(spacing(shaft, end));
    }
    return ends;
}

// |eT·u + wT·m(u,t) + L·t + wI·m(v,t) + eI·v| = D with t = (1, 0), u above it and v below it.
Um bent_length(Um distance, const Ends& ends, const std::array<Maybe, 3>& tractor, const std::array<Maybe, 3>& implement, std::size_t range)
{
    const long double pi = 3.141592653589793238462643383279502884L;
    const long double above = static_cast<long double>(tractor[range].value_or(0)) * pi / 180000;
    const long double below = static_cast<long double>(implement[range].value_or(0)) * pi / 180000;
    const long double x = ends.yoke[0] * std::cos(above) + ends.wide[0] * std::cos(above / 2) + ends.wide[1] * std::cos(below / 2) +
                          ends.yoke[1] * std::cos(below);
    const long double y = ends.yoke[0] * std::sin(above) + ends.wide[0] * std::sin(above / 2) - ends.wide[1] * std::sin(below / 2) -
                          ends.yoke[1] * std::sin(below);
    const long double d = static_cast<long double>(distance);
    return std::llround(std::sqrt(std::max(0.0L, d * d - y * y)) - x);
}

// Of two equal lengths the one known less well decides.
bool decides(const Figure& candidate, const Figure& held, int sign)
{
    if (candidate.value != held.value) return sign * candidate.value > sign * held.value;
    return candidate.plus_minus > held.plus_minus;
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
    return shaft.series ? shaft.series->wide_angle->spacing.um() : shaft.job->shaft.spacing->um();
}

bool closed_from_outer_cross(const PlainShaft& shaft)
{
    if (shaft.job->shaft.closed_reference) return *shaft.job->shaft.closed_reference == Reference::outer_cross;
    if (shaft.series && shaft.series->wide_angle_reference) return *shaft.series->wide_angle_reference == Reference::outer_cross;
    const Shape shape = shaft.series ? shaft.series->shape : shaft.job->shaft.shape.value_or(Shape::other);
    return shape == Shape::lemon || shape == Shape::star;
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
        fit.longest[range]->value = bent_length(fit.longest[range]->value, ends, fit.angle[0], fit.angle[1], range);
        for (std::size_t end = 0; end < 2; ++end)
            if ((ends.yoke[end] != 0 || ends.wide[end] != 0) && !fit.angle[end][range]) fit.unbent = true;
    }
    return fit;
}

PlainFit decide(const std::vector<PlainFit>& fits)
{
    PlainFit all;
    bool readable = true;
    for (const PlainFit& fit : fits) {
        if (!fit.shortest) readable = false;
        if (fit.shortest && (!all.shortest || decides(*fit.shortest, *all.shortest, -1))) all.shortest = fit.shortest;
        for (std::size_t range = 0; range < 3; ++range) {
            if (fit.longest[range] && (!all.longest[range] || decides(*fit.longest[range], *all.longest[range], 1)))
                all.longest[range] = fit.longest[range];
            for (std::size_t end = 0; end < 2; ++end)
                if (fit.angle[end][range]) all.angle[end][range] = std::max(all.angle[end][range].value_or(0), *fit.angle[end][range]);
        }
    }
    if (!readable) all.shortest.reset();
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
