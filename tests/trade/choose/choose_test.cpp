// Choosing a shaft, held against the main door: for each choice a job of that shaft is written by itself, from the catalogue's figures, and cut.
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <random>

#include "reading/support.hpp"
#include "shaftcut/trade/choose/choose.hpp"
#include "support/engine.hpp"
#include "support/jobs.hpp"
#include "workshop_reader.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const Catalogue& demo() { return reading_test::catalogue(); }

const Workshop& demo_workshop()
{
    static const auto read = read_workshop({"workshop.xml", reading_test::bytes_of(reading_test::project / "config/workshop.xml")});
    return *read.value;
}

// What a job says besides its shaft, and its ends without their joints.
struct JobText {
    std::string before, fits;
    PerEach<End, std::string> joint;
    std::string others = R"(connection="1-3/8-6" onto="1-3/8-6" device="none")";
};

std::string end_text(const JobText& asked, End end, const std::string& joint) { return fmt::format(R"(<end side="{}" joint="{}" {}/>)", to_word(end), joint, asked.others); }

JobToChooseFor wanted_of(const JobText& asked)
{
    const std::string shaft = R"(<shaft role="primary" speed="540">)" + end_text(asked, End::tractor, asked.joint[End::tractor]) + end_text(asked, End::implement, asked.joint[End::implement]) + "</shaft>";
    const auto read = read_job_to_choose_for({"choose.xml", asked.before + shaft + asked.fits + "</job>"}, demo());
    INFO(reading_test::lines_of(read.faults));
    REQUIRE(read.value);
    return *read.value;
}

Choices chosen(const JobText& asked) { return choose(wanted_of(asked), demo(), demo_workshop(), Units::mm); }

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

const std::string plain_before = R"(<job order="c" units="mm"><for power="12"/>)";

JobText measured_fit(double shortest, double working, double turning, double standing)
{
    JobText asked{plain_before, {}, {}};
    asked.fits = fmt::format(R"(<fit between="grooves"><shortest length="{}"/><longest when="working" length="{}"/><longest when="turning" length="{}"/><longest when="standing" length="{}"/>)"
                             R"(<angle side="tractor" working="12" turning="30" standing="60"/><angle side="implement" working="8" turning="15" standing="20"/></fit>)",
                             shortest, working, turning, standing);
    asked.joint[End::tractor] = asked.joint[End::implement] = "either";
    return asked;
}

JobText usual() { return measured_fit(880, 940, 970, 1000); }

JobText machine_fit()
{
    JobText asked{plain_before, {}, {}};
    asked.fits = R"(<fit><mounted pto-height="625" lower-pivot-behind="-220" lower-pivot-height="495" lower-link="925" top-pivot-behind="-160" top-pivot-height="1055" top-link="815" mast="510")"
                 R"( input-behind="10" input-above="85" input-tilt="0"><working lowest="500" highest="600"/><turning lowest="400" highest="750"/><standing lowest="220" highest="980"/></mounted></fit>)";
    asked.joint[End::tractor] = asked.joint[End::implement] = "either";
    return asked;
}

// Its figure of rank, each the lower the better.
std::tuple<ChoiceResult, Length> rank_of(const Choice& choice) { return {choice.result, choice.plan ? choice.cut() : Length()}; }

const Choice& choice_at(const Choices& choices, const std::string& series, Length closed)
{
    const auto found = std::find_if(choices.choices.begin(), choices.choices.end(), [&](const Choice& choice) { return choice.series == series && choice.closed == closed; });
    REQUIRE(found != choices.choices.end());
    return *found;
}

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

TEST_CASE("what can be made to order is what a list of orders builds, and carries the power")
{
    const JobToChooseFor wanted = wanted_of(usual());
    const Choices choices = choose(wanted, demo(), demo_workshop(), Units::mm);
    REQUIRE(choices.to_order.size() >= 3);
    CHECK(choices.to_order.front().open.empty());
    for (const ChoiceToOrder& choice : choices.to_order) {
        INFO(choice.series);
        const BuildPlan plan = plan_build(order_of(wanted, choice), demo(), demo_workshop(), Units::mm);
        CHECK(plan.verdict == (choice.open.empty() ? BuildVerdict::build : BuildVerdict::held));
        if (plan.built) CHECK(plan.built->closed_at[plan.reference] == choice.closed);
        CHECK(choice.checks[CheckId::rating].result != CheckResult::not_checked);
    }
    JobToChooseFor strong = wanted;
    strong.job.circumstances.power = 900'000;
    const Choices none = choose(strong, demo(), demo_workshop(), Units::mm);
    CHECK(none.serving == 0);
    CHECK(none.to_order.empty());
}

TEST_CASE("where none serves the one that lacks least is named")
{
    const Choices choices = chosen(measured_fit(800, 900, 1210, 1300));
    CHECK(choices.serving == 0);
    CHECK(choices.to_order.empty());
    REQUIRE(choices.nearest);
    for (const Choice& choice : choices.choices)
        if (choice.least_margin) CHECK(!(*choices.choices[*choices.nearest].least_margin < *choice.least_margin));
}

