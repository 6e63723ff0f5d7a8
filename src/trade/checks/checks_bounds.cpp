// Lengths that no shaft has: a slip of the pen, or of the unit.
#include "checks/consistency_parts.hpp"
#include "data/bounds.hpp"

namespace shaftcut {
namespace {

// Which unit the figure was perhaps read in, where that alone explains it. `beyond`: what the stated figure holds beside the length
// that is bounded, a joint's spacing or yokes, which no slip of the measured figure changes.
std::string ask_for_unit(Length stated, Length beyond, const Bounds& bounds)
{
    const auto as_if = [&](std::int64_t times, std::int64_t over) { return Length::micrometres(stated.um() * times / over); };
    const Length were_inches = as_if(254, 10), were_millimetres = as_if(10, 254);
    const auto asked = [&](Length length, const char* unit) {
        return std::string(": is its unit right? If it was measured in ") + unit + " it is " + figure_with_unit(length, Units::mm, Toward::nearest, 1);
    };
    if (bounds.hold(were_inches - beyond)) return asked(were_inches, "inches (in)");
    if (bounds.hold(were_millimetres - beyond)) return asked(were_millimetres, "millimetres (mm)");
    return "";
}

void hold(Findings& found, const CheckInput& input, const Figure& figure, Length stated, const Bounds& bounds)
{
    if (bounds.hold(figure.length)) return;
    const auto limit = [&](Length length) { return figure_with_unit(length, input.units, Toward::nearest, 1); };
    found.contradictions.push_back("No shaft has such a length: " + text(input, figure) + " is not within " + limit(bounds.least) + " to " + limit(bounds.greatest) +
                                   ask_for_unit(stated, stated - figure.length, bounds) + ".");
}

void hold(Findings& found, const CheckInput& input, const Figure& figure, const Bounds& bounds) { hold(found, input, figure, figure.length, bounds); }

void hold_halves(Findings& found, const CheckInput& input)
{
    for (const Tube tube : both_tubes) {
        const Half& half = input.reading.shaft.halves[tube];
        const std::string name = to_word(tube);
        if (half.length) hold(found, input, half_figure(input, tube), half_bounds);
        if (half.guard) hold(found, input, {name + " guard half", half.guard->value, half.guard_place.value_or(Place())}, guard_half_bounds);
        if (half.shoulder_place) hold(found, input, {name + " half's shoulder", half.shoulder->value, *half.shoulder_place}, shoulder_bounds);
        // One that follows from the closed length has no figure of its own to be wrong: closed length or half is.
        const Half& met = input.reading.shaft.halves[other(tube)];
        if (!half.shoulder && met.measured)
            hold(found, input, {name + " half's shoulder, closed length less " + to_word(other(tube)) + " half,", input.reading.shaft.closed.value - met.length->value}, shoulder_bounds);
    }
}

void hold_fit(Findings& found, const CheckInput& input, const FitReading& reading)
{
    const Fit& fit = reading.fit;
    if (fit.shortest) hold(found, input, {"shortest", fit.shortest->value, fit.shortest_place}, reading.shortest.value_or(*fit.shortest).value, telescoping_bounds);
    for (const Range range : all_ranges)
        if (const auto& longest = fit.longest[range])
            hold(found, input, {std::string("longest ") + to_word(range), longest->value, fit.longest_places[range]}, reading.longest[range].value_or(*longest).value, telescoping_bounds);
}

}  // namespace

void find_out_of_bounds(Findings& found, const CheckInput& input)
{
    const ShaftReading& reading = input.reading;
    if (!input.new_shaft || input.plan) hold(found, input, closed_figure(input), reading.closed.value, telescoping_bounds);
    for (const End end : both_ends)
        if (reading.shaft.spacing[end] != Length())
            hold(found, input, {std::string("wide-angle spacing of the ") + to_word(end) + " end", reading.shaft.spacing[end]}, spacing_bounds);
    hold_halves(found, input);
    for (const FitReading& fit : input.fits) hold_fit(found, input, fit);
}

}  // namespace shaftcut
