// Saw plans whose optimum prices alone cannot prove: proofs by cases, against exhaustive search and a checker that enumerates.
#include <functional>

#include "shaftcut/trade/saw/saw.hpp"
#include "support/catch.hpp"
#include "support/saw/saw_case_checker.hpp"
#include "support/saw/saw_cases.hpp"
#include "support/saw/saw_checker.hpp"

using namespace shaftcut;

namespace {

// Pieces that divide the bar: fractions of bars full of one length come to less than a whole number that no whole bars reach. Found by a
// search over such lists; the optima are by exhaustive search, made again in the test.
const std::vector<SawTask> beyond_prices{
    test::plain_task(132, {{44, 5}, {33, 7}, {12, 17}}),
    test::plain_task(132, {{66, 2}, {44, 5}, {33, 6}, {12, 20}}),
    test::plain_task(132, {{44, 4}, {33, 7}, {12, 21}}),
    test::plain_task(132, {{66, 3}, {44, 5}, {33, 5}, {12, 17}}),
    test::plain_task(132, {{44, 3}, {33, 7}, {22, 8}, {12, 21}}),
    test::plain_task(420, {{140, 5}, {105, 7}, {60, 11}}),
    test::plain_task(420, {{140, 4}, {60, 13}, {42, 18}}),
    test::plain_task(60, {{30, 3}, {20, 5}, {12, 9}}),
    test::plain_task(84, {{42, 2}, {28, 5}, {21, 7}, {12, 11}}),
    test::plain_task(210, {{70, 5}, {42, 8}, {30, 12}}),
    test::plain_task(210, {{105, 3}, {70, 5}, {42, 9}}),
    test::plain_task(180, {{90, 3}, {36, 9}, {20, 15}}),
};

SawPlan planned(const SawTask& task)
{
    const SawOutcome outcome = plan_saw(task, test::no_hurry());
    REQUIRE(std::holds_alternative<SawPlan>(outcome));
    SawPlan plan = std::get<SawPlan>(outcome);
    CHECK(test::fault_of(task, plan) == "");
    CHECK(certifies(task, plan.certificate, plan.lower_bound));
    return plan;
}

}  // namespace

TEST_CASE("saw: what prices cannot prove is proven by cases, verified by enumeration")
{
    for (const SawTask& task : beyond_prices) {
        const SawPlan plan = planned(task);
        CAPTURE(task.stock[0].length.um(), plan.cost);
        CHECK(plan.cost == test::exhaustive_cost(task));
        CHECK(plan.proven_optimal);
        REQUIRE(plan.certificate.cases.size() >= 3);
        CHECK(test::cases_enumerated(task, plan.certificate, plan.lower_bound / cost_unit));
        CHECK_FALSE(test::cases_enumerated(task, plan.certificate, plan.lower_bound / cost_unit + 1));
        CHECK_FALSE(certifies(task, plan.certificate, plan.lower_bound + cost_unit));
        SawCertificate rows_alone = plan.certificate;
        rows_alone.cases.clear();
        CHECK_FALSE(certifies(task, rows_alone, plan.lower_bound));
    }
}

TEST_CASE("saw: cases are proven with a kerf and with bars of two lengths")
{
    for (SawTask task : beyond_prices) {
        const std::int64_t cost = planned(task).cost;
        task.kerf = Length::millimetres(1);
        for (SawPiece& piece : task.pieces) piece.length -= task.kerf;
        task.stock[0].length -= task.kerf;
        CHECK(planned(task).cost == cost);
        CHECK(planned(task).proven_optimal);
        task.stock[0].cost = 10 * cost_unit;
        task.stock.push_back({task.pieces[0].length, 2, 9 * cost_unit});
        const SawPlan two = planned(task);
        CHECK(two.cost == test::exhaustive_cost(task));
        CHECK(two.proven_optimal);
    }
}

TEST_CASE("saw: a proof by cases that is changed proves nothing")
{
    const SawTask task = beyond_prices[0];
    const SawPlan plan = planned(task);
    const auto refused = [&](const std::function<void(SawCertificate&)>& change) {
        SawCertificate changed = plan.certificate;
        change(changed);
        CHECK_FALSE(certifies(task, changed, plan.lower_bound));
    };
    const std::size_t last = plan.certificate.cases.size() - 1;
    refused([](SawCertificate& c) { c.cases.pop_back(); });
    refused([](SawCertificate& c) { c.cases.erase(c.cases.begin()); });
    refused([](SawCertificate& c) { c.cases.push_back(c.cases.back()); });
    refused([](SawCertificate& c) { c.cases[0].halves.reset(); });
    refused([&](SawCertificate& c) { c.cases[last].halves = {0, 1}; });
    refused([&](SawCertificate& c) { c.cases[last].prices.clear(); });
    refused([&](SawCertificate& c) { c.cases[last].prices[0].pop_back(); });
    refused([&](SawCertificate& c) { c.cases[last].prices[0][0] = -1; });
    refused([&](SawCertificate& c) { c.cases[last].prices[0][0] = INT64_MAX; });
    refused([](SawCertificate& c) { c.cases[0].halves = {0, SIZE_MAX}; });
    refused([](SawCertificate& c) { c.cases[0].halves = {3, 3}; });
    // Cases without end that only ask for more: refused, not followed.
    refused([](SawCertificate& c) { c.cases.assign(100'000, {{}, std::pair<std::size_t, std::size_t>{2, 2}}); });
}
