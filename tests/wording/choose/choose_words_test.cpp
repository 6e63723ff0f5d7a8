// What is said of the shafts that would serve.
#include "choose/choose_words.hpp"
#include "support/catch.hpp"
#include "support/jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const Wording w(Units::mm);

Choice choice_with(Length closed, CheckId failed)
{
    Choice choice;
    choice.series = "Alder 2";
    choice.closed = closed;
    Check check;
    check.id = failed;
    check.result = CheckResult::fail;
    choice.why_not = check;
    return choice;
}

}  // namespace

TEST_CASE("how many serve")
{
    Choices choices;
    choices.choices.resize(42);
    CHECK(verdict_words(choices, w) == "NONE OF 42 SERVES");
    choices.serving = 1;
    CHECK(verdict_words(choices, w) == "1 OF 42 SERVES");
    choices.serving = 3;
    CHECK(verdict_words(choices, w) == "3 OF 42 SERVE");
}

TEST_CASE("a shaft is named with the cross that its length runs from and with its joints")
{
    Choice choice;
    choice.series = "Alder 2";
    choice.closed = mm(830);
    CHECK(shaft_words(choice, w) == "Alder 2, closed length 830 mm between crosses, standard joints");
    CHECK(shaft_words(choice, Wording(Units::in)) == "Alder 2, closed length 32-11/16 in (830 mm) between crosses, standard joints");
    choice.reference = Reference::inner_cross;
    choice.joint[End::implement] = JointKind::wide_angle;
    CHECK(shaft_words(choice, w) == "Alder 2, closed length 830 mm from the inner cross; standard joint at the tractor, wide-angle joint at the implement");
}

TEST_CASE("the checks of a choice in a line: the least margin, the lengths, what warns and what was not made")
{
    AllFigures checks;
    for (std::size_t i = 0; i < Words<CheckId>::all.size(); ++i) checks[static_cast<CheckId>(i)].result = CheckResult::pass;
    checks[CheckId::overlap_turning] = {CheckResult::warn, CheckUnit::mm, 320'000, 140'000, 150'000};
    checks[CheckId::rating].result = CheckResult::not_checked;
    checks[CheckId::condition].result = CheckResult::not_checked;
    CHECK(checks_words(checks, Margin{CheckId::overlap_turning, mm(-10), mm(150)}, w)
          == "at worst 6.7 % too little (overlap turning); overlap turning 320 mm (150 mm asked); warns: overlap turning; not checked: rating");
    CHECK(checks_words(checks, Margin{CheckId::guard_cover, mm(25), mm(50)}, w).starts_with("at worst 50 % to spare (guard cover); "));
}

TEST_CASE("of a series its lengths stand behind the first reason that refuses them")
{
    const Choice one = choice_with(mm(480), CheckId::overlap_working), two = choice_with(mm(590), CheckId::tube_left), three = choice_with(mm(705), CheckId::overlap_working);
    CHECK(refused_words({&one, &two, &three}, w) == "Alder 2: overlap working (480 mm, 705 mm); tube left (590 mm)");
    Choice without = one;
    without.why_not = SeriesWithoutJoint{End::implement};
    CHECK(refused_words({&without}, w) == "Alder 2: no wide-angle joint (480 mm)");
    CHECK(say(*without.why_not, w) == "The series has no wide-angle joint for the implement end.");
    without.why_not = SeriesWithoutReference{};
    CHECK(say(*without.why_not, w) == "The series does not state from which cross of a wide-angle joint its closed lengths run.");
    Check unreadable;
    unreadable.contradictions = {LengthsUnreadable{YokeNotKnown{End::tractor, false}}};
    without.why_not = unreadable;
    CHECK(refused_words({&without}, w) == "Alder 2: no yoke of known length for the connection (480 mm)");
    CHECK(lists_no_lengths({"Birch 1", "Juniper 8"}, w) == "Birch 1 and Juniper 8 list no closed lengths");
    CHECK(lists_no_lengths({"Birch 1"}, w) == "Birch 1 lists no closed lengths");
}
