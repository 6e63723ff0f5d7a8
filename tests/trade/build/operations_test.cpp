// The work on a shaft made to order: its order, and the figures that each operation needs.
#include "shaftcut/trade/build/operations.hpp"

#include "support/catch.hpp"
#include "support/orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::vector<Work> works(const BuildPlan& plan)
{
    std::vector<Work> list;
    for (const Operation& operation : plan.built->operations) list.push_back(operation.work);
    return list;
}

std::string text_of(const BuildPlan& plan, Work work)
{
    std::string text;
    for (const Operation& operation : plan.built->operations)
        if (operation.work == work) text += say(operation, wording_of(plan)) + "\n";
    return text;
}

BuildPlan of_shape(Shape shape)
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].shape = shape;
    return plan_build(build_order(), catalogue, workshop(), Units::mm);
}

}  // namespace

TEST_CASE("operations come in the order of the bench, without those of a guard or a device where there is none")
{
    using enum Work;
    CHECK(works(planned(build_order())) == std::vector<Work>{pieces, outer_yoke, inner_yoke, crosses, closed, grease, guards, join, fittings, chains, papers});
    BuildOrder order = build_order();
    order.guard = false;
    for (const End end : both_ends) order.shaft.ends[end].lock = Lock::clamp_bolt;
    CHECK(works(planned(order)) == std::vector<Work>{pieces, outer_yoke, inner_yoke, crosses, closed, grease, join, papers});
    order.shaft.ends[End::implement].device = Device::overrunning_clutch;
    CHECK(works(planned(order)) == std::vector<Work>{pieces, outer_yoke, inner_yoke, crosses, closed, grease, join, fittings, papers});
}

// Before it is fixed nothing is lost, and before it is greased nothing slips; a guard half goes on from its half's free end.
TEST_CASE("the shaft is measured dry and bare, and the forks are lined up before the inner yoke is fixed")
{
    const BuildPlan plan = planned(build_order());
    const std::string inner = text_of(plan, Work::inner_yoke);
    CHECK(inner.find("forks in one plane") < inner.find("Drill"));
    CHECK(text_of(plan, Work::closed).find("dry") != std::string::npos);
    CHECK(text_of(plan, Work::grease).find("Part the halves.") == 0);
    CHECK(text_of(plan, Work::join).find("O as in step 5") != std::string::npos);
    CHECK(works(plan)[4] == Work::closed);
    CHECK(text_of(plan, Work::chains).find("one chain to each guard half") != std::string::npos);
}

TEST_CASE("each operation has the figures that it needs")
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::inner].pin_hole = mm(80);
    catalogue.series[0].halves[Tube::outer].pin_hole = mm(75);
    const BuildPlan plan = plan_build(build_order(), catalogue, workshop(), Units::mm);
    CHECK(text_of(plan, Work::pieces).find("± 1 mm: inner tube 534 mm ____, outer tube 516 mm ____, inner guard tube 540 mm ____ and outer guard tube 492 mm ____.") != std::string::npos);
    CHECK(text_of(plan, Work::inner_yoke).find("centre at 18 mm from the tube's yoke end") != std::string::npos);
    CHECK(text_of(plan, Work::outer_yoke).find("centre at 17 mm from the tube's yoke end") != std::string::npos);
    CHECK(text_of(plan, Work::guards).find("inner 10 mm ____, outer 10 mm ____") != std::string::npos);
}

// The saw is within 1 mm, the tape within 2 mm.
TEST_CASE("the closed length may be off by the saw's tolerance and the tape's")
{
    const BuildPlan plan = planned(build_order());
    CHECK(closed_plus_minus(plan) == mm(3));
    CHECK(text_of(plan, Work::closed).find("from the outer cross of the wide-angle joint 766 mm ± 3 mm") != std::string::npos);
}

