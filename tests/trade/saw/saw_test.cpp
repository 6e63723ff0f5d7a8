// Saw plans against published optima, exact edges, refusals. Every plan goes through the independent checker and its
// certificate is verified.
#include "shaftcut/trade/saw/saw.hpp"

#include "saw/saw_words.hpp"
#include "support/catch.hpp"
#include "support/saw/saw_cases.hpp"
#include "support/saw/saw_checker.hpp"

using namespace shaftcut;
using test::plain_task;

namespace {

const Wording in_mm(Units::mm);

SawPlan planned(const SawTask& task, const SawWatch& watch = test::no_hurry())
{
    const SawOutcome outcome = plan_saw(task, watch);
    if (const auto* refusal = std::get_if<SawRefusal>(&outcome)) FAIL(say(refusal->found, Wording(Units::mm)));
    SawPlan plan = std::get<SawPlan>(outcome);
    CHECK(test::fault_of(task, plan) == "");
    CHECK(certifies(task, plan.certificate, plan.lower_bound));
    return plan;
}

SawRefusal refused(const SawTask& task)
{
    const SawOutcome outcome = plan_saw(task, test::no_hurry());
    REQUIRE(std::holds_alternative<SawRefusal>(outcome));
    return std::get<SawRefusal>(outcome);
}

std::int64_t bars_in(const SawPlan& plan)
{
    std::int64_t bars = 0;
    for (const SawBar& bar : plan.bars) bars += bar.count;
    return bars;
}

void check_optimum(const SawTask& task, std::int64_t bars)
{
    const SawPlan plan = planned(task);
    CHECK(bars_in(plan) == bars);
    CHECK(plan.cost == bars * cost_unit);
    CHECK(plan.proven_optimal);
    CHECK_FALSE(certifies(task, plan.certificate, plan.lower_bound + 1));
}

SawTask one_bar(Length bar, const std::vector<SawPiece>& pieces, Length kerf = Length())
{
    SawTask task;
    task.pieces = pieces;
    task.stock = {{bar, std::nullopt, bar.um()}};
    task.kerf = kerf;
    return task;
}

}  // namespace

TEST_CASE("textbook optima")
{
    // V. Chvátal, Linear Programming (1983), chapter 13: 453 (first-fit decreasing takes 485).
    check_optimum(plain_task(100, {{45, 97}, {36, 610}, {31, 395}, {14, 211}}), 453);
    // W. L. Winston, Operations Research, chapter on column generation: boards of 17 ft, 19.
    check_optimum(plain_task(17, {{9, 15}, {5, 20}, {3, 25}}), 19);
    // Wikipedia, "Cutting stock problem": rolls of 5600 mm, 73 (first-fit decreasing takes 82).
    check_optimum(plain_task(5600, {{2200, 20}, {2150, 18}, {2140, 16}, {2100, 14}, {2050, 12}, {2000, 10}, {1930, 20},
                                    {1880, 18}, {1820, 18}, {1710, 14}, {1560, 12}, {1520, 25}, {1380, 22}}),
                  73);
}

TEST_CASE("triplets without waste")
{
    for (const std::int64_t bars : {10, 20, 40}) check_optimum(test::triplets(bars, static_cast<std::uint64_t>(bars)), bars);
}

