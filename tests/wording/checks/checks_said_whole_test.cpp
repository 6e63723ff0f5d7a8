// What a check says as a whole, its contradictions before its doubts, and what is asked to be confirmed.
#include "checks/check_sentences.hpp"
#include "checks/finding_sentences.hpp"
#include "support/catch.hpp"
#include "support/jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("a check's contradictions are said before its doubts, and each of them refuses for itself")
{
    const Wording w(Units::mm);
    Check check;
    check.result = CheckResult::fail;
    check.contradictions = {PlainFinding::welded, PlainFinding::tube_bent};
    check.findings = {PlainFinding::lock_stiff};
    check.basis = {PlainBasis::as_it_came_in, PlainBasis::device};
    CHECK(say(check, w) == "The shaft has been welded: put in new parts, do not cut it. A tube is bent: put in a new one. A lock is stiff: clean and grease it until it snaps home.");
    CHECK(basis(check, w) == clause(CheckBasis(PlainBasis::as_it_came_in), w) + "; " + clause(CheckBasis(PlainBasis::device), w));
    Check other = check;
    other.contradictions.clear();
    Check passed = check;
    passed.result = CheckResult::warn;
    CHECK(reasons_to_refuse({check, passed, other}, w) == std::vector<std::string>{"The shaft has been welded: put in new parts, do not cut it.", "A tube is bent: put in a new one.",
                                                                                  "A lock is stiff: clean and grease it until it snaps home."});
}

TEST_CASE("what is confirmed says what to measure, what is expected and why")
{
    const Wording w(Units::mm);
    const auto length = [&](Confirmed what, ConfirmedFor why, std::optional<Reference> from = {}) { return say(Confirmation{what, why, mm(860), mm(4.09), from, {}}, w); };
    CHECK(length(Confirmed::closed, ConfirmedFor::disagreement, Reference::outer_cross) ==
          "Closed length, pushed fully together, from the outer cross of the wide-angle joint: expected 860 mm ± 4 mm. The closed length and the halves disagree.");
    CHECK(length(Confirmed::closed, ConfirmedFor::disagreement, Reference::inner_cross) ==
          "Closed length, pushed fully together, from the inner cross of the wide-angle joint: expected 860 mm ± 4 mm. The closed length and the halves disagree.");
    CHECK(length(Confirmed::closed, ConfirmedFor::disagreement) == "Closed length, pushed fully together: expected 860 mm ± 4 mm. The closed length and the halves disagree.");
    CHECK(length(Confirmed::closed_inner_cross, ConfirmedFor::cross_not_known) ==
          "Closed length, pushed fully together, between the inner crosses: expected 860 mm ± 4 mm. No other figure tells from which cross of the wide-angle joint the closed length was measured.");
    CHECK(length(Confirmed::inner_half, ConfirmedFor::half_not_measured) ==
          "Inner half, centre of its inner cross to the tube's free end: expected 860 mm ± 4 mm. It was not measured: the cut rests on the closed length and its series.");
    CHECK(length(Confirmed::outer_half, ConfirmedFor::half_short_alone) ==
          "Outer half, centre of its inner cross to the tube's free end: expected 860 mm ± 4 mm. It is short by its own figure alone.");
    CHECK(length(Confirmed::inner_shoulder, ConfirmedFor::stop_alone) ==
          "Inner half's shoulder, centre of its inner cross to the face that stops the other tube: expected 860 mm ± 4 mm. No other figure bears it out: too short a cut would let the shaft bottom.");
    CHECK(length(Confirmed::outer_shoulder, ConfirmedFor::stop_alone).starts_with("Outer half's shoulder, centre of its inner cross"));
    CHECK(say(Confirmation{Confirmed::outer_guard, ConfirmedFor::guard_not_measured, {}, {}, {}, mm(25)}, w) ==
          "Outer guard: its tube stands out of it by 0 to 25 mm. The guard was not measured and is cut as its tube is.");
    CHECK(say(Confirmation{Confirmed::built, ConfirmedFor::year_not_stated, {}, {}, {}, {}}, w) ==
          "Year of building: before 2021, by the plate, or by the owner's word and whose. From 2021 on no part of a lock may stand out (EN 12965:2019).");
}
