#include "shaftcut/trade/hitch/placement.hpp"

#include <cmath>
#include <numbers>

#include "support/catch.hpp"
#include "support/machines.hpp"

using namespace shaftcut;
using support::angle;
using support::length;

namespace {

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

Vector groove_at(const Trailed& machine, double turn, double pitch, double roll)
{
    return input_shaft(machine, {radians(turn), radians(pitch), radians(roll)}).groove;
}

Linkage closed(const Mounted& machine, double height)
{
    const auto links = linkage(machine, height);
    REQUIRE(links);
    return *links;
}

// Another way to the upper hitch point: the mast is leant from upright until the top link has its length, by halving. The
// higher point has the mast on the rear side of its line to the top link's pivot.
Vector upper_hitch_by_leaning(const Mounted& machine, Vector hitch)
{
    const Vector pivot{machine.top_pivot_behind.value.mm(), 0, machine.top_pivot_height.value.mm()};
    const double mast = machine.mast.value.mm();
    const auto upper = [&](double lean) { return hitch + mast * Vector{-std::sin(lean), 0, std::cos(lean)}; };
    double near = std::atan2(hitch.x - pivot.x, pivot.z - hitch.z);  // leaning straight at the pivot
    double far = near - std::numbers::pi;
    for (int i = 0; i < 60; ++i) {
        const double middle = (near + far) / 2;
        (size(upper(middle) - pivot) < machine.top_link.value.mm() ? near : far) = middle;
    }
    return upper(near);
}

}  // namespace

TEST_CASE("a trailed machine turns right, dips its rear and lifts its right side by positive angles")
{
    Trailed machine = support::level_machine(400, 1000, support::turns(0, 0, 0));
    machine.input_left = length(100);
    const Vector straight = groove_at(machine, 0, 0, 0);
    CHECK(straight.x == Approx(1400));
    CHECK(straight.y == Approx(-100));
    CHECK(straight.z == Approx(600));
    CHECK(groove_at(machine, 10, 0, 0).y > straight.y);
    CHECK(groove_at(machine, 0, 10, 0).z < straight.z);
    CHECK(groove_at(machine, 0, 0, 10).z < straight.z);  // the input shaft is left of the middle
    CHECK(groove_at(machine, 90, 0, 0).x == Approx(500));
    CHECK(groove_at(machine, 90, 0, 0).y == Approx(1000));
    // Turn is outermost: a pitched machine turned through 90 degrees has its rear down on the right.
    const Vector both = groove_at(machine, 90, 30, 0);
    CHECK(both.y == Approx(1000 * std::cos(radians(30))));
    CHECK(both.z == Approx(600 - 500));
    machine.input_tilt = angle(20);
    CHECK(input_shaft(machine, {}).axis.z == Approx(std::sin(radians(20))));
    CHECK(input_shaft(machine, {0, radians(20), 0}).axis.z == Approx(0).margin(1e-12));
}

TEST_CASE("a parallelogram carries its mast upright")
{
    Mounted machine = support::common_linkage({});
    machine.top_pivot_behind = machine.lower_pivot_behind;
    machine.top_pivot_height = length(500 + 610);
    machine.top_link = machine.lower_link;
    for (const double height : {200.0, 500.0, 850.0}) {
        const Linkage links = closed(machine, height);
        CHECK(links.upper_hitch.x == Approx(links.lower_hitch.x));
        CHECK(links.upper_hitch.z == Approx(height + 610));
        CHECK(links.input.groove.x == Approx(links.lower_hitch.x + 300));
        CHECK(links.input.groove.z == Approx(height + 250));
        CHECK(links.input.axis.x == Approx(1));
    }
    machine.input_tilt = angle(20);
    CHECK(closed(machine, 500).input.axis.x == Approx(std::cos(radians(20))));
    CHECK(closed(machine, 500).input.axis.z == Approx(std::sin(radians(20))));
}

TEST_CASE("the linkage closes as leaning the mast closes it")
{
    support::Dice dice(3);
    for (int i = 0; i < 100; ++i) {
        const auto machine = std::get<Mounted>(support::random_mounted(dice).machine);
        for (const Dimension* height : {&machine.ranges.working->lowest, &machine.ranges.working->highest}) {
            const Linkage links = closed(machine, height->value.mm());
            CHECK(size(links.lower_hitch - links.lower_pivot) == Approx(machine.lower_link.value.mm()));
            CHECK(size(links.upper_hitch - links.lower_hitch) == Approx(machine.mast.value.mm()));
            CHECK(size(links.upper_hitch - links.top_pivot) == Approx(machine.top_link.value.mm()));
            const Vector leant = upper_hitch_by_leaning(machine, links.lower_hitch);
            CHECK(size(leant - links.upper_hitch) == Approx(0).margin(1e-6));
        }
    }
}

TEST_CASE("reachable heights are those at which the linkage closes")
{
    support::Dice dice(4);
    for (int i = 0; i < 100; ++i) {
        const auto machine = std::get<Mounted>(support::random_mounted(dice).machine);
        for (const HeightSpan& span : reachable_heights(machine)) {
            const auto stands = [&](double height) {
                const auto links = linkage(machine, height);
                return links && links->lower_hitch.x > links->top_pivot.x;
            };
            CHECK(stands(span.lowest + 0.01));
            CHECK(stands(span.highest - 0.01));
            CHECK_FALSE(stands(span.lowest - 0.01));
            CHECK_FALSE(stands(span.highest + 0.01));
        }
    }
}

TEST_CASE("yokes put the crosses on the shafts' axes")
{
    const Machine machine = support::level_machine(500, 600, support::turns(0, 0, 0));
    HitchShaft shaft{support::end(60, 0), support::end(80, 0)};
    CHECK(shaft_in_place(machine, shaft, {})->length == Approx(1100 - 60 - 80));
    shaft.tractor.spacing = Length::millimetres(70);
    shaft.implement.spacing = Length::millimetres(90);
    CHECK(shaft_in_place(machine, shaft, {})->length == Approx(1100 - 60 - 80 - 70 - 90));
}
