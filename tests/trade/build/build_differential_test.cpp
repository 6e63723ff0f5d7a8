// Building to order against a second implementation, on random orders: 10,000 in every run of the tests, and as many as the
// environment variable SHAFTCUT_DIFFERENTIAL_JOBS says. Order number n is the same on every machine.
#include <map>

#include "shaftcut/trade/build/build_plan.hpp"
#include "support/differences.hpp"
#include "support/plain/plain_build.hpp"
#include "support/drawn/random_orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

void compare_lengths(Differences& found, const BuiltShaft& program, const plain::PlainBuilt& plain)
{
    found.compare("closed", program.lengths.closed.um(), plain.closed);
    for (const Tube tube : both_tubes) {
        const std::string name = to_word(tube);
        const std::size_t i = static_cast<std::size_t>(tube);
        found.compare(name + " half", program.lengths.half[tube].um(), plain.half[i]);
        found.compare(name + " blank", program.lengths.blank[tube].um(), plain.blank[i]);
        found.compare(name + " guard half", um(program.lengths.guard_half[tube]), plain.guard_half[i]);
        found.compare(name + " guard blank", um(program.lengths.guard_blank[tube]), plain.guard_blank[i]);
    }
    for (const Range range : all_ranges) {
        const auto& longest = program.use.longest[range];
        found.compare(std::string("pulled ") + to_word(range), longest ? plain::Maybe((*longest)[Reference::inner_cross].um()) : std::nullopt,
                      plain.pulled[static_cast<std::size_t>(range)]);
    }
}

std::string differences(const OrderWorld& world)
{
    Differences found;
    const BuildPlan program = plan_build(world.order, world.catalogue, world.workshop, world.units);
    const plain::PlainBuildAnswer plain = plain::build_answer(world.order, world.catalogue, world.workshop, world.units);
    found.compare("built", program.built.has_value(), plain.built.has_value());
    found.compare("held", program.verdict == BuildVerdict::held, plain.held);
    if (program.built && plain.built) compare_lengths(found, *program.built, *plain.built);
    if (plain.checks) compare_checks(found, program.checks, *plain.checks);
    return found.text();
}

}  // namespace

TEST_CASE("the program and a second implementation of building agree on random orders")
{
    check_all_agree(10'000, [](std::uint64_t number) { return differences(random_order(number)); });
}

TEST_CASE("the random orders are built, held and refused, by closed length and by fit")
{
    std::map<std::pair<bool, BuildVerdict>, int> reached;
    for (std::uint64_t number = 0; number < 2'000; ++number) {
        const OrderWorld world = random_order(number);
        const BuildPlan plan = plan_build(world.order, world.catalogue, world.workshop, world.units);
        ++reached[{world.order.closed.has_value(), plan.verdict}];
    }
    for (const auto& [which, count] : reached) CHECK(count > 50);
    CHECK(reached.size() == 6);
}
