// Choosing a shaft, held against the main door: for each choice a job of that shaft is written by itself, from the catalogue's figures, and cut.
#include <map>
#include <random>

#include "support/engine.hpp"
#include "trade/choose/choose_cases.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::choosing;

namespace {

// The guard of a new shaft ends 10 mm behind its tube, or where the other half's face lets it: written in micrometres.
std::string guards_text(const Series& series, Length telescoping)
{
    std::string text;
    for (const Tube tube : both_tubes) {
        const SeriesHalf& face = series.halves[other(tube)];
        if (!face.shoulder) return {};
        Length guard = telescoping - *face.shoulder - mm(10);
        if (face.guard_shoulder) guard = std::min(guard, telescoping - *face.guard_shoulder);
        text += fmt::format(R"(<half tube="{}" guard="{:.3f}"/>)", to_word(tube), guard.mm());
    }
    return text;
}

std::string job_text(const JobText& asked, const Choice& choice, bool with_guards)
{
    const Series& series = *find_series(demo(), choice.series);
    Length telescoping = choice.closed;
    for (const End end : both_ends)
        if (choice.joint[end] == JointKind::wide_angle && choice.reference == Reference::outer_cross) telescoping -= series.wide_angle->spacing;
    std::string shaft = fmt::format(R"(<shaft series="{}" role="primary" speed="540" inner-tube="implement"><closed length="{:.3f}"/>)", choice.series, choice.closed.mm());
    for (const End end : both_ends) shaft += end_text(asked, end, to_word(choice.joint[end]));
    return asked.before + shaft + (with_guards ? guards_text(series, telescoping) : "") + "</shaft>" + asked.fits + "</job>";
}

// A job that the reader takes for impossible has no answer: a machine that has no room for this shaft, or a yoke that nobody knows.
std::optional<WorkOrder> cut(const std::string& job) { return demo_engine().answer({"job.xml", job}, {}).work_order; }

void check_figures(const Choice& choice, const WorkOrder& order)
{
    for (const Check& check : order.checks) {
        INFO(to_word(check.id));
        const CheckFigures& figures = choice.checks[check.id];
        CHECK(figures.result == check.result);
        CHECK(figures.value == check.value);
        CHECK(figures.worst == check.worst);
        CHECK(figures.limit == check.limit);
    }
}

std::vector<CheckId> failed_of(const WorkOrder& order)
{
    std::vector<CheckId> ids;
    for (const Check& check : order.checks)
        if (check.result == CheckResult::fail) ids.push_back(check.id);
    return ids;
}

// How the choices came out, so that a test can ask that it saw each.
using Seen = std::map<ChoiceResult, int>;

void check_by_the_main_door(const JobText& asked, const Choice& choice, Seen& seen)
{
    const std::string text = job_text(asked, choice, true);
    INFO(text);
    const auto order = cut(text);
    if (!order) {
        CHECK(choice.result == ChoiceResult::no);
        return;
    }
    ++seen[choice.result];
    check_figures(choice, *order);
    const std::map<Verdict, ChoiceResult> result{{Verdict::fits, ChoiceResult::as_is}, {Verdict::cut, ChoiceResult::cut}, {Verdict::refused, ChoiceResult::no}};
    REQUIRE(choice.result == result.at(order->verdict));
    if (choice.result == ChoiceResult::no) {
        CHECK(!choice.plan);
        CHECK(std::get<Check>(choice.why_not.value()).id == failed_of(*order).front());
        return;
    }
    const CutPlan& plan = order->cut->plan;
    CHECK(choice.plan->cut == plan.cut);
    CHECK(choice.plan->guard_cut == plan.guard_cut);
    CHECK(choice.plan->half == plan.half);
    CHECK(choice.cut() == std::max(plan.cut[Tube::inner], plan.cut[Tube::outer]));
    // Without any half the cut is the same.
    const auto plain = cut(job_text(asked, choice, false));
    REQUIRE(plain->cut);
    CHECK(plain->cut->plan.cut == plan.cut);
}

// Its figure of rank, each the lower the better.
std::tuple<ChoiceResult, Length> rank_of(const Choice& choice) { return {choice.result, choice.plan ? choice.cut() : Length()}; }

std::size_t lengths_of(const Catalogue& catalogue)
{
    std::size_t count = 0;
    for (const Series& series : catalogue.series) count += series.closed_lengths.size();
    return count;
}

}  // namespace

TEST_CASE("each choice is what a job of that shaft, written by itself, is cut to: lengths measured between grooves")
{
    std::mt19937 random(20261128);
    const auto draw = [&](int least, int most) { return std::uniform_int_distribution(least, most)(random); };
    Seen seen;
    for (int i = 0; i < 20; ++i) {
        const int shortest = draw(560, 1500), working = shortest + draw(0, 150), turning = working + draw(0, 90), standing = turning + draw(0, 70);
        JobText asked = measured_fit(shortest, working, turning, standing);
        const std::vector<std::string> kinds{"standard", "wide-angle", "either"};
        for (const End end : both_ends) asked.joint[end] = kinds[static_cast<std::size_t>(draw(0, 2))];
        for (const Choice& choice : chosen(asked).choices) check_by_the_main_door(asked, choice, seen);
    }
    for (const ChoiceResult result : {ChoiceResult::as_is, ChoiceResult::cut, ChoiceResult::no}) CHECK(seen[result] >= 10);
}

