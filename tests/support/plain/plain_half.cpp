// One half as the job, its own series or the shaft's describes it, in the second implementation.
#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

Maybe um(const std::optional<Length>& length) { return length ? Maybe(length->um()) : std::nullopt; }

const Series* named(const Catalogue& catalogue, const std::string& name)
{
    for (const Series& series : catalogue.series)
        if (series.name == name) return &series;
    return nullptr;
}

// The joint's series: what it says counts for the half's shoulder, seat and guard.
void take_joint(PlainHalf& half, const PlainShaft& shaft, Tube tube)
{
    const SeriesHalf& known = half.series->halves[tube];
    half.series_shoulder = um(known.shoulder);
    half.guard_shoulder = um(known.guard_shoulder);
    half.guard_seat = um(is_wide(shaft, half.end) ? known.guard_seat_wide_angle : known.guard_seat);
    half.seat = um(known.seat);
    half.forbidden |= known.shortening_forbidden || half.series->shortening_forbidden;
}

void take_shoulder(PlainHalf& half, const JobHalf& from, const Workshop& workshop)
{
    half.shoulder_of_job = from.shoulder || (from.stop_depth && from.length);
    if (from.shoulder) {
        half.shoulder = figure_of(from.shoulder, workshop);
    } else if (half.shoulder_of_job) {
        const Figure depth = figure_of(*from.stop_depth, workshop);
        half.shoulder = Figure{half.length->value - depth.value, half.length->plus_minus + depth.plus_minus};
    } else if (half.series_shoulder) {
        half.shoulder = Figure{*half.series_shoulder, workshop.measuring_plus_minus.um()};
    }
}

}  // namespace

Um saw_and_two_tapes(const PlainShaft& shaft, Um tape) { return shaft.workshop->saw.plus_minus.um() + 2 * tape; }

PlainHalf read_half(const PlainShaft& shaft, std::size_t which)
{
    const Tube tube = static_cast<Tube>(which);
    const JobHalf& from = shaft.job->shaft.halves[tube];
    PlainHalf half;
    const std::size_t inner_end = static_cast<std::size_t>(shaft.job->shaft.inner_tube);
    half.end = which == 0 ? inner_end : 1 - inner_end;
    half.of_another = from.series.has_value();
    half.series = !half.of_another ? shaft.series : from.series->name ? named(*shaft.catalogue, *from.series->name) : nullptr;
    half.length = figure_of(from.length, *shaft.workshop);
    half.measured = half.length.has_value();
    if (half.measured && from.cut_to) half.cut_to = from.cut_to->um();
    half.guard_used = from.guard_use == GuardUse::kept;
    if (half.guard_used) half.guard = figure_of(from.guard, *shaft.workshop);
    if (from.lubrication_hole) half.hole = from.lubrication_hole->length.um();
    for (const Feature feature : from.features) {
        half.coated |= feature == Feature::coated;
        half.end_stop |= feature == Feature::end_stop;
        half.one_chain |= feature == Feature::one_chain_guard;
    }
    if (shaft.series) {
        half.least_tube = um(shaft.series->halves[tube].least_tube);
        half.forbidden = shaft.series->halves[tube].shortening_forbidden || shaft.series->shortening_forbidden;
    }
    if (half.series) take_joint(half, shaft, tube);
    take_shoulder(half, from, *shaft.workshop);
    return half;
}

}  // namespace shaftcut::test::plain
