// A list of orders as one batch: sums, pieces and the bars they are sawn from.
#include "shaftcut/trade/build/batch.hpp"

#include <map>

#include "support/catch.hpp"
#include "support/orders.hpp"
#include "support/drawn/random_orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Batch batch_of(const std::vector<BuildOrder>& orders, const Catalogue& catalogue = build_catalogue())
{
    BatchBuilder builder("list", "owner", Units::mm);
    for (const BuildOrder& order : orders) builder.add(plan_build(order, catalogue, workshop(), Units::mm), catalogue.series[0]);
    return builder.take();
}

std::vector<ProfileTask> tasks_of(const Batch& batch, const BatchSaw& saw)
{
    return saw_tasks(batch, saw, [](const BatchPiece& piece) { return piece_label(piece, Wording(Units::mm)); });
}

BuildOrder numbered(BuildOrder order, const std::string& number, int count)
{
    order.order = number;
    order.count = count;
    return order;
}

BuildOrder refused()
{
    BuildOrder order = build_order();
    order.shaft.ends[End::tractor].lock = Lock::exposed_collar;
    return order;
}

const BatchSaw bars{mm(3), mm(5), mm(0), mm(500), {{mm(6000), std::nullopt, 6'000'000'000}, {mm(900), 4, 0}}, {}};

}  // namespace

TEST_CASE("parts summed over the batch are the sum of the orders', of those that can be built")
{
    std::vector<BuildOrder> orders;
    std::map<PartName, std::int64_t> sums;
    BatchBuilder builder("random", "", Units::mm);
    for (std::uint64_t number = 0; number < 900; ++number) {
        const OrderWorld world = random_order(number);
        const BuildPlan plan = plan_build(world.order, world.catalogue, world.workshop, world.units);
        builder.add(plan, world.catalogue.series[0]);
        if (!plan.built) continue;
        for (const ShaftPart& part : plan.built->parts) sums[part.name] += part.count * world.order.count;
    }
    const Batch batch = builder.take();
    CHECK(batch.orders.size() == 900);
    std::map<PartName, std::int64_t> of_batch;
    for (const PartCount& part : batch.parts) {
        CHECK(of_batch.count(part.name) == 0);
        of_batch[part.name] = part.count;
    }
    CHECK(of_batch == sums);
    CHECK(sums.size() >= 10);
}

TEST_CASE("every piece of every order that can be built is in the task of its profile, labelled by order and part")
{
    const Batch batch = batch_of({numbered(build_order(), "A-1", 2), numbered(closed_order(860), "A-2", 1), numbered(refused(), "A-3", 5)});
    CHECK(batch.pieces.size() == 8);
    const auto tasks = tasks_of(batch, bars);
    REQUIRE(tasks.size() == 2);  // guard tubes have no bars here
    CHECK(tasks[0].profile == "Alder 2 inner tube");
    REQUIRE(tasks[0].task.pieces.size() == 2);
    CHECK(tasks[0].task.pieces[0].length == mm(534));
    CHECK(tasks[0].task.pieces[0].count == 2);
    CHECK(tasks[0].task.pieces[0].label == "A-1 inner tube");
    CHECK(tasks[0].task.pieces[1].length == mm(628));
    CHECK(tasks[1].task.pieces[1].label == "A-2 outer tube");
    CHECK(tasks[0].task.kerf == mm(3));
    CHECK(tasks[0].task.trim_start == mm(5));
    CHECK(profiles_without_bars(batch, bars) == std::vector<std::string>{"Alder 2 inner guard tube", "Alder 2 outer guard tube"});
}

TEST_CASE("bars of one profile are for it alone; of the others only those without a count, for a counted bar cannot be of each profile")
{
    const Batch batch = batch_of({build_order()});
    const auto shared = tasks_of(batch, bars);
    REQUIRE(shared[0].task.stock.size() == 1);
    CHECK(shared[0].task.stock[0].length == mm(6000));
    BatchSaw own = bars;
    own.profile_stock = {{"Alder 2 inner tube", {mm(1200), 3, 0}}, {"Alder 2 outer guard tube", {mm(2000), std::nullopt, 1}}};
    const auto tasks = tasks_of(batch, own);
    REQUIRE(tasks.size() == 3);
    CHECK(tasks[0].task.stock.size() == 1);
    CHECK(tasks[0].task.stock[0].count == 3);
    CHECK(tasks[2].profile == "Alder 2 outer guard tube");
}

TEST_CASE("tubes of one name are one profile, whatever their half")
{
    Catalogue catalogue = build_catalogue();
    for (CataloguePart& part : catalogue.series[0].parts)
        if (part.kind == PartKind::tube) part.name = "the only tube";
    const auto tasks = tasks_of(batch_of({build_order()}, catalogue), bars);
    REQUIRE(tasks.size() == 1);
    CHECK(tasks[0].task.pieces.size() == 2);
}

TEST_CASE("a tube that must not be sawn is in no task, and is still among the pieces")
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::inner].shortening_forbidden = true;
    const Batch batch = batch_of({build_order()}, catalogue);
    const auto tasks = tasks_of(batch, bars);
    REQUIRE(tasks.size() == 1);
    CHECK(tasks[0].profile == "Alder 2 outer tube");
    CHECK_FALSE(batch.pieces[0].sawn);
}

TEST_CASE("a batch keeps of a refused order its reasons and nothing to saw or fetch")
{
    const Batch batch = batch_of({refused()});
    CHECK_FALSE(batch.orders[0].built);
    CHECK(batch.orders[0].parts.empty());
    CHECK_FALSE(batch.orders[0].reasons.empty());
    CHECK(batch.parts.empty());
    CHECK(batch.pieces.empty());
    CHECK(tasks_of(batch, bars).empty());
}

// Both tubes: 534 mm at 3.32 kg/m is 1773 g, 516 mm at 3.77 kg/m is 1945 g.
TEST_CASE("the mass of an order's tubes is that of all its shafts")
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::inner].mass_per_metre = 3'320;
    CHECK_FALSE(batch_of({numbered(build_order(), "A-1", 2)}, catalogue).orders[0].mass);
    catalogue.series[0].halves[Tube::outer].mass_per_metre = 3'770;
    CHECK(batch_of({numbered(build_order(), "A-1", 2)}, catalogue).orders[0].mass == 2 * (1'773 + 1'945));
}
