// Saw plans in words: each sentence whole, in both units.
#include "saw/saw_words.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

namespace {

const Wording mm(Units::mm), inches(Units::in);

// Of one bar that costs `cost` and is 1000 mm long.
SawOrder costing(std::int64_t cost, std::int64_t bound)
{
    SawOrder order;
    order.fetch = {{Length::millimetres(1000), cost * cost_unit, 1}};
    order.plan.cost = cost * cost_unit;
    order.plan.lower_bound = bound * cost_unit;
    order.plan.proven_optimal = cost == bound;
    return order;
}

}  // namespace

TEST_CASE("a plan's cost and its bound are one sentence, which says what the cost counts")
{
    CHECK(cost_and_bound(costing(1000, 1000), mm) == "Cost 1000, which is the bars' length in mm, for no cost is stated; proven: no plan costs less.");
    CHECK(cost_and_bound(costing(48, 48), mm) == "Cost 48 by the costs stated of the bars; proven: no plan costs less.");
    CHECK(cost_and_bound(costing(1000, 990), mm) == "Cost 1000, which is the bars' length in mm, for no cost is stated; no plan costs less than 990, which is 1 % below this plan.");
    SawOrder both = costing(48, 48);
    both.fetch.push_back({Length::millimetres(20), 20 * cost_unit, 1});
    CHECK(cost_and_bound(both, mm) == "Costs stated: 48; bars without one: 20 mm. They have no sum, so nothing is said of whether another plan costs less: state the cost of every bar.");
    both.fetch.front().cost = 0;
    both.plan.cost = both.plan.lower_bound = 20 * cost_unit;
    CHECK(cost_and_bound(both, mm) == "Cost 20, which is the length in mm of the bars but those that cost nothing; proven: no plan costs less.");
}

TEST_CASE("a piece that fits no bar is said with the longest bar, in the documents' units")
{
    const SawFinding found = PieceFitsNoBar{Length::millimetres(1000), Length::millimetres(254)};
    CHECK(say(found, mm) == "1000 mm is longer than every bar; the longest bar holds 254 mm between its trims");
    CHECK(say(found, inches) == "39.370 in (1000 mm) is longer than every bar; the longest bar holds 10 in (254 mm) between its trims");
}

TEST_CASE("why the search ended is said unless it was finished")
{
    CHECK(say(SawEnd::finished, mm).empty());
    CHECK(say(SawEnd::time_was_up, mm) == "The time allowed was up: this is the best plan found in it.");
}
