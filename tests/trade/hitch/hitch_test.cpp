#include "shaftcut/trade/hitch/hitch.hpp"

#include <cmath>
#include <numbers>

#include "support/catch.hpp"
#include "support/machines.hpp"

using namespace shaftcut;
using support::angle;
using support::end;
using support::length;

namespace {

constexpr Length measuring = Length::millimetres(2);
const HitchShaft plain_shaft{end(60, 0), end(80, 0)};

OperatingLengths lengths_of(const Machine& machine, const HitchShaft& shaft)
{
    const auto result = operating_lengths(machine, shaft, measuring);
    REQUIRE(std::holds_alternative<OperatingLengths>(result));
    return std::get<OperatingLengths>(result);
}

TrailedPosture turned(const Posture& at) { return std::get<TrailedPosture>(at); }

// The pin `a` behind the tractor's cross and `b` before the implement's, for plain_shaft.
Trailed machine_about_pin(double a, double b, const TrailedRange& turning)
{
    return support::level_machine(a + 60, b + 80, turning);
}

// The greatest of a measure on a dense grid; it can only be at or below the truth.
double greatest_on_grid(const BoxFunction& measure, const Box& box, const std::array<int, 3>& points)
{
    double best = -1e9;
    const auto coordinate = [&](std::size_t i, int step) {
        return points[i] < 2 ? box.middle[i] : box.middle[i] + box.half[i] * (2.0 * step / (points[i] - 1) - 1);
    };
    for (int i = 0; i < points[0]; ++i)
        for (int j = 0; j < points[1]; ++j)
            for (int k = 0; k < points[2]; ++k)
                best = std::max(best, measure({coordinate(0, i), coordinate(1, j), coordinate(2, k)}).value());
    return best;
}

}  // namespace

TEST_CASE("level machines on standard joints have the closed form's lengths and angles")
{
    // L = sqrt(a^2 + b^2 + 2ab cos psi), b1 = atan2(b sin psi, a + b cos psi), b1 + b2 = psi: computed.
    struct Row { double a; double b; double turn; double tractor; double implement; double shortest; };
    const Row rows[] = {
        {500, 500, 60, 30, 30, 866.03},
        {400, 600, 60, 36.587, 23.413, 871.78},
        {350, 650, 50, 32.964, 17.036, 915.13},
    };
    for (const Row& row : rows) {
        for (const bool sideways : {true, false}) {  // a pitch is a turn seen from the side
            const TrailedRange range = sideways ? support::turns(row.turn, 0, 0) : support::turns(0, row.turn, 0);
            const RangeExtremes found = lengths_of(machine_about_pin(row.a, row.b, range), plain_shaft).ranges.turning.value();
            CHECK(found.shortest.length.mm() == Approx(row.shortest).margin(0.005));
            CHECK(found.longest.length.mm() == Approx(row.a + row.b).margin(0.0005));
            CHECK(found.tractor.angle.degrees() == Approx(row.tractor).margin(0.001));
            CHECK(found.implement.angle.degrees() == Approx(row.implement).margin(0.001));
            CHECK(turned(found.longest.at).turn == Angle());
            CHECK((sideways ? turned(found.shortest.at).turn : turned(found.shortest.at).pitch) == Angle::from_degrees(row.turn));
        }
    }
}

TEST_CASE("a pin below the tractor's cross leaves the length the same at every turn")
{
    const RangeExtremes found = lengths_of(machine_about_pin(0, 500, support::turns(50, 0, 0)), plain_shaft).ranges.turning.value();
    CHECK(found.shortest.length == Length::millimetres(500));
    CHECK(found.longest.length == Length::millimetres(500));
    CHECK(found.tractor.angle == Angle::degrees(50));
    CHECK(found.implement.angle == Angle());
}

TEST_CASE("the shortest is over all ranges, the longest of each")
{
    Trailed machine = machine_about_pin(400, 600, support::turns(30, 0, 0));
    machine.ranges.working = support::turns(10, 0, 0);
    machine.ranges.standing = support::turns(60, 0, 0);
    const OperatingLengths found = lengths_of(machine, plain_shaft);
    CHECK(found.shortest.length == found.ranges.standing->shortest.length);
    CHECK(found.shortest.length < found.ranges.turning->shortest.length);
    CHECK(found.ranges.turning->shortest.length < found.ranges.working->shortest.length);
    CHECK(found.ranges.working->longest.length == found.ranges.standing->longest.length);
}

