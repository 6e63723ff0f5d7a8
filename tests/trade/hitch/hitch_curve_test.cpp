#include "shaftcut/trade/hitch/hitch_curve.hpp"

#include <cmath>

#include "support/catch.hpp"
#include "support/machines.hpp"

using namespace shaftcut;

namespace {

const HitchShaft shaft{support::end(60, 70), support::end(80, 0)};

}  // namespace

TEST_CASE("a curve against turn touches the range's extremes")
{
    support::Dice dice(11);
    for (int i = 0; i < 5; ++i) {
        auto trailed = std::get<Trailed>(support::random_trailed(dice).machine);
        const TrailedRange& range = *trailed.ranges.turning;
        const auto found = std::get<OperatingLengths>(operating_lengths(trailed, shaft, Length())).ranges.turning.value();
        const auto curve = lengths_against_turn(trailed, shaft, range, 61);
        REQUIRE(curve.size() == 61);
        CHECK(curve.front().turn == Angle() - range.turn.value);
        CHECK(curve.back().turn == range.turn.value);
        Length least = curve.front().shortest, most = curve.front().longest;
        for (const TurnPoint& point : curve) {
            CHECK(point.shortest <= point.level);
            CHECK(point.level <= point.longest);
            least = std::min(least, point.shortest);
            most = std::max(most, point.longest);
        }
        CHECK(least >= found.shortest.length - Length::micrometres(2));
        CHECK(most <= found.longest.length + Length::micrometres(2));
        CHECK(least.mm() == Approx(found.shortest.length.mm()).margin(1));
        CHECK(most.mm() == Approx(found.longest.length.mm()).margin(1));
    }
}

TEST_CASE("a curve against turn is even on an even machine")
{
    const auto machine = support::level_machine(450, 700, support::turns(40, 10, 5));
    const auto curve = lengths_against_turn(machine, shaft, *machine.ranges.turning, 21);
    REQUIRE(curve.size() == 21);
    for (std::size_t i = 0; i < 10; ++i) {
        CHECK(std::abs((curve[i].level - curve[20 - i].level).um()) <= 1);
        CHECK(std::abs((curve[i].tractor - curve[20 - i].tractor).mdeg()) <= 1);
    }
    CHECK(curve[10].turn == Angle());
    CHECK(curve[10].level == Length::millimetres(450 + 700 - 60 - 80 - 70));
    CHECK(curve[10].tractor == Angle());
}

TEST_CASE("a curve against lift gives the shaft at each height")
{
    const Mounted machine = support::common_linkage({});
    const auto curve = lengths_against_lift(machine, shaft, support::heights(250, 850), 25);
    REQUIRE(curve.size() == 25);
    CHECK(curve.front().height == Length::millimetres(250));
    CHECK(curve[1].height == Length::millimetres(275));
    CHECK(curve.back().height == Length::millimetres(850));
    for (const LiftPoint& point : curve) {
        const auto bent = shaft_in_place(machine, shaft, {point.height.mm(), 0, 0});
        CHECK(point.length.mm() == Approx(bent->length).margin(0.001));
        CHECK(point.implement.radians() == Approx(bent->implement_angle()).margin(1e-5));
    }
}
