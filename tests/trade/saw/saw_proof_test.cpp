// Saw plans against answers that do not come from the solver: exhaustive search, a general solver, first-fit decreasing.
#include <filesystem>

#include "saw/saw_greedy.hpp"
#include "saw/saw_knapsack.hpp"
#include "support/catch.hpp"
#include "support/saw/general_solver.hpp"
#include "support/saw/saw_cases.hpp"
#include "support/saw/saw_checker.hpp"

using namespace shaftcut;

namespace {

SawPlan checked_plan(const SawTask& task, const SawWatch& watch = test::no_hurry())
{
    const SawOutcome outcome = plan_saw(task, watch);
    REQUIRE(std::holds_alternative<SawPlan>(outcome));
    SawPlan plan = std::get<SawPlan>(outcome);
    CHECK(test::fault_of(task, plan) == "");
    CHECK(certifies(task, plan.certificate, plan.lower_bound));
    return plan;
}

// Bars of 6 m and 3 m, kerf and trims, `count` pieces of `lengths` lengths, some leftovers at a price.
SawTask shop_task(std::int64_t count, std::int64_t lengths, std::uint64_t start)
{
    test::Numbers numbers(start);
    SawTask task;
    task.kerf = Length::millimetres(3);
    task.trim_start = Length::millimetres(10);
    task.trim_end = Length::millimetres(10);
    for (std::int64_t i = 0; i < lengths; ++i) task.pieces.push_back({Length::micrometres(numbers.between(400, 5400) * 500), count / lengths, ""});
    task.stock = {{Length::millimetres(3000), std::nullopt, 3000 * cost_unit}, {Length::millimetres(6000), std::nullopt, 6000 * cost_unit}};
    for (int i = 0; i < 4; ++i) {
        const std::int64_t length = numbers.between(600, 2500);
        task.stock.push_back({Length::millimetres(length), numbers.between(1, 2), length * 7 / 10 * cost_unit});
    }
    return task;
}

// The least cost by GLPK's branch and bound on the full model, in cost units; nothing without a proven answer.
std::optional<std::int64_t> cost_by_general_solver(const SawTask& task, const std::filesystem::path& folder)
{
    constexpr std::int64_t enough_bars = 5;
    std::vector<std::int64_t> most_bars;
    for (const SawStock& stock : task.stock) most_bars.push_back(std::min(stock.count.value_or(enough_bars), enough_bars));
    const test::GeneralAnswer answer = test::solve_in_general(test::full_model(task, most_bars), 5, folder);
    return answer.proven ? answer.cost : std::nullopt;
}

}  // namespace

TEST_CASE("small tasks cost what exhaustive search says")
{
    for (std::uint64_t start = 1; start <= 150; ++start) {
        const SawTask task = test::small_task(start);
        CAPTURE(start);
        const SawOutcome outcome = plan_saw(task, test::no_hurry());
        const auto expected = test::exhaustive_cost(task);
        REQUIRE(std::holds_alternative<SawPlan>(outcome) == expected.has_value());
        if (!expected) continue;
        const SawPlan& plan = std::get<SawPlan>(outcome);
        CHECK(test::fault_of(task, plan) == "");
        CHECK(plan.cost == *expected);
        CHECK(plan.lower_bound <= *expected);
        CHECK(certifies(task, plan.certificate, plan.lower_bound));
        CHECK(test::exhaustively_certifies(task, plan.certificate, plan.lower_bound));
    }
}

TEST_CASE("limited racks: feasible exactly when exhaustive search says so")
{
    for (std::uint64_t start = 1; start <= 60; ++start) {
        SawTask task = test::small_task(start);
        task.stock[0].count = 2;
        CAPTURE(start);
        const SawOutcome outcome = plan_saw(task, test::no_hurry());
        const auto expected = test::exhaustive_cost(task);
        REQUIRE(std::holds_alternative<SawPlan>(outcome) == expected.has_value());
        if (expected) CHECK(std::get<SawPlan>(outcome).cost == *expected);
    }
}