TEST_CASE("where the catalogue does not say where a pin hole is, the yoke's own hole does")
{
    for (const Work work : {Work::outer_yoke, Work::inner_yoke}) CHECK(text_of(planned(build_order()), work).find("through the yoke's own hole") != std::string::npos);
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::outer].pin_hole = mm(75);
    const BuildPlan one = plan_build(build_order(), catalogue, workshop(), Units::mm);
    CHECK(text_of(one, Work::outer_yoke).find("centre at 17 mm") != std::string::npos);
    CHECK(text_of(one, Work::inner_yoke).find("through the yoke's own hole") != std::string::npos);
}

TEST_CASE("a tube that must not be sawn is fetched")
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::inner].shortening_forbidden = true;
    const std::string one = text_of(plan_build(build_order(), catalogue, workshop(), Units::mm), Work::pieces);
    CHECK(one.find(": outer tube 516 mm ____") != std::string::npos);
    CHECK(one.find("the inner tube that was fetched, 534 mm ____; do not saw it.") != std::string::npos);
    catalogue.series[0].shortening_forbidden = true;
    BuildOrder order = build_order();
    order.guard = false;
    CHECK(text_of(plan_build(order, catalogue, workshop(), Units::mm), Work::pieces).find("Measure the inner tube that was fetched") == 0);
}

// A section that repeats n times a turn goes together in n ways; a fork repeats every half turn.
TEST_CASE("how tubes of each shape go together in phase is said")
{
    CHECK(text_of(of_shape(Shape::lemon), Work::inner_yoke).find("both are in phase") != std::string::npos);
    CHECK(text_of(of_shape(Shape::triangular), Work::inner_yoke).find("three ways, of which one") != std::string::npos);
    CHECK(text_of(of_shape(Shape::square), Work::inner_yoke).find("four ways, of which two") != std::string::npos);
    for (const Shape shape : {Shape::star, Shape::splined, Shape::other}) CHECK(text_of(of_shape(shape), Work::inner_yoke).find("can be put together out of phase") != std::string::npos);
}

TEST_CASE("a device that sits where the yoke would is fitted with the cross, any other by itself")
{
    Catalogue catalogue = build_catalogue();
    BuildOrder order = build_order();
    order.shaft.ends[End::implement].device = Device::slip_clutch;
    const auto text = [&](Work work) { return text_of(plan_build(order, catalogue, workshop(), Units::mm), work); };
    CHECK(text(Work::fittings).find("At the implement end fit the slip-clutch") != std::string::npos);
    CHECK(text(Work::crosses).find("tube yoke and the 1-3/8-6 yoke") != std::string::npos);
    catalogue.series[0].parts.back().replaces = Replaces::connection_yoke;
    CHECK(text(Work::fittings).find("slip-clutch") == std::string::npos);
    CHECK(text(Work::crosses).find("tube yoke and the slip-clutch") != std::string::npos);
}

TEST_CASE("only a lock with a spring is tried")
{
    CHECK(text_of(planned(build_order()), Work::fittings) == "Pull the lock at the tractor end back and let go: it springs back.\n");
}

TEST_CASE("of a closed length alone the label says how far it may be pulled")
{
    const BuildPlan plan = planned(closed_order(860));
    CHECK(text_of(plan, Work::papers).find("closed 860 mm from the outer cross of the wide-angle joint; turning, pull to 1230 mm at most") != std::string::npos);
    CHECK(text_of(planned(build_order()), Work::papers).find("pull to") == std::string::npos);
}

TEST_CASE("in inches sawn lengths are exact and the millimetres stand beside")
{
    const BuildPlan plan = planned(build_order(), Units::in);
    CHECK(text_of(plan, Work::pieces).find(" in (") != std::string::npos);
}

// 17 mm is 0.6693 in; the nearest sixteenth, 11/16 in, would be 17.46 mm.
TEST_CASE("where a hole is drilled stays in millimetres first")
{
    CHECK(hole_length(Length::millimetres(17), Wording(Units::mm)) == "17 mm");
    CHECK(hole_length(Length::millimetres(17), Wording(Units::in)) == "17 mm (0.669 in)");
    CHECK(hole_length(Length::micrometres(82'500), Wording(Units::in)) == "82.5 mm (3.248 in)");
}
