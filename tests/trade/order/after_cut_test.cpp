// What a shaft is after the cut, part by part.
#include "support/catch.hpp"
#include "support/jobs_after_cut.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// The example with its turning overlap at its limit: of 1170 − 1014 the third of its closed overlap, 156.
Job at_its_limit()
{
    Job found = job();
    for (const Range range : all_ranges) found.fits[0].longest[range] = measured(range == Range::standing ? 1030 : range == Range::turning ? 1014 : 900);
    return found;
}

}  // namespace

TEST_CASE("a shaft that reads as it is kept is right, by the sheet's own checks")
{
    const AfterCut found = judged(as_kept());
    CHECK(found.verdict == AfterCutVerdict::right);
    CHECK(found.as_the_sheet);
    REQUIRE(found.parts.size() == 4);
    for (const PartAfterCut& one : found.parts) CHECK(one.result == AfterCutVerdict::right);
    CHECK(part(found, SawnPart::inner_tube).expected->most == mm(601));
    CHECK(part(found, SawnPart::inner_tube).expected->least == mm(591));
    CHECK(found.closes_at == mm(702));
    CHECK(found.closed->measured == mm(702));
    CHECK(found.closed->expected.most == mm(707));
    CHECK(found.overlap.longest[Range::turning] == mm(320));
    const WorkOrder order = worked(job());
    for (std::size_t i = 0; i < found.checks.size(); ++i) CHECK(found.checks[i].value == order.checks[i].value);
}

TEST_CASE("a tube within its ± is right up to its end, and beyond it is sawn back to what is kept")
{
    MeasuredAfterCut read = as_kept();
    read.closed.reset();
    read.halves[Tube::inner].length = measured(601);
    CHECK(judged(read).verdict == AfterCutVerdict::right);
    read.halves[Tube::inner].length = measured(602);
    const AfterCut found = judged(read);
    CHECK(found.verdict == AfterCutVerdict::saw_more);
    CHECK_FALSE(found.as_the_sheet);
    const PartAfterCut& tube = part(found, SawnPart::inner_tube);
    CHECK(tube.saw_more->off == mm(6));
    CHECK(tube.saw_more->need == mm(6));
    CHECK_FALSE(tube.saw_more->least_cut);
    CHECK(part(found, SawnPart::outer_tube).result == AfterCutVerdict::right);
}

TEST_CASE("where the saw's least cut is more than the need it is said")
{
    Workshop shop = workshop();
    shop.saw.least_cut = mm(9);
    MeasuredAfterCut read = as_kept();
    read.closed.reset();
    read.halves[Tube::outer].length = measured(580);
    const AfterCut found = *after_cut(work_up(job(), catalogue(), shop, Units::mm), job(), catalogue(), read);
    CHECK(part(found, SawnPart::outer_tube).saw_more->off == mm(9));
    CHECK(part(found, SawnPart::outer_tube).saw_more->need == mm(6));
    CHECK(part(found, SawnPart::outer_tube).saw_more->least_cut);
}

TEST_CASE("a tube that is sawn short is right while every overlap holds, and else too short by what it lacks")
{
    MeasuredAfterCut read = as_kept();
    read.closed.reset();
    read.halves[Tube::inner].length = measured(560);
    CHECK(judged(read).verdict == AfterCutVerdict::right);
    CHECK(judged(read).overlap.longest[Range::turning] == mm(284));
    const AfterCut found = judged(at_its_limit(), read);
    CHECK(found.verdict == AfterCutVerdict::too_short);
    // 560 + 574 − 1014 = 120, of 150; the other tube is as it is kept.
    CHECK(part(found, SawnPart::inner_tube).short_by == mm(30));
    CHECK(part(found, SawnPart::outer_tube).short_by == Length());
    CHECK(result(found, CheckId::overlap_turning) == CheckResult::fail);
}

TEST_CASE("tubes within their ± keep the sheet's overlap, at its very limit too")
{
    MeasuredAfterCut read = as_kept();
    read.closed.reset();
    read.halves[Tube::inner].length = measured(591);
    read.halves[Tube::outer].length = measured(569);
    CHECK(judged(at_its_limit(), read).verdict == AfterCutVerdict::right);
    // Once one of them lies outside, both count as they read: 590 + 569 − 1014 = 145, of a third of 1159 − 697.
    read.halves[Tube::inner].length = measured(590);
    CHECK(part(judged(at_its_limit(), read), SawnPart::inner_tube).short_by == mm(9));
}

TEST_CASE("a tube that must keep its least is too short by what it lacks of it")
{
    Catalogue of = catalogue();
    of.series[0].halves[Tube::inner].least_tube = mm(530);
    MeasuredAfterCut read = as_kept();
    read.halves[Tube::inner].length = measured(580);
    read.closed.reset();
    const AfterCut found = *after_cut(work_up(job(), of, workshop(), Units::mm), job(), of, read);
    CHECK(found.verdict == AfterCutVerdict::too_short);
    CHECK(part(found, SawnPart::inner_tube).short_by == mm(12));
}

