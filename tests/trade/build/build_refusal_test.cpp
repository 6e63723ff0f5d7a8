// Orders that cannot be built: why, and what could be built instead.
#include "shaftcut/trade/build/build_plan.hpp"

#include "support/catch.hpp"
#include "support/orders.hpp"
#include "support/sentences.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("an exposed lock on a primary shaft is refused, on a secondary one it is not")
{
    BuildOrder order = build_order();
    order.shaft.ends[End::tractor].lock = Lock::exposed_push_pin;
    const BuildPlan refused = planned(order);
    CHECK(refused.verdict == BuildVerdict::refused);
    CHECK_FALSE(refused.built);
    CHECK(says(refused.ways_out, "covered-collar"));
    CHECK_FALSE(says(refused.ways_out, "year"));
    order.shaft.built = 2015;  // no year that somebody wrote makes a new shaft an old one
    CHECK_FALSE(planned(order).built);
    order.shaft.role = Role::secondary;
    CHECK(planned(order).built);
}

TEST_CASE("a new shaft has no condition that it came in, and no power is stated of it")
{
    const BuildPlan plan = planned(build_order());
    CHECK(check(plan, CheckId::condition).result == CheckResult::not_checked);
    CHECK(basis_said(check(plan, CheckId::condition)) == "the shaft is made new");
    CHECK(check(plan, CheckId::rating).result == CheckResult::not_checked);
}

TEST_CASE("a refused order says which shortest and which longest could be built, and each of them can")
{
    BuildOrder order = build_order();
    order.fits = {reaching(600, 760)};
    const BuildPlan refused = planned(order);
    REQUIRE_FALSE(refused.built);
    CHECK(check(refused, CheckId::overlap_turning).result == CheckResult::fail);
    // Built to close at 560: halves 454 and 432, and 150 must be left.
    CHECK(says(refused.ways_out, "PTO turning of 736 mm"));
    order.fits = {reaching(600, 736)};
    CHECK(planned(order).built);
    order.fits = {reaching(600, 736.1)};
    CHECK_FALSE(planned(order).built);
    // 2 (S − 40) − 234 − 760 of overlap must be 150.
    CHECK(says(refused.ways_out, "shortest position were 612 mm"));
    order.fits = {reaching(612, 760)};
    CHECK(planned(order).built);
    order.fits = {reaching(611, 760)};
    CHECK_FALSE(planned(order).built);
}

TEST_CASE("another series that could be built to the same lengths is named, and only such a one")
{
    Catalogue catalogue = build_catalogue();
    Series stubby = catalogue.series[0];
    stubby.name = "Stubby";
    stubby.halves[Tube::inner].shoulder = mm(60);
    stubby.halves[Tube::outer].shoulder = mm(60);
    for (const Tube tube : both_tubes) stubby.halves[tube].seat = mm(50);
    Series jointless = stubby;
    jointless.name = "Jointless";
    jointless.wide_angle.reset();
    catalogue.series.push_back(stubby);
    catalogue.series.push_back(jointless);
    Series long_yoked = catalogue.series[0];
    long_yoked.name = "Longyoke";
    long_yoked.halves[Tube::inner].shoulder = mm(150);
    catalogue.series.push_back(long_yoked);
    BuildOrder order = build_order();
    order.fits = {reaching(600, 760)};
    const BuildPlan refused = planned_with(order, catalogue);
    CHECK(says(refused.ways_out, "Stubby could be built"));
    CHECK_FALSE(says(refused.ways_out, "Jointless"));
    CHECK_FALSE(says(refused.ways_out, "Longyoke"));
    order.shaft.series = "Stubby";
    CHECK(planned_with(order, catalogue).built);
}

