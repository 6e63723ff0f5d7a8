#include "support/jobs.hpp"
#include "support/drawn/random_jobs.hpp"

namespace shaftcut::test {
namespace {

Length whole(Dice& dice, std::int64_t least, std::int64_t greatest) { return Length::millimetres(dice.from(least, greatest)); }

Measurement stated(Length length) { return {length, std::nullopt, {"job.xml", 1, 1}}; }

void vary_series(Dice& dice, Series& series)
{
    for (const Tube tube : both_tubes) {
        SeriesHalf& half = series.halves[tube];
        half.shoulder = whole(dice, 80, 140);
        half.least_tube = whole(dice, 80, 150);
        if (dice.one_in(2)) half.guard_shoulder = whole(dice, 90, 140);
    }
}

// Halves as the shoulders make them, or one of them cut before.
void vary_halves(Dice& dice, JobShaft& shaft, const Series& series, Length closed)
{
    const Tube shortened = dice.one_in(2) ? Tube::inner : Tube::outer;
    for (const Tube tube : both_tubes) {
        Length length = closed - *series.halves[other(tube)].shoulder;
        if (tube == shortened && dice.one_in(3)) length -= whole(dice, 1, 60);
        if (dice.one_in(4)) length += whole(dice, -2, 2);
        shaft.halves[tube] = {stated(length), stated(length - whole(dice, 5, 25)), std::nullopt, std::nullopt, {}};
    }
}

JobFit random_reach(Dice& dice, Length closed)
{
    JobFit fit;
    fit.reference = Reference::inner_cross;
    const Length shortest = closed - whole(dice, -110, 110);
    const Length turning = shortest + whole(dice, 10, 200);
    fit.shortest = stated(shortest);
    fit.longest[Range::turning] = stated(turning);
    const std::int64_t room = (turning - shortest).um() / 1000;
    fit.longest[Range::working] = stated(shortest + whole(dice, 5, dice.one_in(2) ? 10 : room));
    fit.longest[Range::standing] = stated(turning + whole(dice, 0, 60));
    for (const End end : both_ends) {
        const std::int64_t working = dice.from(1, 12);
        for (const Range range : all_ranges) fit.angles[end][range] = Angle::degrees(working * (static_cast<std::int64_t>(range) + 1));
    }
    return fit;
}

}  // namespace

World sound_world(std::uint64_t number)
{
    Dice dice(number);
    World world{job(), catalogue(), workshop(), Units::mm};
    Series& series = world.catalogue.series[0];
    vary_series(dice, series);
    JobShaft& shaft = world.job.shaft;
    const Length closed = whole(dice, 500, 1200);
    for (const End end : both_ends) shaft.ends[end].joint = dice.one_in(2) ? JointKind::wide_angle : JointKind::standard;
    shaft.inner_tube = dice.one_in(2) ? End::tractor : End::implement;
    shaft.closed_reference = Reference::inner_cross;
    shaft.closed = stated(closed);
    vary_halves(dice, shaft, series, closed);
    world.job.fits = {random_reach(dice, closed)};
    if (dice.one_in(4)) world.job.fits.push_back(random_reach(dice, closed));
    return world;
}

}  // namespace shaftcut::test
