// What a random job says beside its lengths.
#include "support/drawn/random_slips.hpp"

namespace shaftcut::test {
namespace {

template <class E>
void look_at(Dice& dice, std::optional<E>& found)
{
    if (dice.one_in(3)) return;
    found = dice.one_in(12) ? static_cast<E>(dice.up_to(static_cast<std::int64_t>(Words<E>::all.size()) - 1)) : E{};
}

// The first word of each is what is right, but of `slides`, where it is too.
Condition random_condition(Dice& dice)
{
    Condition found;
    look_at(dice, found.guard);
    look_at(dice, found.chains);
    look_at(dice, found.crosses);
    look_at(dice, found.tubes);
    look_at(dice, found.locks);
    look_at(dice, found.weld);
    look_at(dice, found.device);
    look_at(dice, found.phase);
    look_at(dice, found.slides);
    return found;
}

// Near what the closed length leaves, near what the series says, or anything.
Length random_stop(Dice& dice, Length left, std::optional<Length> of_series)
{
    if (dice.one_in(2)) return left + Length::millimetres(dice.from(-7, 7)) + dice.nudge();
    if (of_series && dice.one_in(2)) return *of_series + Length::millimetres(dice.from(-18, 18)) + dice.nudge();
    return dice.length(20, 190);
}

void state_stop(Dice& dice, World& world, Tube tube)
{
    JobHalf& half = world.job.shaft.halves[tube];
    const auto& partner = world.job.shaft.halves[other(tube)].length;
    const Length left = partner ? telescoping_closed(world) - partner->length : Length::millimetres(110);
    const Length stop = random_stop(dice, left, world.catalogue.series[0].halves[tube].shoulder);
    Measurement found{stop, std::nullopt, {"job.xml", 1, 1}};
    if (dice.one_in(3)) found.plus_minus = dice.length(0, 6);
    if (dice.one_in(2) && half.length) {
        found.length = half.length->length - stop;
        half.stop_depth = found;
    } else {
        half.shoulder = found;
    }
}

void take_from_another(Dice& dice, World& world, Tube tube)
{
    JobShaft& shaft = world.job.shaft;
    shaft.halves[tube].series = OtherSeries{};
    const bool named = dice.one_in(2);
    if (named) shaft.halves[tube].series->name = world.catalogue.series[dice.one_in(4) ? 0 : 1].name;
    JobEnd& end = shaft.ends[end_of(shaft, tube)];
    if (end.joint == JointKind::wide_angle && (!named || dice.one_in(3))) end.spacing = dice.length(40, 90);
    if (!dice.one_in(3)) end.cross_to_groove = dice.length(30, 90);
}

}  // namespace

Length telescoping_closed(const World& world)
{
    const JobShaft& shaft = world.job.shaft;
    const Series* series = shaft.series ? find_series(world.catalogue, *shaft.series) : nullptr;
    const auto usual = series && series->wide_angle_reference ? series->wide_angle_reference : usual_reference(series ? series->shape : shaft.shape.value_or(Shape::other));
    Length length = shaft.closed.length;
    if (shaft.closed_reference.value_or(usual.value_or(Reference::inner_cross)) == Reference::inner_cross) return length;
    for (const End end : both_ends)
        if (shaft.ends[end].joint == JointKind::wide_angle) length -= shaft.spacing ? *shaft.spacing : world.catalogue.series[0].wide_angle->spacing;
    return length;
}

void say_more(Dice& dice, World& world)
{
    for (const Tube tube : both_tubes) {
        JobHalf& half = world.job.shaft.halves[tube];
        if (dice.one_in(14)) take_from_another(dice, world, tube);
        if (dice.one_in(6)) state_stop(dice, world, tube);
        if (half.length && dice.one_in(5)) half.cut_to = half.length->length + Length::millimetres(dice.from(dice.one_in(8) ? -400 : -12, dice.one_in(4) ? 12 : 6)) + dice.nudge();
        if (!dice.one_in(14)) continue;
        half.guard_use = dice.one_in(2) ? GuardUse::none : GuardUse::damaged;
        half.guard.reset();
    }
    if (dice.one_in(3)) world.job.shaft.condition = random_condition(dice);
    Circumstances& around = world.job.circumstances;
    if (dice.one_in(2)) around.power = dice.from(5, 70) * 1000 + (dice.one_in(4) ? dice.from(0, 999) : 0);
    if (dice.one_in(12)) around.other_tractors = {"another"};
    if (dice.one_in(8)) world.job.shaft.measures = Measures();
}

}  // namespace shaftcut::test