TEST_CASE("a closed length at which the shaft may not turn at all is refused, and the shortest that may is named")
{
    const BuildPlan refused = planned(closed_order(480, Reference::inner_cross));
    CHECK(refused.built);
    const BuildPlan too_short = planned(closed_order(400, Reference::inner_cross));
    REQUIRE_FALSE(too_short.built);
    // At 400 + 40 the halves 294 and 272 overlap by 126.
    CHECK(check(too_short, CheckId::overlap_turning).value == 126'000);
    CHECK(says(too_short.ways_out, "424 mm from the inner cross"));
    CHECK(planned(closed_order(424, Reference::inner_cross)).built);
    CHECK_FALSE(planned(closed_order(423, Reference::inner_cross)).built);
}

TEST_CASE("nothing absurd is built: no closed length, one within the shoulders, lengths that contradict each other")
{
    for (const double closed : {0.0, 1.0, 100.0, 170.0, 200.0}) {
        const BuildPlan plan = planned(closed_order(closed));
        INFO(closed);
        CHECK_FALSE(plan.built);
        CHECK_FALSE(reasons_of(plan).empty());
    }
    BuildOrder order = build_order();
    order.fits = {reaching(850, 742)};
    const BuildPlan contradicts = planned(order);
    CHECK_FALSE(contradicts.built);
    CHECK(says(contradicts.ways_out, "what contradicts"));
    order.fits = {reaching(20, 60)};
    CHECK_FALSE(planned(order).built);
}

TEST_CASE("what the catalogue does not state is named, and nothing is guessed")
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::inner].seat.reset();
    const BuildPlan plan = planned_with(build_order(), catalogue);
    CHECK_FALSE(plan.built);
    CHECK(says(reasons_of(plan), "the inner half's seat"));
    CHECK(check(plan, CheckId::overlap_turning).result == CheckResult::not_checked);
    CHECK(check(plan, CheckId::locking).result == CheckResult::pass);
}

TEST_CASE("fits between grooves need the yokes' lengths")
{
    BuildOrder order = build_order();
    order.fits[0].between = Between::grooves;
    order.fits[0].reference.reset();
    // Two yokes of 60 and a wide-angle joint of 64 beyond the telescoping length.
    order.fits[0].shortest->length += mm(184);
    for (const Range range : all_ranges) order.fits[0].longest[range]->length += mm(184);
    const BuildPlan built = planned(order);
    REQUIRE(built.built);
    CHECK(built.built->lengths.closed == mm(702));
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].yokes.clear();
    const BuildPlan plan = planned_with(order, catalogue);
    CHECK_FALSE(plan.built);
    CHECK(says(plan.ways_out, "between the crosses"));
}

// The shortest is known to ± 2, the sawn lengths to ± 1.
TEST_CASE("a clearance that tolerances eat up is refused, and the clearance to ask for is named")
{
    BuildOrder order = build_order();
    order.limits[Limit::closing_clearance] = LimitSetting{{3'000, 1}, {}};
    const BuildPlan refused = planned(order);
    CHECK_FALSE(refused.built);
    CHECK(says(refused.ways_out, "closing clearance of more than 3 mm"));
    CHECK_FALSE(says(refused.ways_out, "however far"));
    order.limits[Limit::closing_clearance]->value.numerator = 3'020;
    CHECK(planned(order).built);
}

// The longest piece is the inner guard tube: closed − 106, less 10, less its seat of 46.
TEST_CASE("a shaft that is longer than any bar is refused, and asks for the units only where inches were read")
{
    BuildOrder order = closed_order(21'082, Reference::inner_cross);
    order.units = Units::in;
    const BuildPlan inches = planned(order);
    CHECK_FALSE(inches.built);
    CHECK(says(reasons_of(inches), "longer than the longest bar"));
    CHECK(says(reasons_of(inches), "Were millimetres read as inches? The closed length was read as 830 in; 830 mm"));
    Workshop of_short_bars = workshop();
    of_short_bars.stock = {SawStock{mm(2'000), std::nullopt, {}}};
    const auto planned_of = [&](std::int64_t closed) { return plan_build(closed_order(static_cast<double>(closed), Reference::inner_cross), build_catalogue(), of_short_bars, Units::mm); };
    CHECK(planned_of(2'162).built);
    const BuildPlan longer = planned_of(2'163);
    CHECK_FALSE(longer.built);
    CHECK_FALSE(says(reasons_of(longer), "inches"));
    CHECK(says(longer.ways_out, "closed length of 2162 mm from the inner cross at most"));
}
