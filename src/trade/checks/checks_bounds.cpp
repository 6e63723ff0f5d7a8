// Lengths that no shaft has: a slip of the pen, or of the unit.
#include "checks/consistency_parts.hpp"
#include "data/bounds.hpp"

namespace shaftcut {
namespace {

// `stated` may hold more than the length that is bounded, a joint's spacing or yokes, which no slip of the measured figure changes.
void hold(Findings& found, const StatedFigure& figure, Length stated, const Bounds& bounds)
{
    if (bounds.hold(figure.length)) return;
    const auto as_if = [&](std::int64_t times, std::int64_t over) { return Length::micrometres(stated.um() * times / over); };
    const Length beyond = stated - figure.length, were_inches = as_if(254, 10), were_millimetres = as_if(10, 254);
    OutOfBounds out{figure, bounds.least, bounds.greatest, {}, {}};
    if (bounds.hold(were_inches - beyond)) out.if_inches = were_inches;
    else if (bounds.hold(were_millimetres - beyond)) out.if_millimetres = were_millimetres;
    found.contradictions.emplace_back(out);
}

void hold(Findings& found, const StatedFigure& figure, const Bounds& bounds) { hold(found, figure, figure.length, bounds); }

void hold_halves(Findings& found, const CheckInput& input)
{
    for (const Tube tube : both_tubes) {
        const Half& half = input.reading.shaft.halves[tube];
        if (half.length) hold(found, half_figure(input, tube), half_bounds);
        if (half.guard) hold(found, guard_figure(half, tube, Place()), guard_half_bounds);
        if (half.shoulder_place) hold(found, {FigureOf::shoulder, half.shoulder->value, *half.shoulder_place, tube}, shoulder_bounds);
        // One that follows from the closed length has no figure of its own to be wrong: closed length or half is.
        const Half& met = input.reading.shaft.halves[other(tube)];
        if (!half.shoulder && met.measured)
            hold(found, {FigureOf::shoulder_by_closed, input.reading.shaft.closed.value - met.length->value, {}, tube}, shoulder_bounds);
    }
}

void hold_fit(Findings& found, const FitReading& reading)
{
    const Fit& fit = reading.fit;
    if (fit.shortest) hold(found, {FigureOf::shortest, fit.shortest->value, fit.shortest_place}, reading.shortest.value_or(*fit.shortest).value, telescoping_bounds);
    for (const Range range : all_ranges)
        if (const auto& longest = fit.longest[range])
            hold(found, longest_figure(fit, range), reading.longest[range].value_or(*longest).value, telescoping_bounds);
}

}  // namespace

void find_out_of_bounds(Findings& found, const CheckInput& input)
{
    const ShaftReading& reading = input.reading;
    if (!input.new_shaft || input.plan) hold(found, closed_figure(input), reading.closed.value, telescoping_bounds);
    for (const End end : both_ends)
        if (reading.shaft.spacing[end] != Length()) {
            StatedFigure spacing{FigureOf::spacing, reading.shaft.spacing[end], {}};
            spacing.end = end;
            hold(found, spacing, spacing_bounds);
        }
    hold_halves(found, input);
    for (const FitReading& fit : input.fits) hold_fit(found, fit);
}

}  // namespace shaftcut