TEST_CASE("a tube that ends before its lubrication hole, or that must not be sawn, is too short by that")
{
    Job holed = job();
    holed.shaft.halves[Tube::inner].lubrication_hole = measured(570);
    MeasuredAfterCut read = as_kept();
    read.closed.reset();
    read.halves[Tube::inner].length = measured(563);
    CHECK(part(judged(holed, read), SawnPart::inner_tube).short_by == mm(7));
    // The outer half ends where the shortest asks for no cut, and its series forbids one: sawn by 12 in the inner one's place.
    Job uneven = job();
    uneven.shaft.halves[Tube::outer].length = measured(574);
    uneven.shaft.halves[Tube::outer].guard = measured(556);
    Catalogue of = catalogue();
    of.series[0].halves[Tube::outer].shortening_forbidden = true;
    const WorkOrder order = work_up(uneven, of, workshop(), Units::mm);
    REQUIRE(order.cut);
    REQUIRE(order.cut->plan.cut[Tube::outer] == Length());
    read = as_kept();
    read.closed.reset();
    CHECK(after_cut(order, uneven, of, read)->verdict == AfterCutVerdict::right);
    read.halves[Tube::outer].length = measured(562);
    CHECK(part(*after_cut(order, uneven, of, read), SawnPart::outer_tube).short_by == mm(12));
}

TEST_CASE("cuts that were exchanged between the halves leave one to be sawn, or nothing to be used")
{
    Job uneven = job();
    uneven.shaft.halves[Tube::outer].length = measured(640);
    uneven.shaft.halves[Tube::outer].guard = measured(622);
    const WorkOrder order = worked(uneven);
    REQUIRE(order.cut);
    REQUIRE(order.cut->plan.cut[Tube::inner] == mm(94));
    REQUIRE(order.cut->plan.cut[Tube::outer] == mm(66));
    MeasuredAfterCut read = as_kept();
    read.closed.reset();
    read.halves[Tube::inner].length = measured(690 - 66);
    read.halves[Tube::outer].length = measured(640 - 94);
    const AfterCut found = *after_cut(order, uneven, catalogue(), read);
    CHECK(found.verdict == AfterCutVerdict::saw_more);
    CHECK(part(found, SawnPart::inner_tube).saw_more->off == mm(28));
    CHECK(part(found, SawnPart::outer_tube).result == AfterCutVerdict::right);
}

TEST_CASE("halves that are as kept the other way round are measured again, unless the closed length bears them out")
{
    MeasuredAfterCut read = as_kept();
    std::swap(read.halves[Tube::inner].length, read.halves[Tube::outer].length);
    for (const bool closed_is_read : {true, false}) {
        if (!closed_is_read) read.closed.reset();
        const AfterCut found = judged(read);
        CHECK(found.perhaps_exchanged);
        CHECK(found.verdict == AfterCutVerdict::measure);
        CHECK(part(found, SawnPart::outer_tube).result == AfterCutVerdict::measure);
        CHECK_FALSE(part(found, SawnPart::outer_tube).saw_more);
    }
    // Sawn so: 596 + 128 between the inner crosses.
    read.closed = ClosedAfterCut{measured(724), Reference::inner_cross};
    const AfterCut sawn_so = judged(read);
    CHECK_FALSE(sawn_so.perhaps_exchanged);
    CHECK(part(sawn_so, SawnPart::outer_tube).saw_more->off == mm(22));
}

TEST_CASE("nothing is sawn again of a shaft that would still not do")
{
    Job tight = job();
    tight.fits[0].shortest->plus_minus = mm(36);
    const WorkOrder order = worked(tight);
    REQUIRE(order.cut);
    REQUIRE(check(order, CheckId::closing_clearance).worst == mm(1).um());
    // The one tube is short by 20, so that the lengths count as they read now; sawn once more the other leaves less than nothing at worst.
    MeasuredAfterCut read = as_kept();
    read.closed.reset();
    read.halves[Tube::inner].length = measured(630);
    read.halves[Tube::outer].length = measured(554);
    const AfterCut found = *after_cut(order, tight, catalogue(), read);
    CHECK(part(found, SawnPart::inner_tube).result == AfterCutVerdict::measure);
    CHECK_FALSE(part(found, SawnPart::inner_tube).saw_more);
    CHECK(found.verdict == AfterCutVerdict::measure);
}