TEST_CASE("small tasks cost what a general solver says on the full model")
{
    if (!test::general_solver_is_there()) {
        WARN("skipped: glpsol (Debian package glpk-utils) is not installed");
        return;
    }
    const auto folder = std::filesystem::temp_directory_path() / "shaftcut-saw-glpsol";
    std::filesystem::create_directories(folder);
    int answered = 0;
    for (std::uint64_t start = 201; start <= 212; ++start) {
        const SawTask task = test::small_task(start);
        const SawOutcome outcome = plan_saw(task, test::no_hurry());
        if (!std::holds_alternative<SawPlan>(outcome)) continue;
        const auto expected = cost_by_general_solver(task, folder);
        if (!expected) continue;
        CAPTURE(start);
        CHECK(std::get<SawPlan>(outcome).cost == *expected * cost_unit);
        ++answered;
    }
    std::filesystem::remove_all(folder);
    CHECK(answered >= 4);
}

TEST_CASE("never dearer than first-fit decreasing, bound never above, equal input gives an equal plan")
{
    for (std::uint64_t start = 1; start <= 8; ++start) {
        const SawTask task = shop_task(60, 12, start);
        const SawPlan plan = checked_plan(task);
        const saw::Model model = saw::make_model(task);
        for (const auto& order : {std::vector<std::size_t>{0, 1, 2, 3, 4, 5}, std::vector<std::size_t>{1, 0, 2, 3, 4, 5}, std::vector<std::size_t>{5, 4, 3, 2, 1, 0}})
            if (const auto packing = saw::first_fit_decreasing(model, saw::wanted(model), saw::available(model), order))
                CHECK(plan.cost <= saw::cost_of(model, *packing) * model.cost_scale);
        const SawPlan again = checked_plan(task);
        REQUIRE(plan.bars.size() == again.bars.size());
        for (std::size_t b = 0; b < plan.bars.size(); ++b) {
            CHECK(plan.bars[b].pieces == again.bars[b].pieces);
            CHECK(plan.bars[b].count == again.bars[b].count);
        }
    }
}

TEST_CASE("a shop's thousand pieces with priced leftovers are proven")
{
    const SawPlan plan = checked_plan(shop_task(1000, 50, 3));
    CHECK(plan.proven_optimal);
}

TEST_CASE("a bound that is too high, or prices that are not the task's, certify nothing")
{
    const SawTask task = test::plain_task(100, {{45, 97}, {36, 610}, {31, 395}, {14, 211}});
    const SawPlan plan = checked_plan(task);
    CHECK_FALSE(certifies(task, plan.certificate, plan.cost + 1));
    SawCertificate broken = plan.certificate;
    broken.prices[0].pop_back();
    CHECK_FALSE(certifies(task, broken, 1));
    broken = plan.certificate;
    broken.prices[0][0] = -1;
    CHECK_FALSE(certifies(task, broken, 1));
    broken = plan.certificate;
    broken.prices[0][0] = INT64_MAX;
    CHECK_FALSE(certifies(task, broken, 1));
    broken = plan.certificate;
    broken.lengths[0] += Length::micrometres(1);
    CHECK_FALSE(certifies(task, broken, 1));
    broken.prices.clear();
    CHECK_FALSE(certifies(task, broken, 1));
    CHECK(certifies(task, {}, 0));
}

TEST_CASE("the knapsack finds what a plain dynamic programme finds")
{
    test::Numbers numbers(11);
    for (int round = 0; round < 60; ++round) {
        const std::int64_t capacity = numbers.between(20, 400);
        std::vector<test::LengthAndCount> pieces;
        for (int i = 0; i < 8; ++i) pieces.push_back({numbers.between(3, 20), numbers.between(1, 4)});
        const saw::Model model = saw::make_model(test::plain_task(capacity, pieces));
        std::vector<std::int64_t> prices;
        std::vector<std::int64_t> best(static_cast<std::size_t>(model.bars[0].capacity) + 1, 0);
        for (const saw::CutSize& size : model.sizes) {
            prices.push_back(numbers.between(0, 50));
            for (std::int64_t copy = 0; copy < size.count; ++copy)
                for (std::size_t room = best.size(); room-- > static_cast<std::size_t>(size.size);)
                    best[room] = std::max(best[room], best[room - static_cast<std::size_t>(size.size)] + prices.back());
        }
        const SawWatch watch = test::no_hurry();
        for (const saw::Effort effort : {saw::Effort::quick, saw::Effort::exact}) {
            const auto filling = saw::Knapsack(model, watch).best_fillings(saw::available(model), saw::wanted(model), prices, effort)[0];
            CHECK(filling.most >= best.back());
            if (effort == saw::Effort::exact) CHECK(filling.value == best.back());
            if (effort == saw::Effort::exact) CHECK(filling.most == best.back());
        }
    }
}