TEST_CASE("a mirrored machine has the mirrored extremes")
{
    support::Dice dice(5);
    for (int i = 0; i < 30; ++i) {
        auto [machine, shaft] = support::random_trailed(dice);
        auto& trailed = std::get<Trailed>(machine);
        const OperatingLengths one = lengths_of(machine, shaft);
        trailed.input_left.value = -trailed.input_left.value;
        const OperatingLengths other = lengths_of(machine, shaft);
        const RangeExtremes &a = *one.ranges.turning, &b = *other.ranges.turning;
        CHECK(std::abs((a.shortest.length - b.shortest.length).um()) <= 1);
        CHECK(std::abs((a.longest.length - b.longest.length).um()) <= 1);
        CHECK(std::abs((a.tractor.angle - b.tractor.angle).mdeg()) <= 1);
        if (trailed.input_left.value == Length()) {
            CHECK(turned(a.shortest.at).turn >= Angle());
        } else {
            CHECK(turned(a.shortest.at).turn.degrees() == Approx(-turned(b.shortest.at).turn.degrees()).margin(0.01));
        }
    }
}

TEST_CASE("a shortest length lies inside a lift, where a tape at its two ends misses it")
{
    Mounted machine = support::common_linkage(support::heights(200, 900));
    machine.top_link = length(650);
    machine.input_behind = length(0);
    const OperatingLengths found = lengths_of(machine, plain_shaft);
    const Machine whole = machine;
    const auto at = [&](double height) { return shaft_in_place(whole, plain_shaft, {height, 0, 0})->length; };
    double least = 1e9;
    for (double height = 200; height <= 900; height += 0.05) least = std::min(least, at(height));
    CHECK(found.shortest.length.mm() == Approx(least).margin(0.01));
    CHECK(found.shortest.length.mm() <= least + 0.001);
    const double height = std::get<MountedPosture>(found.shortest.at).height.mm();
    CHECK(height > 300);
    CHECK(height < 500);
    CHECK(std::min(at(200), at(900)) - least > 9);
}

