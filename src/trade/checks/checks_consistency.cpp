// Whether what was measured can be true at all, and what of it is doubtful.
#include "checks/consistency_parts.hpp"
#include "cut/geometry_words.hpp"

namespace shaftcut {
namespace {

void contradict(Findings& found, const CheckInput& input, const Figure& a, const std::string& relation, const Figure& b)
{
    found.contradictions.push_back("Contradiction: " + text(input, a) + " is " + relation + " " + text(input, b) + ".");
}

Figure longest_figure(const Fit& fit, Range range)
{
    return {std::string("longest ") + to_word(range), fit.longest[range]->value, fit.longest_places[range]};
}

// Ranges of a machine's geometry need not contain each other; positions that were measured do.
void compare_measured_ranges(Findings& found, const CheckInput& input, const FitReading& reading)
{
    const auto both_measured = [&](Range a, Range b) { return reading.longest[a] && reading.longest[b] && reading.fit.longest[a] && reading.fit.longest[b]; };
    const auto compare = [&](Range range, const char* relation, bool contradicts) {
        if (contradicts) contradict(found, input, longest_figure(reading.fit, range), relation, longest_figure(reading.fit, Range::turning));
    };
    const auto& longest = reading.fit.longest;
    if (both_measured(Range::working, Range::turning))
        compare(Range::working, "more than", clearly_above(longest[Range::working]->value, longest[Range::turning]->value));
    if (both_measured(Range::standing, Range::turning))
        compare(Range::standing, "less than", clearly_below(longest[Range::standing]->value, longest[Range::turning]->value));
}

void compare_lengths_of_fit(Findings& found, const CheckInput& input, const FitReading& reading)
{
    const Fit& fit = reading.fit;
    if (!fit.shortest) return;
    const Figure shortest{"shortest", fit.shortest->value, fit.shortest_place};
    for (const Range range : all_ranges)
        if (fit.longest[range] && clearly_below(fit.longest[range]->value, shortest.length))
            contradict(found, input, longest_figure(fit, range), "less than", shortest);
    compare_measured_ranges(found, input, reading);
}

void compare_angles(Findings& found, const JobFit& fit)
{
    for (const End end : both_ends) {
        const auto& working = fit.angles[end][Range::working];
        const auto& turning = fit.angles[end][Range::turning];
        if (!working || !turning || *working <= *turning) continue;
        const std::string place = short_place(fit.angle_places[end]);
        found.contradictions.push_back(std::string("Contradiction: the ") + to_word(end) + " end's working angle " + figure(*working, 3) + "° (" + place +
                                       ") is more than its turning angle " + figure(*turning, 3) + "° (" + place + ").");
    }
}

void compare_halves(Findings& found, const CheckInput& input)
{
    const Shaft& shaft = input.reading.shaft;
    const Figure closed = closed_figure(input);
    for (const Tube tube : both_tubes) {
        const Half& half = shaft.halves[tube];
        if (half.length && !clearly_below(half.length->value, closed.length))
            contradict(found, input, half_figure(input, tube), "not less than", closed);
        if (half.guard && !clearly_below(half.guard->value, closed.length))
            contradict(found, input, {std::string(to_word(tube)) + " guard half", half.guard->value, half.guard_place.value_or(closed.place)},
                       "not less than", closed);
        if (half.length && half.seat && !clearly_above(half.length->value, *half.seat))
            contradict(found, input, half_figure(input, tube), "not more than", {"its seat in the series", *half.seat});
    }
    if (!input.stops) return;
    const Figure inner = half_figure(input, Tube::inner);
    const Figure outer = half_figure(input, Tube::outer);
    if (!clearly_below(closed.length, inner.length + outer.length))
        found.contradictions.push_back("Contradiction: " + text(input, closed) + " is not less than " + text(input, inner) + " and " +
                                       text(input, outer) + " together: the tubes would not meet.");
}

void doubt_unbent(Findings& found, const CheckInput& input, const FitReading& fit)
{
    for (const UnbentReading& unbent : fit.unbent) {
        std::vector<std::string> ends;
        for (const End end : unbent.ends) ends.emplace_back(to_word(end));
        const Length more = unbent.at_limit_angles - fit.fit.longest[unbent.range]->value;
        std::string sentence = std::string("The longest ") + to_word(unbent.range) + " length was read with the joints in line, for no " +
                               to_word(unbent.range) + " angle is given for the " + (ends.size() == 2 ? "tractor and implement ends" : ends[0] + " end") +
                               "; at the limit angle it would be " + figure_with_unit(more, input.units, Toward::up) + " longer";
        if (input.plan) sentence += " and leave an overlap of " + figure_with_unit(input.plan->overlap_at(unbent.at_limit_angles), input.units, Toward::down);
        found.doubts.push_back(sentence + ".");
    }
}

// "The measured shortest, 742 mm between the inner crosses, is 12.1 mm more than ... comes to: 729.9 mm (± 7 mm) turned 60° to the right."
std::string disputed_text(const CheckInput& input, const DisputedLength& one)
{
    const auto text = [&](Length length) { return figure_with_unit(length, input.units, Toward::nearest, 1); };
    const ExtremeLength& reached = one.reached;
    const bool less = one.measured.value < reached.length;
    const Length apart = less ? reached.length - one.measured.value : one.measured.value - reached.length;
    const std::string name = one.range ? std::string("longest ") + to_word(*one.range) : "shortest";
    const std::string where = figure_with_unit(reached.length, input.units, one.range ? longest_rounds : shortest_rounds) + " (± " + figure_with_unit(reached.plus_minus, input.units, Toward::up, 1) + "), " + in_words(reached.at, input.units);
    if (one.goes_past())
        return "The machine's geometry goes past the measured " + name + ", " + text(one.measured.value) + " between the inner crosses, by " + text(apart) +
               ": it comes to " + where + ". Measure in that position; the measurement is used.";
    return "The measured " + name + ", " + text(one.measured.value) + " between the inner crosses, is " + text(apart) + (less ? " less" : " more") +
           " than the machine's geometry can reach: " + where + ". The measurement is used.";
}

// A measurement wins; one that the machine cannot reach, or goes past, makes it or the geometry doubtful.
void doubt_disputed(Findings& found, const CheckInput& input, const FitReading& fit)
{
    for (const DisputedLength& one : fit.disputed) found.doubts.push_back(whose(fit, input.fits.size()) + disputed_text(input, one));
}

void doubt_loosened_limits(Findings& found, const CheckInput& input)
{
    for (const Limit limit : input.limits.loosened()) {
        const LimitInForce& in_force = input.limits[limit];
        found.doubts.push_back(std::string("The job's limit ") + row_of(limit).name + " " + limit_text(limit, in_force.value, input.units) +
                               " is looser than the workshop's " + limit_text(limit, in_force.workshop, input.units) + ".");
    }
}

}  // namespace

std::string short_place(const Place& place)
{
    return "line " + std::to_string(place.line) + ", column " + std::to_string(place.column) + " of " + place.file.substr(place.file.find_last_of('/') + 1);
}

std::string text(const CheckInput& input, const Figure& figure)
{
    const std::string where = figure.place.file.empty() ? "" : " (" + short_place(figure.place) + ")";
    return figure.name + " " + figure_with_unit(figure.length, input.units, Toward::nearest, 3) + where;
}

Figure closed_figure(const CheckInput& input)
{
    return {input.reading.has_wide_angle ? "closed length between the inner crosses" : "closed length", input.reading.shaft.closed.value, input.reading.shaft.closed_place};
}

Figure half_figure(const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    return {std::string(to_word(tube)) + " half", half.length->value, half.length_place.value_or(input.reading.shaft.closed_place)};
}

Check check_consistency(const CheckInput& input)
{
    Findings found;
    for (const FitReading& fit : input.fits) {
        compare_lengths_of_fit(found, input, fit);
        doubt_disputed(found, input, fit);
        if (!fit.unreadable.empty()) found.contradictions.push_back("Refused: " + fit.unreadable + ".");
        doubt_unbent(found, input, fit);
    }
    for (const JobFit& fit : input.job.fits) compare_angles(found, fit);
    find_out_of_bounds(found, input);
    compare_halves(found, input);
    compare_stops(found, input);
    find_readings_elsewhere(found, input);
    doubt_loosened_limits(found, input);
    Check check;
    check.id = CheckId::consistency;
    check.result = !found.contradictions.empty() ? CheckResult::fail : !found.doubts.empty() ? CheckResult::warn : CheckResult::pass;
    check.contradictions = found.contradictions;
    found.contradictions.insert(found.contradictions.end(), found.doubts.begin(), found.doubts.end());
    check.says = found.contradictions.empty() ? "The measured lengths agree with each other." : joined(found.contradictions);
    check.basis = "geometry: no length can be outside what the others leave; lengths compared between the inner crosses";
    return check;
}

}  // namespace shaftcut
