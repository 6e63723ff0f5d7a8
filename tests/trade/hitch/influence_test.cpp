#include "shaftcut/trade/hitch/influence.hpp"

#include <cmath>

#include "shaftcut/trade/hitch/hitch.hpp"
#include "support/catch.hpp"
#include "support/machines.hpp"

using namespace shaftcut;
using support::length;

namespace {

constexpr Length measuring = Length::millimetres(2);
const HitchShaft plain_shaft{support::end(60, 0), support::end(80, 0)};

OperatingLengths lengths_of(const Machine& machine, const HitchShaft& shaft)
{
    const auto result = operating_lengths(machine, shaft, measuring);
    REQUIRE(std::holds_alternative<OperatingLengths>(result));
    return std::get<OperatingLengths>(result);
}

const Influence& named(const ExtremeLength& extreme, const std::string& name)
{
    for (const Influence& influence : extreme.influences)
        if (influence.dimension == name) return influence;
    FAIL("no influence of " << name);
    return extreme.influences.front();
}

// The slope of the extreme itself: two whole searches on a machine with the dimension 0.5 mm greater and less.
template <class Kind>
void check_slope(const support::MachineAndShaft& one, Dimension Kind::*dimension, const char* name)
{
    const auto with = [&](double mm) {
        Machine changed = one.machine;
        (std::get<Kind>(changed).*dimension).value += Length::from_mm(mm);
        return lengths_of(changed, one.shaft).ranges.turning.value();
    };
    const RangeExtremes here = with(0), more = with(0.5), less = with(-0.5);
    INFO(name);
    // Lengths are whole micrometres, so a difference over 1 mm is good to 0.001, and the extreme may pass into a corner
    // within it; where two positions share an extreme its slope changes, which does not happen in these machines.
    CHECK((more.shortest.length - less.shortest.length).mm() == Approx(named(here.shortest, name).slope).margin(0.005));
    CHECK((more.longest.length - less.longest.length).mm() == Approx(named(here.longest, name).slope).margin(0.005));
}

}  // namespace

TEST_CASE("a length straight ahead depends on what lies along it alone")
{
    const auto machine = support::level_machine(500, 600, support::turns(40, 0, 0));
    const ExtremeLength longest = lengths_of(machine, plain_shaft).ranges.turning->longest;
    CHECK(named(longest, "pin-behind").slope == Approx(1));
    CHECK(named(longest, "input-behind").slope == Approx(1));
    CHECK(named(longest, "pto-height").slope == Approx(0).margin(1e-6));
    CHECK(longest.plus_minus == Length::millimetres(4));
    CHECK(longest.influences[0].effect == Length::millimetres(2));
    CHECK(longest.influences[1].effect == Length::millimetres(2));
    CHECK(longest.influences[2].effect == Length());
}

TEST_CASE("a dimension's own plus or minus wins, and the greatest effect comes first")
{
    auto machine = support::level_machine(500, 600, support::turns(40, 0, 0));
    machine.input_behind.plus_minus = Length::millimetres(10);
    machine.pin_behind.plus_minus = Length();
    machine.input_behind.place = {"job.xml", 7, 3};
    const ExtremeLength longest = lengths_of(machine, plain_shaft).ranges.turning->longest;
    CHECK(longest.plus_minus == Length::millimetres(10));
    CHECK(longest.influences[0].dimension == "input-behind");
    CHECK(longest.influences[0].place == Place{"job.xml", 7, 3});
}

TEST_CASE("a height counts where the extreme lies at it, a turn where its plus or minus is stated")
{
    const Mounted mounted = support::common_linkage(support::heights(250, 850));
    const RangeExtremes lift = lengths_of(mounted, plain_shaft).ranges.turning.value();
    CHECK(std::get<MountedPosture>(lift.shortest.at).height == Length::millimetres(250));
    const auto length_at = [&](double height) { return shaft_in_place(mounted, plain_shaft, {height, 0, 0})->length; };
    CHECK(named(lift.shortest, "lowest").slope == Approx((length_at(251) - length_at(249)) / 2).epsilon(1e-3));
    CHECK(named(lift.longest, "highest").effect > Length());

    auto trailed = support::level_machine(500, 600, support::turns(40, 0, 0));
    CHECK(named(lengths_of(trailed, plain_shaft).shortest, "turn").effect == Length());
    trailed.ranges.turning->turn.plus_minus = Angle::degrees(1);
    const Influence turn = named(lengths_of(trailed, plain_shaft).shortest, "turn");
    // dL/dpsi = -ab sin psi / L with a = 440, b = 520, psi = 40 degrees.
    const double by_hand = -440.0 * 520 * std::sin(0.698132) / std::sqrt(440.0 * 440 + 520 * 520 + 2 * 440 * 520 * std::cos(0.698132));
    CHECK(turn.slope == Approx(by_hand * 0.0174533).epsilon(1e-4));
    CHECK(turn.effect.mm() == Approx(std::abs(turn.slope)).margin(0.001));
}

TEST_CASE("a wider turn shortens the shortest at whichever side it lies")
{
    for (const double left : {-150.0, 150.0}) {
        auto machine = support::level_machine(500, 600, support::turns(40, 0, 0));
        machine.input_left = length(left);
        const ExtremeLength shortest = lengths_of(machine, plain_shaft).shortest;
        CHECK(std::get<TrailedPosture>(shortest.at).turn == Angle::degrees(left < 0 ? 40 : -40));
        CHECK(named(shortest, "turn").slope < -1);
    }
}

TEST_CASE("slopes are those of whole searches on changed machines")
{
    support::Dice dice(9);
    for (int i = 0; i < 8; ++i) {
        const auto trailed = support::random_trailed(dice);
        check_slope(trailed, &Trailed::pto_height, "pto-height");
        check_slope(trailed, &Trailed::pin_behind, "pin-behind");
        check_slope(trailed, &Trailed::pin_height, "pin-height");
        check_slope(trailed, &Trailed::input_behind, "input-behind");
        check_slope(trailed, &Trailed::input_height, "input-height");
        if (std::get<Trailed>(trailed.machine).input_left.value != Length()) check_slope(trailed, &Trailed::input_left, "input-left");
        const auto mounted = support::random_mounted(dice);
        check_slope(mounted, &Mounted::lower_link, "lower-link");
        check_slope(mounted, &Mounted::lower_pivot_behind, "lower-pivot-behind");
        check_slope(mounted, &Mounted::lower_pivot_height, "lower-pivot-height");
        check_slope(mounted, &Mounted::top_link, "top-link");
        check_slope(mounted, &Mounted::top_pivot_behind, "top-pivot-behind");
        check_slope(mounted, &Mounted::top_pivot_height, "top-pivot-height");
        check_slope(mounted, &Mounted::mast, "mast");
        check_slope(mounted, &Mounted::input_behind, "input-behind");
        check_slope(mounted, &Mounted::input_above, "input-above");
    }
}