TEST_CASE("each choice is what a job of that shaft, written by itself, is cut to: a machine's geometry")
{
    Seen seen;
    for (const char* tractor : {"standard", "wide-angle", "either"}) {
        JobText asked = machine_fit();
        asked.joint[End::tractor] = tractor;
        for (const Choice& choice : chosen(asked).choices) check_by_the_main_door(asked, choice, seen);
    }
    CHECK(seen[ChoiceResult::cut] >= 10);
    CHECK(seen[ChoiceResult::no] >= 1);
}

TEST_CASE("every series is tried at every closed length that it lists")
{
    const Choices choices = chosen(usual());
    CHECK(choices.choices.size() == lengths_of(demo()));
    for (const Series& series : demo().series)
        for (const Length closed : series.closed_lengths) CHECK(choice_at(choices, series.name, closed).closed == closed);
    for (const Series& series : demo().series) CHECK(std::count(choices.without_lengths.begin(), choices.without_lengths.end(), series.name) == (series.closed_lengths.empty() ? 1 : 0));
}

TEST_CASE("choices are ranked: as they are, then the least cut, then the greatest least margin; then those that do not serve")
{
    const Choices choices = chosen(usual());
    REQUIRE(choices.serving > 3);
    CHECK(choices.choices.front().result == ChoiceResult::as_is);
    for (std::size_t i = 0; i + 1 < choices.choices.size(); ++i) {
        const Choice &one = choices.choices[i], &next = choices.choices[i + 1];
        CHECK(rank_of(one) <= rank_of(next));
        CHECK(one.plan.has_value() == (i < choices.serving));
        if (rank_of(one) == rank_of(next) && one.plan) CHECK(!(*one.least_margin < *next.least_margin));
    }
    CHECK(!choices.nearest);
}

TEST_CASE("the least margin is the worst case of any check beyond what it is held to, as a fraction of its limit")
{
    for (const Choice& choice : chosen(usual()).choices) {
        if (!choice.plan) continue;
        double least = 1e9;
        const auto beyond = [&](CheckId id, double held_to) {
            const CheckFigures& check = choice.checks[id];
            least = std::min(least, (static_cast<double>(*check.worst) - 1000 * held_to) / static_cast<double>(*check.limit));
        };
        beyond(CheckId::closing_clearance, 25);
        for (const Range range : all_ranges) beyond(overlap_check_id(range), static_cast<double>(*choice.checks[overlap_check_id(range)].limit) / 1000);
        beyond(CheckId::guard_cover, 0);
        CHECK(std::abs(static_cast<double>(choice.least_margin->thousandths()) - 1000 * least) <= 1);
    }
    const auto thousandths = [](int left) { return Margin{CheckId::guard_cover, mm(left), mm(3)}.thousandths(); };
    CHECK(thousandths(1) == 333);
    CHECK(thousandths(-1) == -334);
    CHECK(thousandths(-3) == -1000);
    CHECK(Margin{CheckId::guard_cover, mm(1), mm(3)} < Margin{CheckId::guard_cover, mm(2), mm(5)});
}

TEST_CASE("where either joint will do the one is taken that leaves less to do, then warns less, then is the plainer")
{
    const JobText either = usual();
    std::vector<Choices> each;
    for (const char* tractor : {"standard", "wide-angle"})
        for (const char* implement : {"standard", "wide-angle"}) {
            JobText asked = either;
            asked.joint[End::tractor] = tractor;
            asked.joint[End::implement] = implement;
            each.push_back(chosen(asked));
        }
    const auto worth = [](const Choice& choice) {
        int warnings = 0, wide = 0;
        for (std::size_t i = 0; i < Words<CheckId>::all.size(); ++i) warnings += choice.checks[static_cast<CheckId>(i)].result == CheckResult::warn ? 1 : 0;
        for (const End end : both_ends) wide += choice.joint[end] == JointKind::wide_angle ? 1 : 0;
        return std::tuple(choice.result, choice.plan ? choice.cut() : Length(), warnings, wide);
    };
    int wide_angle = 0;
    for (const Choice& choice : chosen(either).choices) {
        if (!choice.plan) {
            for (const Choices& one : each) CHECK(choice_at(one, choice.series, choice.closed).result == ChoiceResult::no);
            continue;
        }
        wide_angle += choice.reference ? 1 : 0;
        for (const Choices& one : each) CHECK(worth(choice) <= worth(choice_at(one, choice.series, choice.closed)));
    }
    CHECK(wide_angle > 0);
}

TEST_CASE("the job that a choice was answered by is worked up to the same answer, in either unit")
{
    const JobToChooseFor wanted = wanted_of(usual());
    for (const Units units : {Units::mm, Units::in})
        for (const Choice& choice : choose(wanted, demo(), demo_workshop(), units).choices) {
            if (!choice.plan) continue;
            const WorkOrder order = work_up(job_of(wanted, choice, demo(), demo_workshop()), demo(), demo_workshop(), units);
            check_figures(choice, order);
            REQUIRE(order.cut);
            CHECK(order.cut->plan.cut == choice.plan->cut);
        }
}
