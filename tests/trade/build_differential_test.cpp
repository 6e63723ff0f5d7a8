// Building to order against a second implementation, on random orders: 10,000 in every run of the tests, and as many as the
// environment variable SHAFTCUT_DIFFERENTIAL_JOBS says. Order number n is the same on every machine.
#include <cstdlib>
#include <map>

#include "shaftcut/trade/build_plan.hpp"
#include "support/catch.hpp"
#include "support/plain_build.hpp"
#include "support/random_orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

class Differences {
public:
    void compare(const std::string& what, plain::Maybe program, plain::Maybe plain)
    {
        if (program != plain) text_ += what + ": program " + word(program) + ", plain " + word(plain) + "\n";
    }
    const std::string& text() const { return text_; }

private:
    static std::string word(const plain::Maybe& figure) { return figure ? std::to_string(*figure) : "none"; }
    std::string text_;
};

plain::Maybe um(const std::optional<Length>& length) { return length ? plain::Maybe(length->um()) : std::nullopt; }

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

void compare_checks(Differences& found, const BuildPlan& program, const std::array<plain::PlainCheck, 16>& plain)
{
    for (std::size_t i = 0; i < plain.size(); ++i) {
        const Check& ours = program.checks[i];
        const std::string name = to_word(ours.id);
        found.compare(name + " result", static_cast<std::int64_t>(ours.result), static_cast<std::int64_t>(plain[i].result));
        found.compare(name + " value", ours.value, plain[i].value);
        found.compare(name + " worst", ours.worst, plain[i].worst);
        found.compare(name + " limit", ours.limit, plain[i].limit);
    }
}

std::string differences(const OrderWorld& world)
{
    Differences found;
    const BuildPlan program = plan_build(world.order, world.catalogue, world.workshop, world.units);
    const plain::PlainBuildAnswer plain = plain::build_answer(world.order, world.catalogue, world.workshop, world.units);
    found.compare("built", program.built.has_value(), plain.built.has_value());
    if (program.built && plain.built) compare_lengths(found, *program.built, *plain.built);
    if (plain.checks) compare_checks(found, program, *plain.checks);
    return found.text();
}

std::uint64_t orders_to_compare()
{
    const char* wanted = std::getenv("SHAFTCUT_DIFFERENTIAL_JOBS");
    return wanted ? std::strtoull(wanted, nullptr, 10) : 10'000;
}

}  // namespace

TEST_CASE("the program and a second implementation of building agree on random orders")
{
    int disagreements = 0;
    const std::uint64_t orders = orders_to_compare();
    for (std::uint64_t number = 0; number < orders && disagreements < 10; ++number) {
        const std::string found = differences(random_order(number));
        if (found.empty()) continue;
        ++disagreements;
        UNSCOPED_INFO("order " << number << "\n" << found);
    }
    CHECK(disagreements == 0);
}

TEST_CASE("the random orders are built and refused, by closed length and by fit")
{
    std::map<std::pair<bool, bool>, int> reached;
    for (std::uint64_t number = 0; number < 2'000; ++number) {
        const OrderWorld world = random_order(number);
        const BuildPlan plan = plan_build(world.order, world.catalogue, world.workshop, world.units);
        ++reached[{world.order.closed.has_value(), plan.built.has_value()}];
    }
    for (const auto& [which, count] : reached) CHECK(count > 50);
    CHECK(reached.size() == 4);
}