TEST_CASE("kerf and trims decide to the last micrometre")
{
    const Length kerf = Length::millimetres(3);
    const std::vector<SawPiece> two{{Length::micrometres(1'498'500), 2, ""}};
    SawTask task = one_bar(Length::millimetres(3000), two, kerf);
    SawPlan plan = planned(task);
    CHECK(bars_in(plan) == 1);  // 1498.5 + 3 + 1498.5 = 3000: the last piece needs no cut
    CHECK(plan.bars[0].leftover == Length());
    task.stock[0].length = Length::micrometres(2'999'999);
    CHECK(bars_in(planned(task)) == 2);
    task.stock[0].length = Length::micrometres(3'002'999);
    CHECK(planned(task).bars[0].leftover == Length());  // 2.999 mm are eaten by the last cut
    task.stock[0].length = Length::micrometres(3'003'001);
    CHECK(planned(task).bars[0].leftover == Length::micrometres(1));
    task.trim_start = Length::micrometres(2'001);
    task.trim_end = Length::micrometres(1'000);
    CHECK(bars_in(planned(task)) == 1);
    task.trim_end = Length::micrometres(1'001);
    CHECK(bars_in(planned(task)) == 2);
}

TEST_CASE("a million pieces of one length, without a kerf")
{
    const SawTask task = one_bar(Length::millimetres(6000), {{Length::micrometres(857'142), 1'000'000, ""}});
    const SawPlan plan = planned(task);
    CHECK(bars_in(plan) == 142'858);  // seven in a bar with 6 micrometres left; the last bar holds one
    CHECK(plan.bars.size() == 2);
    CHECK(plan.proven_optimal);
    CHECK(plan.bars[0].leftover == Length::micrometres(6));
}

TEST_CASE("leftovers on the rack are used as far as they are there")
{
    SawTask task = one_bar(Length::millimetres(3000), {{Length::millimetres(900), 4, ""}});
    task.stock.push_back({Length::millimetres(950), 2, 1});
    const SawPlan plan = planned(task);
    CHECK(plan.cost == task.stock[0].cost + 1);  // three in the bar, one in a leftover
    CHECK(plan.proven_optimal);
    task.stock[1].count = 0;
    CHECK(planned(task).cost == 2 * task.stock[0].cost);
}

TEST_CASE("a limited rack that only an exact packing satisfies")
{
    // First-fit decreasing puts 5 + 4 and 3 + 3 + 3 and leaves a 2; 5 + 3 + 2 and 4 + 3 + 3 fill both bars.
    SawTask task = plain_task(10, {{5, 1}, {4, 1}, {3, 3}, {2, 1}});
    task.stock[0].count = 2;
    CHECK(planned(task).proven_optimal);
}

TEST_CASE("what cannot be cut is refused with its reason")
{
    using Reason = SawRefusal::Reason;
    CHECK(refused(plain_task(100, {})).reason == Reason::nothing_to_cut);
    CHECK(refused(plain_task(100, {{50, 0}})).reason == Reason::nothing_to_cut);
    const SawRefusal too_long = refused(plain_task(100, {{100, 1}, {101, 2}, {102, 1}}));
    CHECK(too_long.reason == Reason::piece_fits_no_bar);
    CHECK(too_long.pieces == std::vector<std::size_t>{1, 2});
    CHECK(wrong_of(too_long.found, in_mm) == "101 mm is longer than every bar");
    CHECK(right_for(too_long.found, in_mm) == "the longest bar holds 100 mm between its trims");
    SawTask task = plain_task(100, {{40, 5}});
    task.stock[0].count = 2;
    task.kerf = Length::micrometres(500);
    const SawRefusal small = refused(task);  // 5 · 40.5 needed, 2 · 100.5 there
    CHECK(small.reason == Reason::rack_too_small);
    CHECK(wrong_of(small.found, in_mm) == "the stock is too short by 1.5 mm, cuts and trims counted");
    task.pieces = {{Length::millimetres(60), 3, ""}};
    CHECK(refused(task).reason == Reason::rack_too_small);  // 181.5 mm in 201 mm, but one in a bar
    task.stock.clear();
    CHECK(refused(task).reason == Reason::piece_fits_no_bar);
    CHECK(refused(plain_task(0, {{1, 1}})).reason == Reason::bad_figure);
    CHECK(refused(plain_task(100, {{-1, 1}})).reason == Reason::bad_figure);
    CHECK(refused(plain_task(100, {{1, 2'000'001}})).reason == Reason::bad_figure);
}

TEST_CASE("a trim longer than the bar leaves no bar")
{
    SawTask task = plain_task(100, {{10, 1}});
    task.trim_start = Length::millimetres(101);
    CHECK(right_for(refused(task).found, in_mm) == "there is no bar in stock longer than its trims");
}

TEST_CASE("among plans of equal cost the longest leftover is kept")
{
    // Two bars whatever one does; 600 + 400 and 350 leave 650 in one piece, 600 + 350 and 400 only 600.
    SawTask task = plain_task(1000, {{600, 1}, {400, 1}, {350, 1}});
    task.reusable = Length::millimetres(500);
    const SawPlan plan = planned(task);
    Length longest;
    for (const SawBar& bar : plan.bars) longest = std::max(longest, bar.leftover);
    CHECK(longest == Length::millimetres(650));
}

TEST_CASE("labels are dealt to single bars, each piece once")
{
    SawTask task = plain_task(100, {{50, 1}, {50, 3}, {30, 2}});
    const SawPlan plan = planned(task);
    std::vector<std::int64_t> dealt(task.pieces.size(), 0);
    const auto bars = deal_pieces(task, plan);
    CHECK(static_cast<std::int64_t>(bars.size()) == bars_in(plan));
    for (const auto& bar : bars)
        for (const std::size_t piece : bar) ++dealt[piece];
    CHECK(dealt == std::vector<std::int64_t>{1, 3, 2});
}

TEST_CASE("no time at all still gives a valid plan and a true bound")
{
    const SawTask task = test::triplets(20, 7);
    const SawPlan plan = planned(task, {[] { return 0.0; }, {}});
    CHECK(bars_in(plan) >= 20);
    CHECK(plan.lower_bound <= 20 * cost_unit);
}
