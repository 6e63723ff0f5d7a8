// What is read between the rings on the machine, and what the sheet expects there and on the bench.
#include "support/catch.hpp"
#include "support/jobs_after_cut.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

MeasuredAfterCut with_rings()
{
    MeasuredAfterCut found = as_kept();
    found.marks.overall_dry = measured(1010);
    found.marks.overall = measured(1011);
    found.marks.closed = measured(412);
    found.marks.shortest = measured(452);
    found.marks.longest[Range::turning] = measured(560);
    found.marks.longest[Range::standing] = measured(615);
    return found;
}

}  // namespace

TEST_CASE("readings between the rings prove clearance and overlap where the shaft was truly closed")
{
    const AfterCut found = judged(with_rings());
    REQUIRE(found.rings.size() == 3);
    for (const RingsFinding& one : found.rings) CHECK(one.show == RingsShow::as_expected);
    CHECK(found.rings[0].proven == mm(40));
    CHECK(found.rings[1].proven == mm(320));
    CHECK(found.rings[2].proven == mm(265));
    MeasuredAfterCut read = with_rings();
    read.marks.overall = measured(1013);
    for (const RingsFinding& one : judged(read).rings) CHECK(one.show == RingsShow::not_closed);
    read = with_rings();
    read.marks.closed.reset();
    CHECK(judged(read).rings.empty());
}

TEST_CASE("a reading at the shortest that is too great proves nothing, and one that is too small takes the shaft off")
{
    // Good from 35 − 4, the sheet's worst less two tapes, to 742 + 2 − (702 − 2 − 2 − 1) + 4.
    const auto at = [](double reading) {
        MeasuredAfterCut read = with_rings();
        read.marks.shortest = measured(412 + reading);
        return judged(read);
    };
    CHECK(at(51).rings[0].show == RingsShow::as_expected);
    CHECK(at(52).rings[0].show == RingsShow::not_the_shortest);
    CHECK_FALSE(at(52).rings[0].proven.has_value());
    CHECK(at(52).verdict == AfterCutVerdict::right);
    CHECK(at(31).rings[0].show == RingsShow::as_expected);
    CHECK(at(30).rings[0].show == RingsShow::outside);
    CHECK(at(25).verdict == AfterCutVerdict::right);
    CHECK(at(24).rings[0].show == RingsShow::too_little);
    CHECK(at(24).verdict == AfterCutVerdict::measure);
}

TEST_CASE("a longest that goes past what was measured is judged by the overlap that it leaves")
{
    const auto at = [](double reading) {
        MeasuredAfterCut read = with_rings();
        read.marks.longest[Range::turning] = measured(412 + reading);
        return judged(read);
    };
    CHECK(at(159).rings[1].show == RingsShow::as_expected);
    CHECK(at(160).rings[1].show == RingsShow::outside);
    // 468 − 312 is the third of the closed overlap that must be left.
    CHECK(at(312).rings[1].show == RingsShow::outside);
    CHECK(at(313).rings[1].show == RingsShow::too_little);
    CHECK(at(313).verdict == AfterCutVerdict::too_short);
    CHECK(at(100).rings[1].show == RingsShow::outside);
    CHECK(at(100).verdict == AfterCutVerdict::right);
}

TEST_CASE("the sheet's expected readings are those that the shaft is held to")
{
    const ExpectedAfterCut expected = expected_after_cut(worked(job()));
    CHECK(expected.half[Tube::outer].most == mm(579));
    CHECK(expected.closed.value == mm(702));
    CHECK(expected.closed.most == mm(707));
    CHECK(expected.closed.least == mm(695));
    CHECK(expected.guard[Tube::inner]->least == mm(573));
    CHECK(expected.stands_out[Tube::inner]->value == mm(18));
    CHECK(expected.stands_out[Tube::inner]->most == mm(26));
    CHECK(expected.shortest.value == mm(40));
    CHECK(expected.shortest.good_from == mm(31));
    CHECK(expected.shortest.good_to == mm(51));
    CHECK(expected.shortest.never_under == mm(25));
    const OnRings& turning = *expected.longest[Range::turning];
    CHECK(turning.value == mm(148));
    CHECK(turning.good_from == mm(139));
    CHECK(turning.good_to == mm(159));
    // 468 − 156, less 3 for each half, 3 for the closed length and 4 for two tapes.
    CHECK(turning.never_over == mm(299));
    CHECK(expected.longest[Range::standing]->value == mm(203));
}
