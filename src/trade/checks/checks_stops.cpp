// What halves, shoulders and the closed length say of each other, and readings that belong elsewhere.
#include <algorithm>

#include "checks/consistency_parts.hpp"
#include "data/slip_limits.hpp"

namespace shaftcut {
namespace {

std::string plain(const CheckInput& input, Length length) { return figure_with_unit(length, input.units, Toward::nearest, 3); }

// A shoulder that was found by a stop depth is named by what was measured.
std::string shoulder_name(const CheckInput& input, Tube tube)
{
    const JobHalf& job = input.job.shaft.halves[tube];
    const std::string by = !job.shoulder && job.stop_depth ? " (half − stop-depth)" : "";
    return std::string(to_word(tube)) + " half's shoulder" + by;
}

std::string shoulder_text(const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    return text(input, {shoulder_name(input, tube), half.shoulder->value, half.shoulder_place.value_or(Place())});
}

void find_impossible_stop(Findings& found, const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    if (!half.shoulder || !clearly_below(half.shoulder->value, least_stop(half.seat, tube))) return;
    found.contradictions.push_back("Contradiction: " + shoulder_text(input, tube) + " is less than " + plain(input, least_stop(half.seat, tube)) +
                                   ", the least that it can be: no tube stops that near to the cross. Measure it again.");
}

void find_unlike_series(Findings& found, const CheckInput& input, Tube tube)
{
    const Half& half = input.reading.shaft.halves[tube];
    if (!differs_from_series(half) || (input.stops && path_to(*input.stops, tube).confirmed)) return;
    const Length apart = half.shoulder->value - *half.series_shoulder;
    found.contradictions.push_back("Contradiction: " + shoulder_text(input, tube) + " is " + plain(input, apart < Length() ? -apart : apart) + (apart < Length() ? " less" : " more") +
                                   " than its series' " + plain(input, *half.series_shoulder) +
                                   ", and the closed length does not bear it out. Measure it again; if the half truly is of another kind, leave the series out and state both halves' shoulders.");
}

void doubt_lone_stop(Findings& found, const CheckInput& input, Tube tube)
{
    if (!input.stops || !rests_alone(input.reading.shaft, *input.stops, tube)) return;
    found.doubts.push_back("The " + shoulder_text(input, tube) + " rests on this one figure: no series states it and the closed length does not bear it out. Confirm it before sawing.");
}

std::string disagreement(const CheckInput& input)
{
    return "The shaft closes at " + plain(input, input.reading.shaft.closed.value) + (input.reading.has_wide_angle ? " between its inner crosses" : "") +
           ", but its halves should give " + plain(input, input.stops->modelled) + ": ";
}

std::string ask_for_other_half(const CheckInput& input)
{
    const auto& halves = input.reading.shaft.halves;
    for (const Tube tube : both_tubes)
        if (!halves[tube].measured) return std::string(" Measure the ") + to_word(tube) + " half too.";
    return "";
}

void doubt_closed_length(Findings& found, const CheckInput& input)
{
    if (!input.stops || input.stops->agreement == ClosedAgreement::agrees) return;
    const std::string greater = " Each tube is cut as if it were the one that stops.";
    std::string says = disagreement(input);
    if (input.stops->guards_stop)
        says += "the guards stop it before its tubes do. Slide the guards back and measure the closed length of the tubes alone: less may come off.";
    else if (input.stops->agreement == ClosedAgreement::longer)
        says += "the shaft is altered, a figure is wrong, or something stops it early. Clean it, look for what stops it, measure again.";
    else
        says += "it closes further than they allow. The shaft is altered or a figure is wrong: measure again.";
    found.doubts.push_back(says + greater + ask_for_other_half(input));
}

bool within(Length difference, Length allowance) { return !clearly_above(difference, allowance) && !clearly_below(difference, -allowance); }

const char* cross_word(Reference reference) { return reference == Reference::outer_cross ? "outer cross" : "inner cross"; }
Reference other_cross(Reference reference) { return reference == Reference::outer_cross ? Reference::inner_cross : Reference::outer_cross; }

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
    const Reference meant = input.reading.reference;
    found.contradictions.push_back("Contradiction: " + text(input, {"closed length", input.reading.closed.value, input.reading.shaft.closed_place}) + ", taken from the " + cross_word(meant) +
                                   ", disagrees with the halves by the spacing of the wide-angle joint: it seems to be measured from the " + cross_word(other_cross(meant)) +
                                   ". State the cross it was measured from; if the shaft truly closes so, state each half's own shoulder as measured.");
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
    const std::string both = text(input, half_figure(input, Tube::inner)) + " and " + text(input, half_figure(input, Tube::outer));
    if (stops.agreement == ClosedAgreement::shorter)
        found.contradictions.push_back("Contradiction: " + both + " seem to be exchanged: the other way round they give the closed length, as stated they do not. Measure both again.");
    else
        found.doubts.push_back("The halves are perhaps exchanged: " + both + " give the closed length the other way round. The cut is safe in either reading; measure both again.");
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
    const std::string figure = text(input, {"closed length", input.reading.closed.value, input.reading.shaft.closed_place});
    if (std::any_of(sums.begin(), sums.end(), [&](Length sum) { return is_listed(input, read_elsewhere(input, closed, sum)); })) {
        const Reference meant = input.reading.reference;
        found.contradictions.push_back("Contradiction: " + figure + ", taken from the " + cross_word(meant) + ", is none of its series' closed lengths, but read from the " +
                                       cross_word(other_cross(meant)) + " it is one. State the cross it was measured from, or measure both halves.");
    } else {
        found.doubts.push_back("Nothing confirms the " + figure + (input.series->closed_lengths.empty() ? ": its series lists no closed lengths." : ": it is none of its series' closed lengths.") +
                               " Is the shaft uncut? Measure both halves.");
    }
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
