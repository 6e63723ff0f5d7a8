#include "shaftcut/trade/advice.hpp"

#include <algorithm>

#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

bool failed(const std::vector<Check>& checks, CheckId id)
{
    return checks[static_cast<std::size_t>(id)].result == CheckResult::fail;
}

// The checks that other lengths could mend.
constexpr std::array length_checks{CheckId::closing_clearance, CheckId::overlap_working, CheckId::overlap_turning,
                                   CheckId::overlap_standing,  CheckId::tube_left,       CheckId::shortening_allowed,
                                   CheckId::guard_clearance,   CheckId::guard_cover};

bool any_length_failed(const std::vector<Check>& checks)
{
    return std::any_of(length_checks.begin(), length_checks.end(), [&](CheckId id) { return failed(checks, id); });
}

// Another shaft or other positions, tried by the same rules.
struct Trial {
    bool serves = false;
    bool cuts = false;
};

Trial try_lengths(const CheckInput& input, const Shaft& shaft, const Fit& fit)
{
    ShaftReading reading = input.reading;
    reading.shaft = shaft;
    const std::optional<Stops> stops = stops_of(shaft);
    const auto plan = plan_cut(shaft, stops, fit.shortest, input.limits.length(Limit::closing_clearance), input.saw);
    if (!plan) return {};
    const CheckInput trial{input.job, input.catalogue, input.series, input.limits, input.saw, reading, input.fits, fit, stops, plan, input.units};
    return {!any_length_failed(run_checks(trial)), !nothing_to_cut(*plan)};
}

// "705 mm from the outer cross": a telescoping length at the reference of the closed length.
std::string closed_text(const CheckInput& input, Length telescoping, Toward toward)
{
    const bool outer = input.reading.reference == Reference::outer_cross;
    const Length spacing = input.reading.closed_at[Reference::outer_cross] - input.reading.closed_at[Reference::inner_cross];
    const std::string text = figure_with_unit(outer ? telescoping + spacing : telescoping, input.units, toward, 1);
    if (!input.reading.has_wide_angle) return text + " between crosses";
    return text + (outer ? " from the outer cross" : " from the inner cross");
}

std::string position_text(const CheckInput& input, Length telescoping, Toward toward)
{
    return figure_with_unit(telescoping, input.units, toward, 1) + (input.reading.has_wide_angle ? " between the inner crosses" : " between crosses");
}

// A new shaft of this series, or of this shaft's own stops, whose halves and guards follow from its closed length.
std::optional<Shaft> new_shaft(const CheckInput& input, Length closed)
{
    Shaft shaft = input.reading.shaft;
    shaft.closed = {closed, Length()};
    for (const Tube tube : both_tubes) {
        Half& half = shaft.halves[tube];
        if (input.series) half.shoulder = input.series->halves[tube].shoulder;
        else if (input.stops) half.shoulder = input.stops->shoulder[tube];
        if (!half.shoulder) return std::nullopt;
        half.lubrication_hole.reset();
    }
    const Length setback = input.limits.length(Limit::guard_setback_new);
    for (const Tube tube : both_tubes) {
        Half& half = shaft.halves[tube];
        half.length = Toleranced{closed - *shaft.halves[other(tube)].shoulder, Length()};
        half.measured = false;
        Length guard = half.length->value - setback;
        if (const auto& face = shaft.halves[other(tube)].guard_shoulder) guard = std::min(guard, closed - *face);
        half.guard = Toleranced{guard, Length()};
        if (half.length->value <= Length() || guard <= Length()) return std::nullopt;
    }
    return shaft;
}

constexpr std::int64_t whole_mm = 1000;

// The least whole millimetre in (low, high] for which `serves` holds, given that it holds for all above; nothing where it
// fails at `high`.
template <class Serves>
std::optional<Length> least_serving(Length low, Length high, Serves serves)
{
    std::int64_t below = low.um() / whole_mm;
    std::int64_t serving = high.um() / whole_mm;
    if (serving <= below || !serves(Length::millimetres(serving))) return std::nullopt;
    while (serving - below > 1) {
        const std::int64_t middle = below + (serving - below) / 2;
        (serves(Length::millimetres(middle)) ? serving : below) = middle;
    }
    return Length::millimetres(serving);
}