TEST_CASE("no position of a dense grid goes past an extreme")
{
    support::Dice dice(6);
    for (int i = 0; i < 60; ++i) {
        const bool trailed = i % 2 == 0;
        const auto [machine, shaft] = trailed ? support::random_trailed(dice) : support::random_mounted(dice);
        const Box box = std::visit([](const auto& kind) { return box_of(*kind.ranges.standing); }, machine);
        const RangeExtremes found = lengths_of(machine, shaft).ranges.standing.value();
        const auto grid = [&](Quantity quantity) {
            const std::array<int, 3> points = trailed ? std::array<int, 3>{61, 15, 15} : std::array<int, 3>{20'001, 1, 1};
            return greatest_on_grid(measure_of(quantity, machine, shaft), box, points);
        };
        CHECK(found.shortest.length.mm() <= -grid(Quantity::closeness) + 0.001);
        CHECK(found.longest.length.mm() >= grid(Quantity::length) - 0.001);
        CHECK(found.tractor.angle >= angle_of_measure(grid(Quantity::tractor_angle)) - Angle::millidegrees(1));
        CHECK(found.implement.angle >= angle_of_measure(grid(Quantity::implement_angle)) - Angle::millidegrees(1));
        // A lift's grid of 20 000 heights is itself within 0.01 mm of the truth.
        if (!trailed) {
            CHECK(found.shortest.length.mm() == Approx(-grid(Quantity::closeness)).margin(0.01));
            CHECK(found.longest.length.mm() == Approx(grid(Quantity::length)).margin(0.01));
        }
    }
}

TEST_CASE("every extreme is the length or angle at the position it names")
{
    support::Dice dice(8);
    for (int i = 0; i < 40; ++i) {
        const auto [machine, shaft] = i % 2 == 0 ? support::random_trailed(dice) : support::random_mounted(dice);
        const RangeExtremes found = lengths_of(machine, shaft).ranges.turning.value();
        const Box box = std::visit([](const auto& kind) { return box_of(*kind.ranges.turning); }, machine);
        const auto bent = [&](const Posture& at) {
            const Coordinates position = coordinates(at);
            for (std::size_t k = 0; k < 3; ++k) CHECK(std::abs(position[k] - box.middle[k]) <= box.half[k] + 0.001);
            return shaft_in_place(machine, shaft, position).value();
        };
        CHECK(bent(found.shortest.at).length == Approx(found.shortest.length.mm()).epsilon(0).margin(0.01));
        CHECK(bent(found.longest.at).length == Approx(found.longest.length.mm()).epsilon(0).margin(0.01));
        CHECK(bent(found.tractor.at).tractor_angle() == Approx(found.tractor.angle.radians()).margin(1e-4));
        CHECK(bent(found.implement.at).implement_angle() == Approx(found.implement.angle.radians()).margin(1e-4));
    }
}

TEST_CASE("irregularity over the working range, in phase and out of phase")
{
    Trailed machine = machine_about_pin(500, 500, support::turns(60, 0, 0));
    machine.ranges.working = support::turns(40, 0, 0);
    OperatingLengths found = lengths_of(machine, plain_shaft);
    CHECK(found.irregularity->percent.value() == Approx(0).margin(1e-6));
    // 20 degrees at both ends: out of phase the speeds lie between cos^2 20 and its inverse, 88.302 and 113.247 per cent.
    CHECK(found.irregularity_out_of_phase->percent.value() == Approx(113.2474 - 88.3022).margin(0.001));
    CHECK(turned(found.irregularity_out_of_phase->at).turn == Angle::degrees(40));

    machine.pin_behind = length(350 + 60);
    found = lengths_of(machine, plain_shaft);
    CHECK(found.irregularity->percent.value() > 1);

    const HitchShaft wide{end(60, 70), end(80, 70)};
    found = lengths_of(machine, wide);
    CHECK(found.irregularity->percent.value() == 0);
    CHECK(found.irregularity_out_of_phase->percent.value() == 0);

    // One standard joint: its own ripple, however it is put together.
    const HitchShaft one_wide{end(60, 70), end(80, 0)};
    found = lengths_of(machine, one_wide);
    const double angle = found.ranges.working->implement.angle.radians();
    CHECK(found.irregularity->percent.value() == Approx(100 * std::tan(angle) * std::sin(angle)).epsilon(1e-4));
    CHECK(found.irregularity_out_of_phase->percent.value() == Approx(found.irregularity->percent.value()));

    machine.ranges.working.reset();
    CHECK_FALSE(lengths_of(machine, plain_shaft).irregularity);
}

TEST_CASE("out of phase the worse side counts, over the whole working range")
{
    support::Dice dice(12);
    for (int i = 0; i < 12; ++i) {
        auto [machine, shaft] = support::random_trailed(dice);
        shaft = {end(60, 0), end(80, 0), Angle::degrees(120)};
        const OperatingLengths found = lengths_of(machine, shaft);
        const Box box = box_of(*std::get<Trailed>(machine).ranges.working);
        double worst = 0;
        for (const double side : {1.0, -1.0}) {
            const auto measure = [&, side](const Coordinates& at) {
                return irregularity(joints_in_place(machine, shaft, at, side * shaft.phase_step.radians()).value());
            };
            worst = std::max(worst, greatest_on_grid(measure, box, {31, 15, 15}));
        }
        CHECK(found.irregularity_out_of_phase->percent.value() >= worst - 1e-6);
        CHECK(found.irregularity_out_of_phase->percent.value() == Approx(worst).epsilon(0.02));
    }
}

TEST_CASE("a joint past a right angle is answered, and cannot turn")
{
    Trailed machine = machine_about_pin(200, 600, support::turns(120, 0, 0));
    machine.ranges.working = support::turns(120, 0, 0);
    const OperatingLengths found = lengths_of(machine, plain_shaft);
    CHECK(found.ranges.turning->tractor.angle > Angle::degrees(90));
    CHECK_FALSE(found.irregularity->percent);
}
