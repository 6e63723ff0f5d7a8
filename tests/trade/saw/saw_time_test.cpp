// The time of a saw plan, on a clock that counts how often it is asked: every long step must ask, and little may follow the end.
#include "shaftcut/trade/saw/saw.hpp"
#include "support/catch.hpp"
#include "support/saw/linear_programme.hpp"
#include "support/saw/saw_cases.hpp"
#include "support/saw/saw_checker.hpp"

using namespace shaftcut;

namespace {

constexpr std::int64_t never = INT64_MAX;

// Time is up from the question after `questions` on.
struct CountingClock {
    std::int64_t questions = never;
    std::int64_t asked = 0;
    std::int64_t asked_after = 0;

    double seconds_left()
    {
        if (++asked <= questions) return 1.0;
        ++asked_after;
        return 0.0;
    }
};

SawTask many_lengths(std::int64_t lengths, std::int64_t most_each, std::int64_t leftovers, std::uint64_t start)
{
    test::Numbers numbers(start);
    SawTask task;
    task.kerf = Length::millimetres(3);
    task.reusable = Length::millimetres(500);
    for (std::int64_t i = 0; i < lengths; ++i)
        task.pieces.push_back({Length::micrometres(numbers.between(300'000, 2'800'000)), numbers.between(1, most_each), ""});
    task.stock = {{Length::millimetres(3000), std::nullopt, 3000 * cost_unit}, {Length::millimetres(6000), std::nullopt, 6000 * cost_unit}};
    for (std::int64_t i = 0; i < leftovers; ++i) {
        const std::int64_t length = numbers.between(600, 2900);
        task.stock.push_back({Length::millimetres(length), numbers.between(1, 3), length * 7 / 10 * cost_unit});
    }
    return task;
}

// Plans with so many questions before time is up; the plan must be valid, its bound proven, and hardly a question may follow.
CountingClock checked_plan(const SawTask& task, std::int64_t questions)
{
    CountingClock clock{questions};
    const SawOutcome outcome = plan_saw(task, {[&] { return clock.seconds_left(); }, {}, test::linear_programme()});
    CAPTURE(task.pieces.size(), task.stock.size(), questions);
    REQUIRE(std::holds_alternative<SawPlan>(outcome));
    const SawPlan& plan = std::get<SawPlan>(outcome);
    CHECK(test::fault_of(task, plan) == "");
    CHECK(certifies(task, plan.certificate, plan.lower_bound));
    // One for each kind of bar still to be looked at, in one or two of the steps that were under way.
    CHECK(clock.asked_after <= 8 + 4 * static_cast<std::int64_t>(task.stock.size()));
    return clock;
}

}  // namespace

TEST_CASE("saw: whenever time is up, the plan stops with little more asked, its second stage too")
{
    // Proven by prices; by dives; by cases.
    for (const SawTask& task : {many_lengths(25, 4, 3, 1), test::triplets(20, 7), test::plain_task(132, {{44, 5}, {33, 7}, {12, 17}})}) {
        const std::int64_t all = checked_plan(task, never).asked;
        CHECK(all > 100);
        for (std::int64_t part = 0; part < 20; ++part) checked_plan(task, all * part / 20);
        for (std::int64_t last = 1; last <= 10; ++last) checked_plan(task, all - last);
    }
}

TEST_CASE("saw: large lists ask the clock often from the start")
{
    for (const SawTask& task : {many_lengths(600, 4, 0, 2), many_lengths(2000, 2, 10, 3), many_lengths(200, 3, 900, 4)})
        for (const std::int64_t questions : {0, 1, 3, 10, 300}) checked_plan(task, questions);
}
