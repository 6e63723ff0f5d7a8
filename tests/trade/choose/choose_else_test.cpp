// What else is said where a shaft is chosen: what can be made to order, why a series does not serve, what serves a job whose shaft is gone.
#include "trade/choose/choose_cases.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::choosing;

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
