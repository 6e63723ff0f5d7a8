// What contradicts what, in the second implementation.
#include <algorithm>
#include <cstdlib>
#include <vector>

#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

constexpr Um mm = 1000;

bool halves_contradict(const PlainShaft& shaft)
{
    const Um c = shaft.closed.value;
    const auto& [a, b] = shaft.halves;
    if (a.length && b.length && !below(c, a.length->value + b.length->value)) return true;
    for (const PlainHalf& half : shaft.halves) {
        if (half.length && !below(half.length->value, c)) return true;
        if (half.guard && !below(half.guard->value, c)) return true;
        if (half.length && half.seat && !below(*half.seat, half.length->value)) return true;
        if (half.cut_to && below(half.length->value + saw_and_two_tapes(shaft, half.length->plus_minus), *half.cut_to)) return true;
        if (half.cut_to && half.seat && !below(*half.seat, *half.cut_to)) return true;
    }
    return false;
}

bool outside(Um length, Um least_mm, Um most_mm) { return length < least_mm * mm || length > most_mm * mm; }

bool telescoping_outside(const PlainShaft& shaft)
{
    bool found = outside(shaft.closed.value, 200, 3500);
    for (const PlainFit& fit : shaft.fits) {
        found |= fit.shortest && outside(fit.shortest->value, 200, 3500);
        for (const MaybeFigure& longest : fit.longest) found |= longest && outside(longest->value, 200, 3500);
    }
    return found;
}

// The half's own shoulder as stated, or what the closed length leaves for it.
Maybe shoulder_as_read(const PlainShaft& shaft, std::size_t which)
{
    if (shaft.halves[which].shoulder) return shaft.halves[which].shoulder->value;
    if (!shaft.halves[1 - which].measured) return std::nullopt;
    return shaft.closed.value - shaft.halves[1 - which].length->value;
}

bool out_of_bounds(const PlainShaft& shaft)
{
    bool found = telescoping_outside(shaft);
    for (std::size_t i = 0; i < 2; ++i) {
        const PlainHalf& half = shaft.halves[i];
        found |= half.length && outside(half.length->value, 100, 2500);
        found |= half.guard && outside(half.guard->value, 50, 2500);
        const Maybe shoulder = shoulder_as_read(shaft, i);
        found |= shoulder && outside(*shoulder, 25, 500);
        found |= is_wide(shaft, i) && outside(spacing(shaft, i), 30, 250);
    }
    return found;
}

// An inner tube may run past the outer tube's own end into its yoke; nothing stops a tube inside the outer tube.
bool shoulder_impossible(const PlainHalf& half, std::size_t which)
{
    if (!half.shoulder) return false;
    const Um least = half.seat ? std::max(25 * mm, *half.seat - (which == 0 ? 0 : 30 * mm)) : 25 * mm;
    return below(half.shoulder->value, least);
}

bool shoulder_unlike_series(const PlainHalf& half)
{
    if (!half.shoulder_of_job || !half.series_shoulder) return false;
    const Um apart = std::abs(half.shoulder->value - *half.series_shoulder);
    return below(std::max(10 * mm, *half.series_shoulder / 10), apart);
}

bool shoulders_fail(const PlainShaft& shaft)
{
    for (std::size_t i = 0; i < 2; ++i) {
        if (shoulder_impossible(shaft.halves[i], i)) return true;
        if (shoulder_unlike_series(shaft.halves[i]) && !confirmed(shaft, i)) return true;
    }
    return false;
}

// The closed lengths of the same shaft had it been measured at the other cross of one end or both.
std::vector<Um> at_other_cross(const PlainShaft& shaft)
{
    const Um tractor = spacing(shaft, 0), implement = spacing(shaft, 1);
    std::vector<Um> found;
    for (const Um w : {tractor, implement, tractor + implement})
        if (w != 0) found.push_back(shaft.closed.value + (shaft.from_outer_cross ? w : -w));
    return found;
}

bool from_other_cross(const PlainShaft& shaft)
{
    if (!shaft.stops.apart) return false;
    const auto others = at_other_cross(shaft);
    return std::any_of(others.begin(), others.end(), [&](Um c) { return within(shaft.stops.tolerance, c - *shaft.stops.model); });
}

// The inner half's length on the outer half's own shoulder and the other way about.
bool halves_exchanged(const PlainShaft& shaft)
{
    if (!shaft.stops.apart || shaft.closed.value > *shaft.stops.model || !shaft.stops.paths[0] || !shaft.stops.paths[1]) return false;
    std::array<PlainPath, 2> exchanged;
    for (std::size_t i = 0; i < 2; ++i) {
        const Figure& half = *shaft.halves[i].length;
        const Figure& face = *shaft.halves[i].shoulder;
        exchanged[i] = {half.value + face.value, shaft.closed.plus_minus + half.plus_minus + face.plus_minus};
    }
    if (exchanged[0].value == exchanged[1].value) exchanged[0].tolerance = std::min(exchanged[0].tolerance, exchanged[1].tolerance);
    const PlainPath& greater = exchanged[0].value >= exchanged[1].value ? exchanged[0] : exchanged[1];
    return within(greater.tolerance, shaft.closed.value - greater.value);
}

enum class Catalogued { not_asked, listed, at_other_cross, nowhere };

// An uncut shaft is one of its series' closed lengths.
Catalogued catalogued(const PlainShaft& shaft)
{
    if (shaft.halves[0].measured || shaft.halves[1].measured) return Catalogued::not_asked;
    const bool wide = is_wide(shaft, 0) || is_wide(shaft, 1);
    if (!shaft.series) return Catalogued::not_asked;
    if (shaft.series->closed_lengths.empty()) return wide ? Catalogued::nowhere : Catalogued::not_asked;
    const bool listed_at_outer = usual_from_outer_cross(shaft.series, shaft.series->shape).value_or(shaft.from_outer_cross);
    const Um more = listed_at_outer ? spacing(shaft, 0) + spacing(shaft, 1) : 0;
    const auto listed = [&](Um closed) {
        return std::any_of(shaft.series->closed_lengths.begin(), shaft.series->closed_lengths.end(),
                           [&](Length one) { return within(shaft.closed.plus_minus + 5 * mm, closed + more - one.um()); });
    };
    if (listed(shaft.closed.value)) return Catalogued::listed;
    const auto others = at_other_cross(shaft);
    return std::any_of(others.begin(), others.end(), listed) ? Catalogued::at_other_cross : Catalogued::nowhere;
}

bool stop_rests_on_one_figure(const PlainShaft& shaft, std::size_t which)
{
    const PlainHalf& half = shaft.halves[which];
    return shaft.stops.shoulders && half.shoulder_of_job && !half.series_shoulder && !confirmed(shaft, which);
}

}  // namespace

PlainCheck consistency(const PlainShaft& shaft)
{
    const Catalogued found = catalogued(shaft);
    bool fails = halves_contradict(shaft) || out_of_bounds(shaft) || shoulders_fail(shaft) || from_other_cross(shaft) || halves_exchanged(shaft) ||
                 found == Catalogued::at_other_cross;
    bool warns = shaft.stops.apart || any_limit_loosened(shaft) || found == Catalogued::nowhere || stop_rests_on_one_figure(shaft, 0) ||
                 stop_rests_on_one_figure(shaft, 1);
    for (const PlainFit& fit : shaft.fits) {
        fails |= fit_contradicts(fit) || !fit.shortest;  // lengths between grooves that cannot be converted refuse the job
        warns |= fit.unbent || disputed(fit);
    }
    return {graded(fails, warns), {}, {}, {}};
}

}  // namespace shaftcut::test::plain
