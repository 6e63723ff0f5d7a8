#include "support/drawn/random_jobs.hpp"

#include "support/plain/plain_method.hpp"
#include "support/drawn/random_slips.hpp"

namespace shaftcut::test {

Length Dice::length(std::int64_t least_mm, std::int64_t greatest_mm)
{
    const std::int64_t um = from(least_mm, greatest_mm) * 1000;
    switch (up_to(9)) {
    case 0: return Length::micrometres(um + from(0, 999));
    case 1: return Length::micrometres(um + 500);
    case 2: return Length::micrometres(um / 25400 * 25400 + from(0, 16) * 3175 / 2);
    default: return Length::micrometres(um);
    }
}

Length Dice::nudge()
{
    static constexpr std::int64_t steps[]{0, 0, 1, -1, 9, -9, 10, -10, 11, -11, 1000, -1000};
    return Length::micrometres(steps[up_to(11)]);
}

namespace {

Measurement measured(Dice& dice, Length length)
{
    Measurement found{length, std::nullopt, {"job.xml", 1, 1}};
    if (dice.one_in(4)) found.plus_minus = dice.length(0, 6);
    return found;
}

Shape random_shape(Dice& dice) { return static_cast<Shape>(dice.up_to(static_cast<std::int64_t>(Words<Shape>::all.size()) - 1)); }
Reference random_reference(Dice& dice) { return dice.one_in(2) ? Reference::outer_cross : Reference::inner_cross; }

LimitValue random_limit(Dice& dice, const LimitRow& row)
{
    switch (row.kind) {
    case LimitKind::fraction: return {dice.from(1, 4), dice.from(4, 7)};
    case LimitKind::length: return {dice.length(0, 2 * row.standard.numerator / 1000).um(), 1};
    default: return {dice.from(1, 2 * row.standard.numerator), 1};
    }
}

Limits random_limits(Dice& dice, std::int64_t rarity)
{
    Limits limits;
    for (const LimitRow& row : limit_rows())
        if (dice.one_in(rarity)) limits[row.limit] = LimitSetting{random_limit(dice, row), {}};
    return limits;
}

// A tube stops beyond where it sits, as the reader of a catalogue demands.
SeriesHalf random_series_half(Dice& dice)
{
    SeriesHalf half;
    if (!dice.one_in(5)) half.shoulder = dice.length(60, 150);
    if (!dice.one_in(6)) half.seat = dice.length(30, 70);
    if (half.seat && half.shoulder && *half.seat > *half.shoulder) half.seat = *half.shoulder - dice.length(0, 30);
    if (!dice.one_in(6)) half.least_tube = dice.length(50, 350);
    if (!dice.one_in(3)) half.guard_shoulder = dice.length(40, 160);
    if (dice.one_in(2)) half.guard_seat = dice.length(30, 60);
    if (dice.one_in(2)) half.guard_seat_wide_angle = dice.length(50, 90);
    half.shortening_forbidden = dice.one_in(40);
    return half;
}

Series random_series(Dice& dice, std::string name)
{
    Series series;
    series.name = std::move(name);
    series.shape = random_shape(dice);
    if (dice.one_in(2)) series.wide_angle_reference = random_reference(dice);
    series.crosses = {{Length::millimetres(22), Length::millimetres(54)}};
    series.wide_angle = WideAngleJoint{dice.length(40, 90), {}};
    for (const Tube tube : both_tubes) series.halves[tube] = random_series_half(dice);
    series.shortening_forbidden = dice.one_in(40);
    series.yokes = {{"1-3/8-6", JointKind::standard, dice.length(30, 80)}, {"1-3/8-6", std::nullopt, dice.length(50, 90)}};
    if (dice.one_in(2)) series.yokes.push_back({"1-3/8-21", std::nullopt, dice.length(30, 80)});
    if (dice.one_in(2)) series.limits = random_limits(dice, 12);
    if (!dice.one_in(8))
        for (std::int64_t length = 480; length < 1600; length += dice.from(60, 160)) series.closed_lengths.push_back(Length::millimetres(length));
    for (const int speed : {1000, 540, 750})
        if (dice.one_in(2)) series.ratings.push_back({speed, dice.from(10, 80) * 1000});
    return series;
}

Catalogue random_catalogue(Dice& dice)
{
    Catalogue found;
    found.connections = {{"1-3/8-6", {540, 1000}, "ISO 500-1:2014 type 1"}, {"1-3/8-21", {1000}, "ISO 500-1:2014 type 2"}, {"flange", {}, ""}};
    found.series = {random_series(dice, "Alder 2"), random_series(dice, "Larch 6")};
    return found;
}

Workshop random_workshop(Dice& dice)
{
    static constexpr std::int64_t steps[]{1000, 1000, 1000, 500, 2000, 5000, 1588, 10};
    Workshop found;
    found.saw = {Length::micrometres(steps[dice.up_to(7)]), Length::millimetres(3), dice.length(0, 2), dice.length(0, 8)};
    found.measuring_plus_minus = dice.length(0, 4);
    if (dice.one_in(3)) found.limits = random_limits(dice, 8);
    return found;
}

template <class E>
std::optional<E> random_word(Dice& dice)
{
    if (dice.one_in(5)) return std::nullopt;
    return static_cast<E>(dice.up_to(static_cast<std::int64_t>(Words<E>::all.size()) - 1));
}

std::optional<std::string> random_connection(Dice& dice)
{
    if (dice.one_in(12)) return std::nullopt;
    if (dice.one_in(8)) return "1-3/8-21";
    return dice.one_in(30) ? "flange" : "1-3/8-6";
}

JobEnd random_end(Dice& dice)
{
    JobEnd end;
    end.joint = dice.one_in(3) ? JointKind::wide_angle : JointKind::standard;
    end.connection = random_connection(dice);
    end.onto = dice.one_in(10) ? random_connection(dice) : end.connection;
    end.lock = dice.one_in(4) ? random_word<Lock>(dice) : Lock::clamp_bolt;
    end.device = dice.one_in(12) ? random_word<Device>(dice) : Device::none;
    return end;
}

void add_features(Dice& dice, JobHalf& half, Length length)
{
    for (const Feature feature : {Feature::coated, Feature::end_stop, Feature::one_chain_guard})
        if (dice.one_in(8)) half.features.push_back(feature);
    if (dice.one_in(10)) half.lubrication_hole = measured(dice, length - dice.length(20, 200));
}

bool any_wide(const JobShaft& shaft)
{
    return shaft.ends[End::tractor].joint == JointKind::wide_angle || shaft.ends[End::implement].joint == JointKind::wide_angle;
}

// Which series it is and where its closed length starts, as the readers demand: an unusual shape must state its reference.
void name_shaft(Dice& dice, JobShaft& shaft, const Series& series)
{
    if (!dice.one_in(4)) shaft.series = series.name;
    else {
        shaft.shape = random_shape(dice);
        if (any_wide(shaft)) shaft.spacing = dice.length(40, 90);
    }
    const Shape shape = shaft.series ? series.shape : *shaft.shape;
    const bool known = (shaft.series && series.wide_angle_reference) || usual_reference(shape);
    if (!known || dice.one_in(2)) shaft.closed_reference = random_reference(dice);
}

// Of a shaft that nobody cut, one of its series' own lengths, at the series' own reference.
Length random_closed(Dice& dice, const Series& series)
{
    if (series.closed_lengths.empty() || dice.one_in(3)) return dice.length(450, 1300);
    const auto last = static_cast<std::int64_t>(series.closed_lengths.size()) - 1;
    const Length listed = series.closed_lengths[static_cast<std::size_t>(dice.up_to(last))];
    return dice.one_in(3) ? listed + Length::millimetres(dice.from(-9, 9)) + dice.nudge() : listed;
}

// A pair of halves that the closed length holds, one of them cut before, or something else altered.
void random_halves(Dice& dice, JobShaft& shaft, const Series& series, Length telescoping)
{
    const bool uncut = dice.one_in(8);
    for (const Tube tube : both_tubes) {
        JobHalf& half = shaft.halves[tube];
        const Length shoulder = series.halves[other(tube)].shoulder.value_or(Length::millimetres(110));
        Length length = telescoping - shoulder;
        if (dice.one_in(3)) length -= dice.length(0, 90);
        if (dice.one_in(6)) length += Length::micrometres(dice.from(-12, 12) * 1000) + dice.nudge();
        if (!uncut && !dice.one_in(8)) half.length = measured(dice, length);
        if (!dice.one_in(4)) half.guard = measured(dice, length - Length::millimetres(20) + dice.length(-20, 20));
        add_features(dice, half, length);
    }
}

JobShaft random_shaft(Dice& dice, const Series& series)
{
    JobShaft shaft;
    for (const End end : both_ends) shaft.ends[end] = random_end(dice);
    name_shaft(dice, shaft, series);
    shaft.role = dice.one_in(4) ? Role::secondary : Role::primary;
    if (!dice.one_in(3)) shaft.speed = dice.one_in(2) ? 540 : dice.one_in(2) ? 1000 : 750;
    shaft.inner_tube = dice.one_in(2) ? End::tractor : End::implement;
    if (!dice.one_in(3)) shaft.built = static_cast<int>(dice.from(2018, 2023));
    shaft.closed = measured(dice, random_closed(dice, series));
    return shaft;
}

// Each range holds those within it, but for a few that contradict themselves.
void random_angles(Dice& dice, JobFit& fit, End end)
{
    std::int64_t angle = dice.from(1, 22);
    for (const Range range : all_ranges) {
        if (!dice.one_in(6)) fit.angles[end][range] = Angle::millidegrees((dice.one_in(60) ? dice.from(1, 95) : angle) * 1000);
        angle += dice.from(0, 14) * (1 + static_cast<std::int64_t>(range));
    }
}

JobFit random_fit(Dice& dice, const JobShaft& shaft)
{
    JobFit fit;
    if (dice.one_in(8)) fit.between = Between::grooves;
    else if (dice.one_in(3)) fit.reference = random_reference(dice);
    Length reach = shaft.closed.length - Length::millimetres(dice.from(-80, 120));
    if (fit.between == Between::grooves) reach += Length::millimetres(140);
    const Length turning = dice.length(0, 200);
    fit.shortest = measured(dice, reach);
    fit.longest[Range::turning] = measured(dice, reach + turning);
    const Length working = dice.one_in(20) ? dice.length(0, 120) : Length::millimetres(dice.up_to(turning.um() / 1000));
    if (!dice.one_in(5)) fit.longest[Range::working] = measured(dice, reach + working);
    if (!dice.one_in(5)) fit.longest[Range::standing] = measured(dice, reach + turning + dice.length(0, 120));
    for (const End end : both_ends) random_angles(dice, fit, end);
    return fit;
}

Length& figure_to_tune(Job& job, CheckId id)
{
    JobFit& fit = job.fits[0];
    if (id == CheckId::overlap_working && fit.longest[Range::working]) return fit.longest[Range::working]->length;
    if (id == CheckId::overlap_standing && fit.longest[Range::standing]) return fit.longest[Range::standing]->length;
    if (id == CheckId::overlap_turning) return fit.longest[Range::turning]->length;
    JobHalf& half = job.shaft.halves[Tube::inner];
    if ((id == CheckId::guard_cover || id == CheckId::guard_setback) && half.guard) return half.guard->length;
    return fit.shortest->length;
}

// Moves one measured length so that a check's value, or its worst case, comes to lie on its limit, or by a hair beside it.
void tune(Dice& dice, World& world)
{
    const CheckId ids[]{CheckId::closing_clearance, CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing,
                        CheckId::guard_cover, CheckId::guard_setback};
    const CheckId id = ids[dice.up_to(5)];
    const plain::PlainAnswer now = plain::answer(world.job, world.catalogue, world.workshop, world.units);
    const plain::PlainCheck& check = now.checks[static_cast<std::size_t>(id)];
    if (!check.value || !check.limit) return;
    const std::int64_t figure = check.worst && dice.one_in(2) ? *check.worst : *check.value;
    Length& length = figure_to_tune(world.job, id);
    const bool grows = id == CheckId::guard_cover;
    const Length tuned = length + Length::micrometres((grows ? -1 : 1) * (figure - *check.limit)) + dice.nudge();
    if (tuned > Length()) length = tuned;  // no file holds a negative one
}

// Makes one pair of lengths contradict, or nearly.
void contradict(Dice& dice, Job& job)
{
    JobFit& fit = job.fits.back();
    JobHalf& half = job.shaft.halves[dice.one_in(2) ? Tube::inner : Tube::outer];
    switch (dice.up_to(5)) {
    case 0: fit.longest[Range::turning]->length = fit.shortest->length + dice.nudge(); break;
    case 1: fit.longest[Range::working] = measured(dice, fit.longest[Range::turning]->length + dice.nudge()); break;
    case 2: fit.longest[Range::standing] = measured(dice, fit.longest[Range::turning]->length + dice.nudge()); break;
    case 3: half.length = measured(dice, job.shaft.closed.length + dice.nudge()); break;
    case 4: half.guard = measured(dice, job.shaft.closed.length + dice.nudge()); break;
    default: fit.shortest->length = dice.length(0, 200); break;
    }
}

}  // namespace

World random_world(std::uint64_t number)
{
    Dice dice(number);
    World world;
    world.catalogue = random_catalogue(dice);
    world.workshop = random_workshop(dice);
    world.units = dice.one_in(4) ? Units::in : Units::mm;
    Job& job = world.job;
    job.order = "R-" + std::to_string(number);
    job.units = world.units;
    job.shaft = random_shaft(dice, world.catalogue.series[0]);
    random_halves(dice, job.shaft, world.catalogue.series[0], telescoping_closed(world));
    say_more(dice, world);
    for (std::int64_t fits = dice.one_in(4) ? dice.from(2, 3) : 1; fits > 0; --fits) job.fits.push_back(random_fit(dice, job.shaft));
    if (dice.one_in(3)) job.limits = random_limits(dice, 10);
    if (dice.one_in(12)) contradict(dice, job);
    if (dice.one_in(6)) slip(dice, world);
    if (dice.one_in(2)) tune(dice, world);
    return world;
}

}  // namespace shaftcut::test
