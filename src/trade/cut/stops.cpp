#include "shaftcut/trade/cut/stops.hpp"

#include <algorithm>

#include "data/slip_limits.hpp"

namespace shaftcut {
namespace {

Length absolute(Length length) { return length < Length() ? -length : length; }

bool within(Length difference, Length allowance) { return !clearly_above(absolute(difference), allowance); }

// Whether the guards' own closed length max(g_A + r_B, g_B + r_A) is C within their tolerances.
bool guards_stop_at(const Shaft& shaft)
{
    std::optional<Length> guards_closed;
    Length allowance = shaft.closed.plus_minus;
    for (const Tube tube : both_tubes) {
        const auto& guard = shaft.halves[tube].guard;
        const auto& face = shaft.halves[other(tube)].guard_shoulder;
        if (!guard || !face) return false;
        guards_closed = std::max(guards_closed.value_or(guard->value + *face), guard->value + *face);
        allowance += guard->plus_minus;
    }
    return within(shaft.closed.value - *guards_closed, allowance);
}

StopPath path_of(const Shaft& shaft, Tube tube)
{
    const Half& half = shaft.halves[tube];
    const auto& shoulder = shaft.halves[other(tube)].shoulder;
    StopPath path{shaft.closed.value, shaft.closed.plus_minus, half.measured && shoulder};
    if (half.measured) path.tolerance += half.length->plus_minus;
    if (!path.known) return path;
    path.closed = half.length->value + shoulder->value;
    path.tolerance += shoulder->plus_minus;
    path.confirmed = within(path.closed - shaft.closed.value, path.tolerance);
    path.below = clearly_below(path.closed, shaft.closed.value - path.tolerance);
    return path;
}

// M: of the measured halves' paths the greater; with none measured C itself. Of equal paths the one known better is held to.
void model(Stops& stops, const Shaft& shaft)
{
    bool any = false;
    stops.modelled = shaft.closed.value;
    stops.allowance = shaft.closed.plus_minus;
    for (const Tube tube : both_tubes) {
        const StopPath& path = stops.path[tube];
        if (!shaft.halves[tube].measured || (any && path.closed < stops.modelled)) continue;
        if (any && path.closed == stops.modelled && path.tolerance >= stops.allowance) continue;
        any = true;
        stops.modelled = path.closed;
        stops.allowance = path.tolerance;
    }
    for (const Tube tube : both_tubes) stops.in_model[tube] = shaft.halves[tube].measured && stops.path[tube].closed == stops.modelled;
}

// The shoulder as the cut uses it. Of a half that follows from C by this shoulder nothing else can be said.
Length reconciled(const Stops& stops, const Shaft& shaft, Tube shoulder_of)
{
    const Half& half = shaft.halves[other(shoulder_of)];
    const auto& stated = shaft.halves[shoulder_of].shoulder;
    const Length left = shaft.closed.value - half.length->value;
    if (!stated || !half.measured) return left;
    if (stops.agreement == ClosedAgreement::agrees) return stated->value + shaft.closed.value - stops.modelled;
    return std::max(stated->value, left);
}

}  // namespace

std::optional<Stops> stops_of(const Shaft& shaft)
{
    const auto& halves = shaft.halves;
    if (!halves[Tube::inner].length || !halves[Tube::outer].length) return std::nullopt;
    Stops stops;
    for (const Tube tube : both_tubes) stops.path[tube] = path_of(shaft, tube);
    model(stops, shaft);
    const Length difference = shaft.closed.value - stops.modelled;
    if (clearly_above(difference, stops.allowance)) stops.agreement = ClosedAgreement::longer;
    if (clearly_below(difference, -stops.allowance)) stops.agreement = ClosedAgreement::shorter;
    stops.guards_stop = stops.agreement == ClosedAgreement::longer && guards_stop_at(shaft);
    for (const Tube tube : both_tubes) stops.shoulder[tube] = reconciled(stops, shaft, tube);
    return stops;
}

bool differs_from_series(const Half& half)
{
    if (!half.shoulder_place || !half.series_shoulder) return false;
    const Length usual = usual_difference_from(*half.series_shoulder);
    return !within(half.shoulder->value - *half.series_shoulder, usual);
}

bool rests_alone(const Shaft& shaft, const Stops& stops, Tube shoulder_of)
{
    const Half& half = shaft.halves[shoulder_of];
    return half.shoulder_place && !half.series_shoulder && !path_to(stops, shoulder_of).confirmed;
}

bool stops_by_measures(const Half& half) { return half.identified && half.shoulder && !half.shoulder_place; }

bool stop_to_confirm(const Shaft& shaft, const Stops& stops, Tube shoulder_of)
{
    const Half& half = shaft.halves[shoulder_of];
    if (rests_alone(shaft, stops, shoulder_of) || stops_by_measures(half)) return true;
    return half.of_other_series && half.shoulder && !path_to(stops, shoulder_of).confirmed;
}

bool half_to_confirm(const Shaft& shaft, const Stops& stops, Tube tube, Length guard_setback)
{
    const Half& half = shaft.halves[tube];
    if (!half.measured || !stops.path[tube].below) return false;
    if (!half.guard) return true;
    const Length stands_out = half.length->value - half.guard->value;
    const Length allowance = half.length->plus_minus + half.guard->plus_minus;
    return clearly_below(stands_out, -allowance) || clearly_above(stands_out, guard_setback + allowance);
}

}  // namespace shaftcut
