#include "hitch/hitch_advice.hpp"

#include <cmath>

#include "support/catch.hpp"
#include "support/machines.hpp"

using namespace shaftcut;
using support::end;
using support::length;

namespace {

const HitchShaft plain_shaft{end(60, 0), end(80, 0)};

// The pin `a` behind the tractor's cross and `b` before the implement's, for plain_shaft.
Trailed machine_about_pin(double a, double b) { return support::level_machine(a + 60, b + 80, support::turns(50, 0, 0)); }

ShaftLimits longest(double mm) { return {Length::from_mm(mm), std::nullopt, std::nullopt}; }
ShaftLimits tractor_angle(double degrees) { return {std::nullopt, Angle::from_degrees(degrees), std::nullopt}; }

}  // namespace

TEST_CASE("on standard joints and level ground the pin belongs midway between the crosses")
{
    for (const double a : {380.0, 450.0, 500.0, 640.0}) {
        const auto advice = pin_for_equal_angles(machine_about_pin(a, 500), plain_shaft, support::turns(50, 0, 0));
        REQUIRE(advice);
        CHECK(advice->equal);
        CHECK(advice->move.mm() == Approx(500 - a).margin(0.1));
        CHECK(advice->tractor.degrees() == Approx(25).margin(0.01));
        CHECK(advice->implement.degrees() == Approx(25).margin(0.01));
    }
}

TEST_CASE("out of the drawbar's reach the advice is where the angles differ least")
{
    const auto advice = pin_for_equal_angles(machine_about_pin(250, 600), plain_shaft, support::turns(50, 0, 0));
    REQUIRE(advice);
    CHECK_FALSE(advice->equal);
    CHECK(advice->move == Length::millimetres(200));
    CHECK(advice->tractor > advice->implement);
}

TEST_CASE("a general machine's angles are equal at the advised pin")
{
    support::Dice dice(10);
    int equal = 0;
    for (int i = 0; i < 10; ++i) {
        const auto [machine, shaft] = support::random_trailed(dice);
        auto trailed = std::get<Trailed>(machine);
        const auto advice = pin_for_equal_angles(trailed, shaft, *trailed.ranges.working);
        REQUIRE(advice);
        if (!advice->equal) continue;
        ++equal;
        trailed.pin_behind.value += advice->move;
        const auto result = operating_lengths(trailed, shaft, Length());
        const RangeExtremes found = std::get<OperatingLengths>(result).ranges.working.value();
        CHECK(found.tractor.angle.degrees() == Approx(found.implement.angle.degrees()).margin(0.015));
    }
    CHECK(equal >= 3);
}

TEST_CASE("the pin's distance from a wide-angle joint's centre")
{
    const Trailed machine = support::level_machine(400, 700, support::turns(50, 0, 0));
    const PinFromCentre both = pin_from_wide_angle_centre(machine, {end(60, 70), end(80, 90)});
    CHECK(both.tractor.value().mm() == Approx(400 - (60 + 35)));
    CHECK(both.implement.value().mm() == Approx(400 - (1100 - 80 - 45)));
    const PinFromCentre none = pin_from_wide_angle_centre(machine, plain_shaft);
    CHECK_FALSE(none.tractor);
    CHECK_FALSE(none.implement);
    // With the pin under its centre a wide-angle joint takes the whole turn: the implement's joint stays nearly straight.
    Trailed centred = machine;
    centred.pin_behind = length(60 + 35);
    const auto found = std::get<OperatingLengths>(operating_lengths(centred, {end(60, 70), end(80, 0)}, Length())).ranges.turning.value();
    CHECK(found.tractor.angle.degrees() == Approx(50).margin(0.3));
    CHECK(found.implement.angle.degrees() < 0.3);
}

TEST_CASE("the turn up to which a shaft serves is the closed form's")
{
    // Pin midway: each joint takes half the turn.
    const Trailed midway = machine_about_pin(500, 500);
    CHECK(movement_served(midway, plain_shaft, support::turns(70, 0, 0), tractor_angle(25), Movement::turn)->degrees() ==
          Approx(50).margin(0.0021));
    CHECK(movement_served(midway, plain_shaft, support::turns(40, 0, 0), tractor_angle(25), Movement::turn) == Angle::degrees(40));
    CHECK(movement_served(midway, plain_shaft, support::turns(0, 30, 0), tractor_angle(10), Movement::pitch)->degrees() ==
          Approx(20).margin(0.0021));
    CHECK_FALSE(movement_served(midway, plain_shaft, support::turns(70, 0, 0), longest(900), Movement::turn));

    // Offset to the right by y, L^2 = a^2 + b^2 + y^2 + 2a (b cos psi - y sin psi): turning left lengthens.
    Trailed offset = machine_about_pin(500, 600);
    offset.input_left = length(-150);
    const double psi = -8 * 3.14159265358979 / 180;
    const double limit = std::sqrt(500.0 * 500 + 600 * 600 + 150 * 150 + 1000 * (600 * std::cos(psi) - 150 * std::sin(psi)));
    const auto served = movement_served(offset, plain_shaft, support::turns(30, 0, 0), longest(limit - 0.01), Movement::turn);
    CHECK(served.value().degrees() == Approx(8).margin(0.005));
}

TEST_CASE("what a lift serves holds up to the height and not beyond")
{
    const Mounted machine = support::common_linkage({});
    const MountedRange range = support::heights(250, 850);
    const LiftServed served = lift_served(machine, plain_shaft, range, longest(900));
    REQUIRE(served.up_to);
    CHECK_FALSE(served.down_to);
    const auto at = [&](Length height) { return shaft_in_place(machine, plain_shaft, {height.mm(), 0, 0})->length; };
    CHECK(at(*served.up_to) <= 900.01);
    CHECK(at(*served.up_to + Length::millimetres(1)) > 900.01);
    const LiftServed all = lift_served(machine, plain_shaft, range, longest(2000));
    CHECK(all.up_to == range.highest.value);
    CHECK(all.down_to == range.lowest.value);
    const LiftServed none = lift_served(machine, plain_shaft, range, longest(500));
    CHECK_FALSE(none.up_to);
}

TEST_CASE("the least move of the pin that serves")
{
    const Trailed machine = machine_about_pin(500, 500);
    const TrailedRange range = support::turns(50, 0, 0);
    CHECK(pin_move_served(machine, plain_shaft, range, longest(1000)) == Length());
    CHECK(pin_move_served(machine, plain_shaft, range, longest(967.3))->mm() == Approx(-32.7).margin(0.1));
    CHECK_FALSE(pin_move_served(machine, plain_shaft, range, longest(700)));
    // A pin 110 behind the PTO's groove cannot move 120 forwards.
    const TrailedRange straight = support::turns(0, 0, 0);
    CHECK(pin_move_served(machine_about_pin(50, 500), plain_shaft, straight, longest(450))->mm() == Approx(-100).margin(0.1));
    CHECK_FALSE(pin_move_served(machine_about_pin(50, 500), plain_shaft, straight, longest(430)));
    // Moving the pin rearwards takes angle from the tractor's joint.
    const auto rearwards = pin_move_served(machine, plain_shaft, range, tractor_angle(24));
    REQUIRE(rearwards);
    CHECK(*rearwards > Length());
    Trailed moved = machine;
    moved.pin_behind.value += *rearwards;
    const auto found = std::get<OperatingLengths>(operating_lengths(moved, plain_shaft, Length()));
    CHECK(found.ranges.turning->tractor.angle <= Angle::degrees(24));
    CHECK(found.ranges.turning->tractor.angle.degrees() == Approx(24).margin(0.01));
}