TEST_CASE("a new primary shaft with a lock that stands out is refused, made to order too; a secondary one is not")
{
    JobText asked = usual();
    asked.others += R"( lock="exposed-push-pin")";
    JobToChooseFor wanted = wanted_of(asked);
    const Choices refused = choose(wanted, demo(), demo_workshop(), Units::mm);
    CHECK(refused.serving == 0);
    CHECK(refused.to_order.empty());
    for (const Choice& choice : refused.choices)
        if (choice.checks[CheckId::locking].unit == CheckUnit::none && std::holds_alternative<Check>(*choice.why_not)) CHECK(choice.checks[CheckId::locking].result == CheckResult::fail);
    wanted.job.shaft.role = Role::secondary;
    CHECK(choose(wanted, demo(), demo_workshop(), Units::mm).serving > 0);
}

TEST_CASE("a series without the joint that is asked for, or a word from where it is measured, is refused by that")
{
    Catalogue catalogue = test::catalogue();
    catalogue.series.push_back(catalogue.series.front());
    catalogue.series[1].name = "Without joint";
    catalogue.series[1].wide_angle.reset();
    catalogue.series.push_back(catalogue.series.front());
    catalogue.series[2].name = "Without reference";
    catalogue.series[2].shape = Shape::square;
    catalogue.series[2].wide_angle_reference.reset();
    JobText asked = usual();
    asked.joint[End::tractor] = "wide-angle";
    const Choices choices = choose(wanted_of(asked), catalogue, test::workshop(), Units::mm);
    for (const Choice& choice : choices.choices) {
        if (choice.series == "Without joint") CHECK(std::holds_alternative<SeriesWithoutJoint>(choice.why_not.value()));
        if (choice.series == "Without reference") CHECK(std::holds_alternative<SeriesWithoutReference>(choice.why_not.value()));
        if (choice.series == "Alder 2" && choice.why_not) CHECK(std::holds_alternative<Check>(*choice.why_not));
    }
    CHECK(choices.serving > 0);
}

TEST_CASE("a job whose shaft is gone is chosen for by its ends: among all series between grooves, in its own between crosses")
{
    Job job = test::job();
    const auto crosses = to_choose_for(job);
    REQUIRE(crosses);
    CHECK(crosses->only_series == "Alder 2");
    const Choices own = choose(*crosses, demo(), demo_workshop(), Units::mm);
    REQUIRE(!own.choices.empty());
    for (const Choice& choice : own.choices) {
        CHECK(choice.series == "Alder 2");
        CHECK(choice.joint[End::tractor] == JointKind::wide_angle);
    }
    CHECK(choice_at(own, "Alder 2", mm(830)).result == ChoiceResult::cut);
    job.fits[0].reference.reset();
    job.fits[0].between = Between::grooves;
    const auto grooves = to_choose_for(job);
    REQUIRE(grooves);
    CHECK(!grooves->only_series);
    CHECK(!grooves->job.shaft.series);
    CHECK(!grooves->job.shaft.halves[Tube::inner].length);
    job.shaft.ends[End::implement].connection.reset();
    CHECK(!to_choose_for(job));
    Job of_no_series = test::plain_job(800, 690, 668, 742, 850);
    CHECK(!to_choose_for(of_no_series));
}

TEST_CASE("of a job between crosses what is chosen serves as its own advice says")
{
    Job job = test::job();
    job.shaft.closed = measured(705);
    job.shaft.halves[Tube::inner] = {measured(535), measured(525), std::nullopt, std::nullopt, {}};
    job.shaft.halves[Tube::outer] = {measured(513), measured(503), std::nullopt, std::nullopt, {}};
    job.fits[0].longest[Range::turning] = measured(950);
    job.fits[0].longest[Range::standing] = measured(955);
    const WorkOrder refused = work_up(job, demo(), demo_workshop(), Units::mm);
    REQUIRE(refused.verdict == Verdict::refused);
    std::vector<Length> advised;
    for (const WayOut& way : refused.ways_out)
        if (const auto* lengths = std::get_if<SeriesLengths>(&way)) {
            advised.insert(advised.end(), lengths->as_is.begin(), lengths->as_is.end());
            advised.insert(advised.end(), lengths->after_cut.begin(), lengths->after_cut.end());
        }
    std::vector<Length> chosen_lengths;
    for (const Choice& choice : choose(*to_choose_for(job), demo(), demo_workshop(), Units::mm).choices)
        if (choice.plan) chosen_lengths.push_back(choice.closed);
    std::sort(advised.begin(), advised.end());
    std::sort(chosen_lengths.begin(), chosen_lengths.end());
    CHECK(advised == chosen_lengths);
    CHECK(!advised.empty());
}

TEST_CASE("progress is said after each series, and the answer is the same every time")
{
    std::vector<std::size_t> done;
    const JobToChooseFor wanted = wanted_of(machine_fit());
    const Choices one = choose(wanted, demo(), demo_workshop(), Units::mm, [&](std::size_t count, std::size_t of) {
        CHECK(of == demo().series.size());
        done.push_back(count);
    });
    REQUIRE(done.size() == demo().series.size());
    for (std::size_t i = 0; i < done.size(); ++i) CHECK(done[i] == i + 1);
    for (int again = 0; again < 3; ++again) {
        const Choices other = choose(wanted, demo(), demo_workshop(), Units::mm);
        REQUIRE(other.choices.size() == one.choices.size());
        for (std::size_t i = 0; i < one.choices.size(); ++i) {
            CHECK(other.choices[i].series == one.choices[i].series);
            CHECK(other.choices[i].closed == one.choices[i].closed);
        }
    }
}
