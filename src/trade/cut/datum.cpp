#include "shaftcut/trade/cut/datum.hpp"

#include <algorithm>

#include "cut/machine_search.hpp"
#include "hitch/hitch_shaft.hpp"

namespace shaftcut {
namespace {

Toleranced with_tolerance(const Measurement& measured, Length measuring_plus_minus)
{
    return {measured.length, measured.plus_minus.value_or(measuring_plus_minus)};
}

Reference closed_reference(const JobShaft& shaft, const ShaftSeries& series)
{
    if (shaft.closed_reference) return *shaft.closed_reference;
    if (series.shaft && series.shaft->wide_angle_reference) return *series.shaft->wide_angle_reference;
    const auto shape = series.shaft ? std::optional(series.shaft->shape) : shaft.shape;
    // Without a wide-angle joint both references are the same place.
    return (shape ? usual_reference(*shape) : std::nullopt).value_or(Reference::inner_cross);
}

Reaches cross_reaches(const PerEach<End, Length>& spacing, Reference reference)
{
    Reaches reaches;
    if (reference == Reference::outer_cross)
        for (const End end : both_ends) reaches[end].spacing = spacing[end];
    return reaches;
}

void take_from_series(Half& half, Tube tube, JointKind joint, const Series& series, Length measuring_plus_minus)
{
    const SeriesHalf& known = series.halves[tube];
    half.series_shoulder = known.shoulder;
    if (known.shoulder) half.shoulder = Toleranced{*known.shoulder, measuring_plus_minus};
    half.guard_shoulder = known.guard_shoulder;
    half.guard_seat = joint == JointKind::wide_angle ? known.guard_seat_wide_angle : known.guard_seat;
    half.seat = known.seat;
    half.shortening_forbidden = known.shortening_forbidden || series.shortening_forbidden;
}

// The tubes are the shaft's own series', whatever the joint.
void take_from_tubes(Half& half, Tube tube, const Series& series)
{
    half.least_tube = series.halves[tube].least_tube;
    half.shortening_forbidden = half.shortening_forbidden || series.halves[tube].shortening_forbidden || series.shortening_forbidden;
}

// The job's own shoulder, or half length − stop depth.
void take_own_shoulder(Half& half, const JobHalf& job, Length measuring_plus_minus)
{
    if (job.shoulder) {
        half.shoulder = with_tolerance(*job.shoulder, measuring_plus_minus);
        half.shoulder_place = job.shoulder->place;
    } else if (job.stop_depth && half.length) {
        const Toleranced depth = with_tolerance(*job.stop_depth, measuring_plus_minus);
        half.shoulder = Toleranced{half.length->value - depth.value, half.length->plus_minus + depth.plus_minus};
        half.shoulder_place = job.stop_depth->place;
    }
}

void take_measured(Half& half, const JobHalf& job, Length measuring_plus_minus)
{
    if (job.guard && job.guard_use == GuardUse::kept) {
        half.guard = with_tolerance(*job.guard, measuring_plus_minus);
        half.guard_place = job.guard->place;
    }
    if (job.length) {
        half.length = with_tolerance(*job.length, measuring_plus_minus);
        half.length_place = job.length->place;
        half.measured = true;
        half.cut_to = job.cut_to;
    }
    if (job.lubrication_hole) half.lubrication_hole = job.lubrication_hole->length;
    take_own_shoulder(half, job, measuring_plus_minus);
}

// What the job and the series say of a half, before the closed length is asked for a half that was not measured.
Half stated_half(Tube tube, const JobShaft& shaft, const ShaftSeries& series, Length measuring_plus_minus)
{
    const JobHalf& job = shaft.halves[tube];
    Half half;
    half.end = end_of(shaft, tube);
    if (const Series* own = series.half[tube]) take_from_series(half, tube, shaft.ends[half.end].joint, *own, measuring_plus_minus);
    if (series.shaft) take_from_tubes(half, tube, *series.shaft);
    half.of_other_series = job.series.has_value();
    half.identified = shaft.measures.has_value();
    half.guard_used = job.guard_use == GuardUse::kept;
    half.features = job.features;
    take_measured(half, job, measuring_plus_minus);
    return half;
}

// a = C − s_B, b = C − s_A: pushed together, a tube's end stands at the other half's shoulder.
void derive_length(Half& half, const std::optional<Toleranced>& others_shoulder, const Toleranced& closed)
{
    if (half.length || !others_shoulder) return;
    half.length = Toleranced{closed.value - others_shoulder->value, closed.plus_minus + others_shoulder->plus_minus};
}

// e at each end; sets `unreadable` where the series does not say one.
void add_yokes(FitReading& reading, const JobShaft& shaft, const ShaftSeries& series)
{
    for (const End end : both_ends) {
        if (const auto distance = yoke_of(shaft, series, end)) {
            reading.reaches[end].yoke = *distance;
        } else if (!reading.unreadable) {
            reading.unreadable = YokeNotKnown{end, false};
        }
    }
}

// Where the machine cannot be, or has no room for the shaft, that is said and there are no lengths.
std::optional<GeometryReading> read_geometry(FitReading& reading, const Machine& machine, const JobShaft& shaft, const ShaftSeries& series, Length measuring_plus_minus, const MachineSearch& search)
{
    const auto meets = hitch_shaft(shaft, series);
    if (const auto* ends = std::get_if<std::vector<End>>(&meets)) {
        reading.unreadable = YokeNotKnown{ends->front(), true};
        return std::nullopt;
    }
    const HitchShaft& hitched = std::get<HitchShaft>(meets);
    const auto lengths = search(machine, hitched, measuring_plus_minus);
    if (const auto* problems = std::get_if<HitchProblems>(&lengths)) {
        reading.unreadable = GeometryImpossible{problems->front()};
        return std::nullopt;
    }
    return GeometryReading{machine, hitched, std::get<OperatingLengths>(lengths)};
}

void read_angles(FitReading& reading, const JobFit& fit)
{
    reading.angles = reading.fit.angles = fit.angles;
    reading.views = fit.views;
    for (const End end : both_ends)
        for (const Range range : all_ranges)
            if (const ExtremeAngle* computed = reading.computed_angle(end, range)) reading.fit.angles[end][range] = computed->angle;
}

Place machine_place(const Machine& machine)
{
    return std::visit([](const auto& kind) { return kind.place; }, machine);
}

void read_shortest(FitReading& reading, const JobFit& fit, Length measuring_plus_minus)
{
    if (fit.shortest) {
        reading.shortest = with_tolerance(*fit.shortest, measuring_plus_minus);
        reading.fit.shortest_place = fit.shortest->place;
    }
    if (reading.unreadable) return;
    if (reading.shortest) reading.fit.shortest = Toleranced{in_line(reading.shortest->value, reading.reaches), reading.shortest->plus_minus};
    const ExtremeLength* computed = reading.computed_shortest();
    if (!computed) return;
    reading.fit.shortest = Toleranced{computed->length, computed->plus_minus};
    reading.fit.shortest_place = machine_place(reading.geometry->machine);
}

struct LongestSetting {
    const JobShaft& shaft;
    const LimitsInForce& limits;
    Length measuring_plus_minus;
};

// A measured longest, read at the angles that are stated or that the machine reaches.
void convert_longest(FitReading& reading, Range range, const LongestSetting& setting)
{
    const Length distance = reading.longest[range]->value;
    PerEach<End, Angle> at_limits;
    UnbentReading unbent{range, {}, {}};
    for (const End end : both_ends) {
        if (!reading.reaches[end].bends()) continue;
        const auto& known = reading.fit.angles[end][range];
        reading.read_at[range][end] = known.value_or(Angle());
        at_limits[end] = known.value_or(setting.limits.angle(angle_limit(setting.shaft.ends[end].joint, range)));
        if (!known) unbent.ends.push_back(end);
    }
    reading.fit.longest[range] = bent(*reading.longest[range], reading.reaches, reading.read_at[range]);
    if (unbent.ends.empty()) return;
    unbent.at_limit_angles = bent(distance, reading.reaches, at_limits);
    reading.unbent.push_back(unbent);
}

void read_longest(FitReading& reading, Range range, const JobFit& fit, const LongestSetting& setting)
{
    if (fit.longest[range]) {
        reading.longest[range] = with_tolerance(*fit.longest[range], setting.measuring_plus_minus);
        reading.fit.longest_places[range] = fit.longest[range]->place;
    }
    if (reading.unreadable) return;
    if (reading.longest[range]) convert_longest(reading, range, setting);
    const ExtremeLength* computed = reading.computed_longest(range);
    if (!computed) return;
    reading.fit.longest[range] = Toleranced{computed->length, computed->plus_minus};
    reading.fit.longest_places[range] = machine_place(reading.geometry->machine);
}

void compare_extreme(FitReading& reading, std::optional<Range> range, const Toleranced& measured, const ExtremeLength& reached)
{
    if (clearly_below(measured.value, reached.length - measured.plus_minus) || clearly_above(measured.value, reached.length + measured.plus_minus))
        reading.disputed.push_back({range, measured, reached});
}

// A measurement wins over the geometry, but where they part the one or the other is doubtful.
void compare_with_geometry(FitReading& reading)
{
    if (!reading.geometry || reading.unreadable) return;
    const OperatingLengths& lengths = reading.geometry->lengths;
    if (reading.shortest) compare_extreme(reading, std::nullopt, *reading.fit.shortest, lengths.shortest);
    for (const Range range : all_ranges)
        if (reading.longest[range] && lengths.ranges[range]) compare_extreme(reading, range, *reading.fit.longest[range], lengths.ranges[range]->longest);
}

}  // namespace

ShaftReading read_shaft(const JobShaft& shaft, const ShaftSeries& series, Length measuring_plus_minus)
{
    ShaftReading reading;
    reading.closed = with_tolerance(shaft.closed, measuring_plus_minus);
    reading.reference = closed_reference(shaft, series);
    reading.shaft.spacing = spacings(shaft, series);
    reading.has_wide_angle = std::any_of(both_ends.begin(), both_ends.end(),
                                         [&](End end) { return shaft.ends[end].joint == JointKind::wide_angle; });
    reading.shaft.closed = {in_line(reading.closed.value, cross_reaches(reading.shaft.spacing, reading.reference)), reading.closed.plus_minus};
    reading.shaft.closed_place = shaft.closed.place;
    reading.closed_at[Reference::inner_cross] = reading.shaft.closed.value;
    reading.closed_at[Reference::outer_cross] =
        reading.shaft.closed.value + reading.shaft.spacing[End::tractor] + reading.shaft.spacing[End::implement];
    auto& halves = reading.shaft.halves;
    for (const Tube tube : both_tubes) halves[tube] = stated_half(tube, shaft, series, measuring_plus_minus);
    for (const Tube tube : both_tubes) derive_length(halves[tube], halves[other(tube)].shoulder, reading.shaft.closed);
    return reading;
}

const ExtremeLength* FitReading::computed_shortest() const
{
    return geometry && !shortest ? &geometry->lengths.shortest : nullptr;
}

const ExtremeLength* FitReading::computed_longest(Range range) const
{
    return geometry && !longest[range] && geometry->lengths.ranges[range] ? &geometry->lengths.ranges[range]->longest : nullptr;
}

const ExtremeAngle* FitReading::computed_angle(End end, Range range) const
{
    if (!geometry || angles[end][range] || !geometry->lengths.ranges[range]) return nullptr;
    const RangeExtremes& extremes = *geometry->lengths.ranges[range];
    return end == End::tractor ? &extremes.tractor : &extremes.implement;
}

FitReading read_fit(const JobFit& fit, const JobShaft& shaft, const ShaftSeries& series, const ShaftReading& shaft_reading,
                    const LimitsInForce& limits, Length measuring_plus_minus)
{
    return read_fit(fit, shaft, series, shaft_reading, limits, measuring_plus_minus, operating_lengths);
}

FitReading read_fit(const JobFit& fit, const JobShaft& shaft, const ShaftSeries& series, const ShaftReading& shaft_reading,
                    const LimitsInForce& limits, Length measuring_plus_minus, const MachineSearch& search)
{
    FitReading reading;
    reading.tractor = fit.tractor;
    reading.shortest_at = fit.shortest_at;
    reading.longest_at = fit.longest_at;
    reading.between = fit.between;
    reading.reference = fit.reference.value_or(shaft_reading.reference);
    const bool grooves = fit.between == Between::grooves;
    reading.reaches = cross_reaches(shaft_reading.shaft.spacing, grooves ? Reference::outer_cross : reading.reference);
    if (grooves) add_yokes(reading, shaft, series);
    if (fit.machine) reading.geometry = read_geometry(reading, *fit.machine, shaft, series, measuring_plus_minus, search);
    read_angles(reading, fit);
    read_shortest(reading, fit, measuring_plus_minus);
    for (const Range range : all_ranges) read_longest(reading, range, fit, {shaft, limits, measuring_plus_minus});
    compare_with_geometry(reading);
    return reading;
}

}  // namespace shaftcut
