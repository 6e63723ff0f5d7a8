#include "shaftcut/trade/datum.hpp"

#include <algorithm>
#include <cmath>

#include "shaftcut/trade/hitch_shaft.hpp"

namespace shaftcut {
namespace {

Toleranced with_tolerance(const Measurement& measured, Length measuring_plus_minus)
{
    return {measured.length, measured.plus_minus.value_or(measuring_plus_minus)};
}

Reference closed_reference(const JobShaft& shaft, const Series* series)
{
    if (shaft.closed_reference) return *shaft.closed_reference;
    if (series && series->wide_angle_reference) return *series->wide_angle_reference;
    const auto shape = series ? std::optional(series->shape) : shaft.shape;
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

// What the job and the series say of a half, before the closed length is asked for a half that was not measured.
Half stated_half(Tube tube, const JobShaft& shaft, const Series* series, Length measuring_plus_minus)
{
    const JobHalf& job = shaft.halves[tube];
    Half half;
    half.end = end_of(shaft, tube);
    if (series) {
        const SeriesHalf& known = series->halves[tube];
        half.shoulder = known.shoulder;
        half.guard_shoulder = known.guard_shoulder;
        half.seat = known.seat;
        half.least_tube = known.least_tube;
        half.shortening_forbidden = known.shortening_forbidden || series->shortening_forbidden;
    }
    if (job.shoulder) half.shoulder = job.shoulder->length;
    if (job.lubrication_hole) half.lubrication_hole = job.lubrication_hole->length;
    half.features = job.features;
    if (job.guard) {
        half.guard = with_tolerance(*job.guard, measuring_plus_minus);
        half.guard_place = job.guard->place;
    }
    if (job.length) {
        half.length = with_tolerance(*job.length, measuring_plus_minus);
        half.length_place = job.length->place;
        half.measured = true;
    }
    return half;
}

// a = C − s_B, b = C − s_A: pushed together, a tube's end stands at the other half's shoulder.
void derive_length(Half& half, const std::optional<Length>& others_shoulder, const Toleranced& closed)
{
    if (half.length || !others_shoulder) return;
    half.length = Toleranced{closed.value - *others_shoulder, closed.plus_minus};
}

// e at each end; sets `unreadable` where the series does not say one.
void add_yokes(FitReading& reading, const JobShaft& shaft, const Series* series)
{
    for (const End end : both_ends) {
        if (const auto distance = yoke_of(shaft, series, end)) {
            reading.reaches[end].yoke = *distance;
        } else if (reading.unreadable.empty()) {
            reading.unreadable = std::string("lengths between grooves cannot be used: the distance from cross to locking groove of the ") +
                                 to_word(end) + " end's yoke is not known; measure between crosses";
        }
    }
}

// Where the machine cannot be, or has no room for the shaft, that is said and there are no lengths.
std::optional<GeometryReading> read_geometry(FitReading& reading, const Machine& machine, const JobShaft& shaft, const Series* series, Length measuring_plus_minus)
{
    const auto meets = hitch_shaft(shaft, series);
    if (const auto* ends = std::get_if<std::vector<End>>(&meets)) {
        reading.unreadable = std::string("the machine's geometry cannot be used: the distance from cross to locking groove of the ") +
                             to_word(ends->front()) + " end's yoke is not known";
        return std::nullopt;
    }
    const HitchShaft& hitched = std::get<HitchShaft>(meets);
    const auto lengths = operating_lengths(machine, hitched, measuring_plus_minus);
    if (const auto* problems = std::get_if<Problems>(&lengths)) {
        reading.unreadable = "the machine's geometry cannot be used: " + problems->front().wrong;
        return std::nullopt;
    }
    return GeometryReading{machine, hitched, std::get<OperatingLengths>(lengths)};
}

void read_angles(FitReading& reading, const JobFit& fit)
{
    reading.angles = reading.fit.angles = fit.angles;
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
    if (!reading.unreadable.empty()) return;
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
    reading.fit.longest[range] = Toleranced{bent(distance, reading.reaches, reading.read_at[range]), reading.longest[range]->plus_minus};
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
    if (!reading.unreadable.empty()) return;
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
    if (!reading.geometry || !reading.unreadable.empty()) return;
    const OperatingLengths& lengths = reading.geometry->lengths;
    if (reading.shortest) compare_extreme(reading, std::nullopt, *reading.fit.shortest, lengths.shortest);
    for (const Range range : all_ranges)
        if (reading.longest[range] && lengths.ranges[range]) compare_extreme(reading, range, *reading.fit.longest[range], lengths.ranges[range]->longest);
}

}  // namespace

Length in_line(Length distance, const Reaches& reaches)
{
    for (const End end : both_ends) distance -= reaches[end].yoke + reaches[end].spacing;
    return distance;
}

Length bent(Length distance, const Reaches& reaches, const PerEach<End, Angle>& angles)
{
    double along = 0;
    double across = 0;
    for (const End end : both_ends) {
        const double angle = angles[end].radians();
        const double yoke = reaches[end].yoke.mm();
        const double spacing = reaches[end].spacing.mm();
        const double side = end == End::tractor ? 1.0 : -1.0;
        along += yoke * std::cos(angle) + spacing * std::cos(angle / 2);
        across += side * (yoke * std::sin(angle) + spacing * std::sin(angle / 2));
    }
    const double square = distance.mm() * distance.mm() - across * across;
    return Length::from_mm(std::sqrt(std::max(0.0, square)) - along);
}

ShaftReading read_shaft(const JobShaft& shaft, const Series* series, Length measuring_plus_minus)
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

FitReading read_fit(const JobFit& fit, const JobShaft& shaft, const Series* series, const ShaftReading& shaft_reading,
                    const LimitsInForce& limits, Length measuring_plus_minus)
{
    FitReading reading;
    reading.tractor = fit.tractor;
    reading.shortest_at = fit.shortest_at;
    reading.longest_at = fit.longest_at;
    reading.views = fit.views;
    reading.between = fit.between;
    reading.reference = fit.reference.value_or(shaft_reading.reference);
    const bool grooves = fit.between == Between::grooves;
    reading.reaches = cross_reaches(shaft_reading.shaft.spacing, grooves ? Reference::outer_cross : reading.reference);
    if (grooves) add_yokes(reading, shaft, series);
    if (fit.machine) reading.geometry = read_geometry(reading, *fit.machine, shaft, series, measuring_plus_minus);
    read_angles(reading, fit);
    read_shortest(reading, fit, measuring_plus_minus);
    for (const Range range : all_ranges) read_longest(reading, range, fit, {shaft, limits, measuring_plus_minus});
    compare_with_geometry(reading);
    return reading;
}

namespace {

// Of two equal lengths the one known less well decides, whichever fit comes first.
bool less_well_known(const Toleranced& a, const Toleranced& b) { return a.value == b.value && a.plus_minus > b.plus_minus; }

void decide_shortest(Fit& decides, const Fit& fit)
{
    if (!fit.shortest || !decides.shortest) {
        decides.shortest.reset();
    } else if (fit.shortest->value < decides.shortest->value || less_well_known(*fit.shortest, *decides.shortest)) {
        decides.shortest = fit.shortest;
        decides.shortest_place = fit.shortest_place;
    }
}

void decide_longest(Fit& decides, const Fit& fit, Range range)
{
    const auto& longest = fit.longest[range];
    const auto& held = decides.longest[range];
    if (!longest || (held && longest->value <= held->value && !less_well_known(*longest, *held))) return;
    decides.longest[range] = longest;
    decides.longest_places[range] = fit.longest_places[range];
}

}  // namespace

Fit deciding_fit(const std::vector<FitReading>& fits)
{
    Fit decides = fits.front().fit;
    for (const FitReading& reading : fits) {
        const Fit& fit = reading.fit;
        decide_shortest(decides, fit);
        for (const Range range : all_ranges) {
            decide_longest(decides, fit, range);
            for (const End end : both_ends) decides.angles[end][range] = std::max(decides.angles[end][range], fit.angles[end][range]);
        }
    }
    return decides;
}

}  // namespace shaftcut
