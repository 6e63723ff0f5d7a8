// Lengths of a shaft made to order, each row worked out by hand from the formulas of build.hpp.
#include "shaftcut/trade/build/build.hpp"

#include "support/catch.hpp"
#include "support/orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

constexpr Fraction millimetre_step{1000, 1};

BuiltLengths built(const BuildOrder& order, double room, Fraction step = millimetre_step)
{
    return build_lengths(build_catalogue().series[0], order, mm(room), mm(10), step);
}

}  // namespace

// C 702: inner half 702 − 106, outer half 702 − 128; the outer half carries the wide-angle joint.
TEST_CASE("half lengths, guards and blanks follow from the closed length")
{
    const BuiltLengths lengths = built(build_order(), 702);
    CHECK(lengths.half[Tube::inner] == mm(596));
    CHECK(lengths.half[Tube::outer] == mm(574));
    CHECK(lengths.closed == mm(702));
    CHECK(lengths.blank[Tube::inner] == mm(596 - 62));
    CHECK(lengths.blank[Tube::outer] == mm(574 - 58));
    CHECK(lengths.guard_half[Tube::inner] == mm(586));
    CHECK(lengths.guard_half[Tube::outer] == mm(564));
    CHECK(lengths.guard_blank[Tube::inner] == mm(586 - 46));
    CHECK(lengths.guard_blank[Tube::outer] == mm(564 - 72));
}

TEST_CASE("half lengths are rounded down to the saw's step, and the shaft then closes less than a step short")
{
    const BuiltLengths lengths = built(build_order(), 702.9);
    CHECK(lengths.half[Tube::inner] == mm(596));
    CHECK(lengths.half[Tube::outer] == mm(574));
    CHECK(lengths.closed == mm(702));
    const BuiltLengths coarse = built(build_order(), 702, {5000, 1});
    CHECK(coarse.half[Tube::inner] == mm(595));
    CHECK(coarse.half[Tube::outer] == mm(570));
    CHECK(coarse.closed == mm(701));
    // What lacks less than 0.01 mm to a step counts as that step.
    CHECK(built(build_order(), 701.995).half[Tube::inner] == mm(596));
}

TEST_CASE("a guard never stops the shaft before its tubes do")
{
    BuildOrder order = build_order();
    Series series = build_catalogue().series[0];
    series.halves[Tube::outer].guard_shoulder = mm(130.4);
    const BuiltLengths lengths = build_lengths(series, order, mm(702), mm(10), millimetre_step);
    CHECK(lengths.guard_half[Tube::inner] == mm(571));  // 702 − 130.4 rounded down, not 596 − 10
    CHECK(lengths.guard_half[Tube::outer] == mm(564));
}

TEST_CASE("without a guard there is none to saw, and without a pin hole in the catalogue none to drill")
{
    BuildOrder order = build_order();
    order.guard = false;
    Series series = build_catalogue().series[0];
    series.halves[Tube::inner].pin_hole = mm(80);
    const BuiltLengths lengths = build_lengths(series, order, mm(702), mm(10), millimetre_step);
    CHECK_FALSE(lengths.guard_half[Tube::inner]);
    CHECK_FALSE(lengths.guard_blank[Tube::outer]);
    CHECK(lengths.pin_hole[Tube::inner] == mm(18));
    CHECK_FALSE(lengths.pin_hole[Tube::outer]);
}

TEST_CASE("what the series must state to be built is named")
{
    Series series = build_catalogue().series[0];
    CHECK(unstated_for_building(series, build_order()).empty());
    series.halves[Tube::inner].shoulder.reset();
    series.halves[Tube::outer].guard_seat_wide_angle.reset();
    CHECK(unstated_for_building(series, build_order()) == std::vector<HalfFigure>{{Tube::inner, HalfFigureKind::shoulder}, {Tube::outer, HalfFigureKind::guard_seat_wide_angle}});
    BuildOrder order = build_order();
    order.guard = false;
    series.halves[Tube::outer].seat.reset();
    CHECK(unstated_for_building(series, order) == std::vector<HalfFigure>{{Tube::inner, HalfFigureKind::shoulder}, {Tube::outer, HalfFigureKind::seat}});
}