Length greatest_known(const Fit& fit)
{
    Length greatest = fit.shortest ? fit.shortest->value : Length();
    for (const Range range : all_ranges)
        if (fit.longest[range]) greatest = std::max(greatest, fit.longest[range]->value);
    return greatest;
}

Fit with_shortest(Fit fit, Length shortest)
{
    fit.shortest->value = shortest;
    return fit;
}

std::string longest_served(const CheckInput& input, const Check& check, Range range)
{
    if (check.result != CheckResult::fail || !check.limit || !input.plan) return {};
    const Length greatest = input.plan->half[Tube::inner] + input.plan->half[Tube::outer] - Length::micrometres(*check.limit);
    const std::string start = std::string("With the shortest position as it is, this shaft serves ");
    if (greatest < input.fit.shortest->value) return start + "no longest " + to_word(range) + " length at all.";
    return start + "a longest " + to_word(range) + " length of at most " + position_text(input, greatest, Toward::down) + ".";
}

std::string shortest_served(const CheckInput& input)
{
    const Length asked = input.fit.shortest->value;
    const Length closed_with_clearance = input.reading.shaft.closed.value + input.limits.length(Limit::closing_clearance) + Length::millimetres(1);
    const Length high = std::max(asked, std::max(greatest_known(input.fit), closed_with_clearance));
    const auto least = least_serving(asked, high, [&](Length shortest) {
        return try_lengths(input, input.reading.shaft, with_shortest(input.fit, shortest)).serves;
    });
    if (!least) return "No shortest position makes this shaft serve those longest lengths.";
    if (const auto& turning = input.fit.longest[Range::turning]; turning && *least > turning->value)
        return "No shortest position under the longest turning length makes this shaft serve.";
    return "With the longest lengths as they are, this shaft serves if the shortest position is raised to " +
           position_text(input, *least, Toward::up) + " or more (now " + position_text(input, asked, Toward::nearest) + ").";
}

// Which of the series' own closed lengths serve as they are or after a cut.
std::string series_lengths(const CheckInput& input)
{
    if (!input.series || input.series->closed_lengths.empty()) return {};
    const Length spacing = input.reading.closed_at[Reference::outer_cross] - input.reading.closed_at[Reference::inner_cross];
    const Reference reference = input.series->wide_angle_reference.value_or(usual_reference(input.series->shape).value_or(Reference::inner_cross));
    std::vector<std::string> as_is, after_cut;
    for (const Length closed : input.series->closed_lengths) {
        const auto shaft = new_shaft(input, reference == Reference::outer_cross ? closed - spacing : closed);
        if (!shaft) continue;
        const Trial trial = try_lengths(input, *shaft, input.fit);
        if (trial.serves) (trial.cuts ? after_cut : as_is).push_back(figure_with_unit(closed, input.units));
    }
    const std::string from = !input.reading.has_wide_angle ? "" : reference == Reference::outer_cross ? " (from the outer cross)" : " (from the inner cross)";
    const std::string name = "Of series " + input.series->name + "'s closed lengths" + from;
    if (as_is.empty() && after_cut.empty()) return name + " none serves.";
    std::string text = name;
    if (!as_is.empty()) text += " " + listed(as_is) + " fits as it is";
    if (!after_cut.empty()) text += (as_is.empty() ? " " : "; ") + listed(after_cut) + " serves after a cut";
    return text + ".";
}