TEST_CASE("a closed length that the halves do not explain asks for what stops the shaft")
{
    MeasuredAfterCut read = as_kept();
    read.closed->length = measured(771);
    CHECK(judged(read).verdict == AfterCutVerdict::right);
    read.closed->length = measured(772);
    const AfterCut late = judged(read);
    CHECK(late.closed->is == ClosedAfterCutIs::longer);
    CHECK(late.verdict == AfterCutVerdict::measure);
    // S − C as it was read.
    CHECK(check_of(late.checks, CheckId::closing_clearance).value == mm(34).um());
    read.closed = ClosedAfterCut{measured(690), Reference::inner_cross};
    const AfterCut deep = judged(read);
    CHECK(deep.closed->is == ClosedAfterCutIs::shorter);
    CHECK(deep.verdict == AfterCutVerdict::right);
}

TEST_CASE("a guard is judged beside its tube, and by how far the tube stands out of it")
{
    MeasuredAfterCut read = as_kept();
    read.halves[Tube::inner].guard.reset();
    read.halves[Tube::inner].stands_out = measured(18);
    CHECK(judged(read).verdict == AfterCutVerdict::right);
    CHECK(part(judged(read), SawnPart::inner_guard).measured == mm(578));
    // 20 longer than its tube: sawn down to what is kept.
    read.halves[Tube::inner].stands_out.reset();
    read.halves[Tube::inner].guard = measured(616);
    CHECK(part(judged(read), SawnPart::inner_guard).saw_more->off == mm(38));
    // Longer than was to be kept, but shorter than its tube, and it meets nothing that is known.
    read.halves[Tube::inner].guard = measured(590);
    CHECK(part(judged(read), SawnPart::inner_guard).result == AfterCutVerdict::right);
    // 240 + 556 − 905 is under 0 by 109, and by the ± of two tapes, a saw and the longest.
    read.halves[Tube::inner].guard = measured(240);
    const AfterCut bare = judged(read);
    CHECK(bare.verdict == AfterCutVerdict::too_short);
    CHECK(part(bare, SawnPart::inner_guard).short_by == Length::micrometres(-check_of(bare.checks, CheckId::guard_cover).worst.value()));
    CHECK(part(bare, SawnPart::inner_guard).short_by == mm(117));
}

TEST_CASE("a guard that is cut away is too short by what it must keep, whatever it covers")
{
    Job short_fits = job();
    short_fits.fits[0].longest[Range::standing] = measured(860);
    Catalogue of = catalogue();
    of.series[0].halves[Tube::inner].guard_seat = mm(400);
    MeasuredAfterCut read = as_kept();
    read.halves[Tube::inner].guard = measured(440);
    const AfterCut found = *after_cut(work_up(short_fits, of, workshop(), Units::mm), short_fits, of, read);
    CHECK(part(found, SawnPart::inner_guard).short_by == mm(10));
}

TEST_CASE("beside a tube that is sawn short the other one may still lack clearance within its ±")
{
    MeasuredAfterCut read = as_kept();
    read.closed.reset();
    read.halves[Tube::inner].length = measured(586);
    read.halves[Tube::outer].length = measured(578);
    const AfterCut found = judged(read);
    CHECK(found.verdict == AfterCutVerdict::right);
    CHECK(result(found, CheckId::closing_clearance) == CheckResult::warn);
    CHECK(check_of(found.checks, CheckId::closing_clearance).value == mm(36).um());
    // 742 − 2 − (578 + 2 + 128 + 2): the tape and the stop, nothing of the saw.
    CHECK(check_of(found.checks, CheckId::closing_clearance).worst == mm(30).um());
}

TEST_CASE("guards are held to the closed length as they are now")
{
    // Cut by 136: the inner guard was 672 before, more than the 660 to which the shaft closes now.
    Job deep = job();
    deep.fits[0].shortest = measured(700);
    MeasuredAfterCut read = as_kept();
    read.closed = ClosedAfterCut{measured(660), Reference::inner_cross};
    read.halves[Tube::inner] = {measured(540), measured(536), std::nullopt};
    read.halves[Tube::outer] = {measured(532), measured(514), std::nullopt};
    const AfterCut found = judged(deep, read);
    CHECK(found.verdict == AfterCutVerdict::right);
    CHECK_FALSE(found.as_the_sheet);
    CHECK(result(found, CheckId::consistency) != CheckResult::fail);
}

TEST_CASE("what was not measured is asked for, and a refused job has nothing to judge")
{
    MeasuredAfterCut read = as_kept();
    read.halves[Tube::outer].length.reset();
    const AfterCut found = judged(read);
    CHECK(found.verdict == AfterCutVerdict::measure);
    CHECK(part(found, SawnPart::outer_tube).result == AfterCutVerdict::measure);
    CHECK_FALSE(part(found, SawnPart::outer_tube).measured);
    Job refused = job();
    refused.fits[0].longest[Range::standing] = measured(1200);
    CHECK_FALSE(after_cut(worked(refused), refused, catalogue(), as_kept()).has_value());
}
