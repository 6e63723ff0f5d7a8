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

TEST_CASE("operations come in the order of the work")
{
    using enum Work;
    CHECK(works(planned(build_order())) == std::vector<Work>{saw, deburr, drill, yoke, cross, cross, grease, phase, bearing, guard, phase, chain, label, check, check, check});
    BuildOrder order = build_order();
    order.guard = false;
    order.shaft.ends[End::implement].device = Device::overrunning_clutch;
    CHECK(works(planned(order)) == std::vector<Work>{saw, deburr, drill, yoke, cross, cross, device, grease, phase, label, check, check, check});
}

// A guard half goes on from its half's free end, which is inside the other half once they are together.
TEST_CASE("guards are fitted while the halves are apart")
{
    const BuildPlan plan = planned(build_order());
    const std::vector<Operation>& operations = plan.built->operations;
    const auto at = [&](const std::string& words) {
        return std::find_if(operations.begin(), operations.end(), [&](const Operation& operation) { return say(operation, wording_of(plan)).find(words) != std::string::npos; }) - operations.begin();
    };
    CHECK(at("part them again") < at("Push each guard tube over its half"));
    CHECK(at("Push each guard tube over its half") < at("Put the halves together, guard in guard"));
    BuildOrder bare = build_order();
    bare.guard = false;
    CHECK(text_of(planned(bare), Work::phase).find("part them again") == std::string::npos);
}

TEST_CASE("each operation has the figures that it needs")
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::inner].pin_hole = mm(80);
    catalogue.series[0].halves[Tube::outer].pin_hole = mm(75);
    const BuildPlan plan = plan_build(build_order(), catalogue, workshop(), Units::mm);
    CHECK(text_of(plan, Work::saw) == "Saw the inner tube to 534 mm, the outer tube to 516 mm, the inner guard tube to 540 mm and the outer guard tube to 492 mm, each ± 1 mm.\n");
    CHECK(text_of(plan, Work::drill) == "Drill the pin holes, centre at 18 mm from the inner tube's yoke end and at 17 mm from the outer tube's yoke end.\n");
    CHECK(text_of(plan, Work::guard).find("the inner one 10 mm and the outer one 10 mm") != std::string::npos);
    CHECK(text_of(plan, Work::check).find("from the outer cross of the wide-angle joint, joints straight: 766 mm ± 1 mm.") != std::string::npos);
    // 905 between the inner crosses is 969 from the outer one, where 596 + 574 − 905 is left.
    CHECK(text_of(plan, Work::check).find("Pull out to 969 mm in the same way: it slides freely, 265 mm of overlap left.") != std::string::npos);
}

TEST_CASE("where the catalogue does not say where a pin hole is, the yoke's own hole does")
{
    CHECK(text_of(planned(build_order()), Work::drill).find("through the yokes' own holes") != std::string::npos);
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::outer].pin_hole = mm(75);
    const BuildPlan one = plan_build(build_order(), catalogue, workshop(), Units::mm);
    CHECK(text_of(one, Work::drill).find("17 mm from the outer tube's yoke end; the other tube's through its yoke's own hole") != std::string::npos);
}

TEST_CASE("a tube that must not be sawn is fetched")
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::inner].shortening_forbidden = true;
    const std::string one = text_of(plan_build(build_order(), catalogue, workshop(), Units::mm), Work::saw);
    CHECK(one.find("Saw the outer tube to 516 mm") == 0);
    CHECK(one.find("Fetch the inner tube made to 534 mm; do not saw it.") != std::string::npos);
    catalogue.series[0].shortening_forbidden = true;
    BuildOrder order = build_order();
    order.guard = false;
    CHECK(text_of(plan_build(order, catalogue, workshop(), Units::mm), Work::saw).find("Fetch the inner tube") == 0);
}

// A section that repeats n times a turn goes together in n ways; a fork repeats every half turn.
TEST_CASE("how tubes of each shape go together in phase is said")
{
    CHECK(text_of(of_shape(Shape::lemon), Work::phase).find("both are in phase") != std::string::npos);
    CHECK(text_of(of_shape(Shape::triangular), Work::phase).find("three ways, of which one") != std::string::npos);
    CHECK(text_of(of_shape(Shape::square), Work::phase).find("four ways, of which two") != std::string::npos);
    for (const Shape shape : {Shape::star, Shape::splined, Shape::other}) CHECK(text_of(of_shape(shape), Work::phase).find("can be put together out of phase") != std::string::npos);
}

TEST_CASE("of a closed length alone the label says how far it may be pulled, and so far it is pulled to try it")
{
    const BuildPlan plan = planned(closed_order(860));
    CHECK(text_of(plan, Work::label).find("closed 860 mm from the outer cross of the wide-angle joint; turning, pull to 1230 mm at most") != std::string::npos);
    CHECK(text_of(plan, Work::check).find("Pull out to 1318 mm") != std::string::npos);
    CHECK(text_of(planned(build_order()), Work::label).find("pull to") == std::string::npos);
}

TEST_CASE("in inches sawn lengths are exact and the millimetres stand beside")
{
    const BuildPlan plan = planned(build_order(), Units::in);
    CHECK(text_of(plan, Work::saw).find(" in (") != std::string::npos);
}

// 17 mm is 0.6693 in; the nearest sixteenth, 11/16 in, would be 17.46 mm.
TEST_CASE("where a hole is drilled stays in millimetres first")
{
    CHECK(hole_length(Length::millimetres(17), Wording(Units::mm)) == "17 mm");
    CHECK(hole_length(Length::millimetres(17), Wording(Units::in)) == "17 mm (0.669 in)");
    CHECK(hole_length(Length::micrometres(82'500), Wording(Units::in)) == "82.5 mm (3.248 in)");
}
