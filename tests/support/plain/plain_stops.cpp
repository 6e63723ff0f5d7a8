// Where the tubes stop, in the second implementation: what halves and shoulders say beside the measured closed length.
#include <algorithm>
#include <cstdlib>

#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

std::optional<PlainPath> stated_path(const PlainShaft& shaft, std::size_t half)
{
    const PlainHalf& mine = shaft.halves[half];
    const MaybeFigure& face = shaft.halves[1 - half].shoulder;
    if (!mine.measured || !face) return std::nullopt;
    return PlainPath{mine.length->value + face->value, shaft.closed.plus_minus + mine.length->plus_minus + face->plus_minus};
}

// A measured half whose stop is not stated: its shoulder is what the closed length leaves, so its path is that length.
bool path_is_closed(const PlainShaft& shaft, std::size_t half)
{
    return shaft.halves[half].measured && !shaft.halves[1 - half].shoulder;
}

void find_model(PlainStops& stops, const PlainShaft& shaft)
{
    for (std::size_t half = 0; half < 2; ++half) {
        if (path_is_closed(shaft, half)) stops.model = std::max(stops.model.value_or(shaft.closed.value), shaft.closed.value);
        if (stops.paths[half]) stops.model = std::max(stops.model.value_or(stops.paths[half]->value), stops.paths[half]->value);
    }
    if (!stops.model) return;
    Maybe tolerance;
    for (std::size_t half = 0; half < 2; ++half) {
        stops.sets_model[half] = stops.paths[half] && stops.paths[half]->value == *stops.model;
        if (stops.sets_model[half]) tolerance = std::min(tolerance.value_or(stops.paths[half]->tolerance), stops.paths[half]->tolerance);
    }
    stops.tolerance = tolerance.value_or(0);
    stops.apart = !within(stops.tolerance, shaft.closed.value - *stops.model);
}

// The shoulder that this half's tube runs against.
Um shoulder_for(const PlainStops& stops, const PlainShaft& shaft, std::size_t half)
{
    const Um left = shaft.closed.value - shaft.halves[half].length->value;
    if (!stops.paths[half]) return left;  // its shoulder, or the half itself, is derived from the closed length
    const Um stated = shaft.halves[1 - half].shoulder->value;
    return stops.apart ? std::max(stated, left) : stated + shaft.closed.value - *stops.model;
}

}  // namespace

bool within(Um tolerance, Um apart) { return std::abs(apart) < tolerance + 10; }

PlainStops find_stops(const PlainShaft& shaft)
{
    PlainStops stops;
    if (!shaft.halves[0].length || !shaft.halves[1].length) return stops;  // refused for want of a half
    stops.paths = {stated_path(shaft, 0), stated_path(shaft, 1)};
    find_model(stops, shaft);
    stops.shoulders = {shoulder_for(stops, shaft, 1), shoulder_for(stops, shaft, 0)};
    return stops;
}

bool confirmed(const PlainShaft& shaft, std::size_t shoulder)
{
    const auto& path = shaft.stops.paths[1 - shoulder];
    return path && within(path->tolerance, shaft.closed.value - path->value);
}

bool asks_for_stop(const PlainShaft& shaft, std::size_t shoulder)
{
    const PlainHalf& half = shaft.halves[shoulder];
    if (half.shoulder && !half.shoulder_of_job && shaft.job->shaft.measures) return true;
    if (!half.shoulder || confirmed(shaft, shoulder)) return false;
    return half.of_another || (half.shoulder_of_job && !half.series_shoulder);
}

bool asks_for_half(const PlainShaft& shaft, std::size_t half)
{
    const auto& path = shaft.stops.paths[half];
    if (!path || shaft.closed.value - path->value < path->tolerance + 10) return false;
    const PlainHalf& mine = shaft.halves[half];
    if (!mine.guard) return true;
    const Um both = mine.length->plus_minus + mine.guard->plus_minus;
    const Um setback = mine.length->value - mine.guard->value;
    return below(setback, -both) || below(length_limit(shaft, Limit::guard_setback) + both, setback);
}

}  // namespace shaftcut::test::plain
