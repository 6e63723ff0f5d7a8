#include "shaftcut/trade/build/plate.hpp"

#include "support/catch.hpp"
#include "support/orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Catalogue rated()
{
    Catalogue found = build_catalogue();
    found.connections = {{"slow", {540}, ""}, {"fast", {1000, 540}, ""}, {"flange", {}, ""}};
    found.series[0].ratings = {{540, 16'000}, {1000, 25'000}};
    return found;
}

PlateFigures figures(const char* tractor, const char* implement, std::optional<int> speed, const Catalogue& catalogue = rated())
{
    BuildOrder order = build_order();
    order.shaft.speed = speed;
    order.shaft.ends[End::tractor].connection = tractor;
    order.shaft.ends[End::implement].connection = implement;
    return plate_figures(order, catalogue, catalogue.series[0]);
}

}  // namespace

TEST_CASE("a plate's greatest speed is the least of what was ordered, what the ends may run at and what the series is rated at")
{
    CHECK(figures("slow", "fast", 1000).speed == 540);
    CHECK(figures("fast", "flange", 1000).speed == 1000);
    CHECK(figures("fast", "fast", 750).speed == 750);
    CHECK(figures("fast", "fast", {}).speed == 1000);
    Catalogue weak = rated();
    weak.series[0].ratings = {{540, 16'000}};
    CHECK(figures("fast", "fast", {}, weak).speed == 540);
    CHECK_FALSE(figures("flange", "flange", {}, build_catalogue()).speed);
}

TEST_CASE("a plate's power is what the series carries at that speed, and the torque what that makes")
{
    // 16 kW at 540 are 282.9 N m; between stated speeds the torque of the next higher one counts: 25 kW at 1000 are 238.7, 18.75 kW at 750.
    const PlateFigures stated = figures("slow", "slow", 540), between = figures("fast", "fast", 750);
    CHECK(stated.power == 16'000);
    CHECK(stated.torque == 282);
    CHECK(between.power == 18'750);
    CHECK(between.torque == 238);
    Catalogue unrated = rated();
    unrated.series[0].ratings.clear();
    CHECK_FALSE(figures("slow", "slow", 540, unrated).power);
}