// The longest shaft that still closes with its clearance: no other of the same shoulders has more overlap.
std::string shaft_to_order(const CheckInput& input)
{
    const Length clearance = input.limits.length(Limit::closing_clearance);
    const auto built_for = [&](Length shortest) { return new_shaft(input, shortest - clearance); };
    const Length asked = input.fit.shortest->value;
    const auto shaft = built_for(asked);
    if (shaft && try_lengths(input, *shaft, input.fit).serves)
        return "To order: a new shaft of closed length " + closed_text(input, shaft->closed.value, Toward::down) + ", with an inner half of " +
               figure_with_unit(shaft->halves[Tube::inner].length->value, input.units, Toward::down) + " and an outer half of " +
               figure_with_unit(shaft->halves[Tube::outer].length->value, input.units, Toward::down) + ".";
    const std::string none = input.series ? "No shaft of series " + input.series->name + " serves these positions" : "No shaft of these shoulders serves these positions";
    const auto least = least_serving(asked, greatest_known(input.fit), [&](Length shortest) {
        const auto longer = built_for(shortest);
        return longer && try_lengths(input, *longer, with_shortest(input.fit, shortest)).serves;
    });
    if (!least) return none + ", whatever the shortest.";
    return none + "; one could if the shortest position were " + position_text(input, *least, Toward::up) + " or more.";
}

// What other tubes or positions would serve.
void add_length_ways(std::vector<std::string>& ways, const CheckInput& input, const std::vector<Check>& checks)
{
    if (!input.stops) {
        ways.emplace_back("Measure both half lengths, from the inner cross to the tube's free end, and write them into the job.");
        return;
    }
    if (!input.plan || !any_length_failed(checks)) return;
    static constexpr std::array overlaps{CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing};
    for (const Range range : all_ranges)
        ways.push_back(longest_served(input, checks[static_cast<std::size_t>(overlaps[static_cast<std::size_t>(range)])], range));
    ways.push_back(shortest_served(input));
    ways.push_back(series_lengths(input));
    ways.push_back(shaft_to_order(input));
}

void add_fitting_ways(std::vector<std::string>& ways, const CheckInput& input, const std::vector<Check>& checks)
{
    if (failed(checks, CheckId::locking))
        ways.emplace_back("Fit yokes whose locks have no part that stands out (a covered collar, a shrouded push pin, a clamp bolt), or state the year of building if the shaft is older than 2021.");
    if (failed(checks, CheckId::connection))
        for (const End end : both_ends) {
            const JobEnd& job_end = input.job.shaft.ends[end];
            if (job_end.connection && job_end.onto && *job_end.connection != *job_end.onto)
                ways.push_back(std::string("Fit a ") + *job_end.onto + " yoke at the " + to_word(end) + " end; never an adaptor that lets a 1000 min⁻¹ shaft drive a 540 machine.");
        }
    if (failed(checks, CheckId::overload_device)) ways.emplace_back("Turn the shaft round or move the device to the implement end.");
    static constexpr std::array angles{CheckId::joint_angle_tractor, CheckId::joint_angle_implement};
    for (const End end : both_ends) {
        if (!failed(checks, angles[static_cast<std::size_t>(end)])) continue;
        const bool standard = input.job.shaft.ends[end].joint == JointKind::standard;
        ways.push_back(std::string("Limit the turn or the lift so that the ") + to_word(end) + " end's joint stays within its limit" +
                       (standard ? ", or fit a shaft with a wide-angle joint at that end." : "."));
    }
}

}  // namespace

std::vector<std::string> ways_out(const CheckInput& input, const std::vector<Check>& checks)
{
    std::vector<std::string> ways;
    if (!any_failed(checks)) return ways;
    const bool unreadable = std::any_of(input.fits.begin(), input.fits.end(), [](const FitReading& fit) { return !fit.unreadable.empty(); });
    if (unreadable)
        ways.emplace_back("Measure the shortest and longest lengths between the crosses instead of between the grooves.");
    else if (failed(checks, CheckId::consistency))
        ways.emplace_back("Measure the contradicting lengths again: one of each pair is wrong, or they are swapped or in another unit.");
    else
        add_length_ways(ways, input, checks);
    add_fitting_ways(ways, input, checks);
    std::erase(ways, std::string());
    return ways;
}

}  // namespace shaftcut
