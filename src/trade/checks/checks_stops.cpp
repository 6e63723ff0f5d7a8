// What halves, shoulders and the closed length say of each other, and readings that belong elsewhere.
#include <algorithm>

#include "checks/consistency_parts.hpp"
#include "data/slip_limits.hpp"

namespace shaftcut {
namespace {

// A shoulder that was found by a stop depth is named by what was measured.
StatedFigure shoulder_figure(const CheckInput& input, Tube tube)
{
    const JobHalf& job = input.job.shaft.halves[tube];
    const Half& half = input.reading.shaft.halves[tube];
    const FigureOf of = !job.shoulder && job.stop_depth ? FigureOf::shoulder_by_stop_depth : FigureOf::shoulder;
    return {of, half.shoulder->value, half.shoulder_place.value_or(Place()), tube};
}

void find_impossible_stop(Findings& found, const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    if (!half.shoulder || !clearly_below(half.shoulder->value, least_stop(half.seat, tube))) return;
    found.contradictions.emplace_back(StopImpossible{shoulder_figure(input, tube), least_stop(half.seat, tube)});
}

void find_unlike_series(Findings& found, const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    if (!differs_from_series(half) || (input.stops && path_to(*input.stops, tube).confirmed)) return;
    found.contradictions.emplace_back(StopUnlikeSeries{shoulder_figure(input, tube), *half.series_shoulder});
}

void doubt_lone_stop(Findings& found, const CheckInput& input, Tube tube)
{
    if (!input.stops || !rests_alone(input.reading.shaft, *input.stops, tube)) return;
    found.doubts.emplace_back(StopRestsAlone{shoulder_figure(input, tube)});
}

void doubt_closed_length(Findings& found, const CheckInput& input)
{
    if (!input.stops || input.stops->agreement == ClosedAgreement::agrees) return;
    const ShaftReading& reading = input.reading;
    ClosedDisagrees disagrees{reading.shaft.closed.value, input.stops->modelled, reading.has_wide_angle, input.stops->guards_stop, input.stops->agreement, {}};
    for (const Tube tube : both_tubes)
        if (!disagrees.to_measure && !reading.shaft.halves[tube].measured) disagrees.to_measure = tube;
    found.doubts.emplace_back(disagrees);
}

bool within(Length difference, Length allowance) { return !clearly_above(difference, allowance) && !clearly_below(difference, -allowance); }

// C as it is if it was read at the other cross: read as from the outer one the spacings were taken off for nothing.
Length read_elsewhere(const CheckInput& input, Length closed, Length spacings)
{
    return input.reading.reference == Reference::outer_cross ? closed + spacings : closed - spacings;
}

void find_other_cross(Findings& found, const CheckInput& input)
{
    const Stops& stops = *input.stops;
    const Length closed = input.reading.shaft.closed.value;
    const auto sums = spacing_sums(input.reading.shaft.spacing);
    const auto fits = [&](Length sum) { return within(read_elsewhere(input, closed, sum) - stops.modelled, stops.allowance); };
    if (stops.agreement == ClosedAgreement::agrees || std::none_of(sums.begin(), sums.end(), fits)) return;
    found.contradictions.emplace_back(ReadAtOtherCross{closed_as_stated(input), input.reading.reference});
}

// M and its ± with the two half lengths exchanged; nothing where a half was not measured or a shoulder is not stated.
std::optional<Toleranced> exchanged_model(const Shaft& shaft)
{
    std::optional<Toleranced> model;
    for (const Tube tube : both_tubes) {
        const Half& half = shaft.halves[tube];
        if (!half.measured || !half.shoulder) return std::nullopt;
        const Toleranced path{half.length->value + half.shoulder->value, shaft.closed.plus_minus + half.length->plus_minus + half.shoulder->plus_minus};
        if (!model || path.value > model->value || (path.value == model->value && path.plus_minus < model->plus_minus)) model = path;
    }
    return model;
}

void find_exchanged_halves(Findings& found, const CheckInput& input)
{
    const Stops& stops = *input.stops;
    if (stops.agreement == ClosedAgreement::agrees) return;
    const auto exchanged = exchanged_model(input.reading.shaft);
    if (!exchanged || !within(input.reading.shaft.closed.value - exchanged->value, exchanged->plus_minus)) return;
    const bool refuses = stops.agreement == ClosedAgreement::shorter;
    (refuses ? found.contradictions : found.doubts).emplace_back(HalvesExchanged{half_figure(input, Tube::inner), half_figure(input, Tube::outer), refuses});
}

// The closed length as the series lists its own.
Length at_series_reference(const CheckInput& input)
{
    const Series& series = *input.series;
    return input.reading.closed_at[series.wide_angle_reference.value_or(usual_reference(series.shape).value_or(input.reading.reference))];
}

bool is_listed(const CheckInput& input, Length closed)
{
    const auto& listed = input.series->closed_lengths;
    return std::any_of(listed.begin(), listed.end(), [&](Length one) { return within(closed - one, input.reading.shaft.closed.plus_minus + beside_a_listed_length); });
}

// An uncut shaft, of which neither half was measured, closes at one of its series' lengths.
void find_unlisted_closed_length(Findings& found, const CheckInput& input)
{
    const auto& halves = input.reading.shaft.halves;
    if (input.new_shaft || !input.series || halves[Tube::inner].measured || halves[Tube::outer].measured) return;
    if (input.series->closed_lengths.empty() && !input.reading.has_wide_angle) return;
    const Length closed = at_series_reference(input);
    if (is_listed(input, closed)) return;
    const auto sums = spacing_sums(input.reading.shaft.spacing);
    if (std::any_of(sums.begin(), sums.end(), [&](Length sum) { return is_listed(input, read_elsewhere(input, closed, sum)); }))
        found.contradictions.emplace_back(ListedAtOtherCross{closed_as_stated(input), input.reading.reference});
    else found.doubts.emplace_back(ClosedNotListed{closed_as_stated(input), !input.series->closed_lengths.empty()});
}

}  // namespace

void compare_stops(Findings& found, const CheckInput& input)
{
    for (const Tube tube : both_tubes) {
        find_impossible_stop(found, input, tube);
        find_unlike_series(found, input, tube);
        doubt_lone_stop(found, input, tube);
    }
    doubt_closed_length(found, input);
}

void find_readings_elsewhere(Findings& found, const CheckInput& input)
{
    find_unlisted_closed_length(found, input);
    if (!input.stops) return;
    find_other_cross(found, input);
    find_exchanged_halves(found, input);
}

}  // namespace shaftcut
