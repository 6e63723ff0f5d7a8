// Halves that an earlier sheet kept so much of: as that sheet allowed they are not cut again. Kept were 596 and 574, which close to 702
// between the inner crosses; ± 1 of the saw and twice 2 of the tape, so that 5 are explained (the shortest is 742, 40 are asked).
#include "support/catch.hpp"
#include "support/jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// The example as it was cut, read now; closed as its halves are.
Job cut_before(double inner, double outer, double shortest = 742)
{
    Job now = job();
    now.shaft.closed = measured(std::max(inner + 106, outer + 128) + 64);
    now.shaft.halves[Tube::inner] = {measured(inner), measured(578), std::nullopt, std::nullopt, {}};
    now.shaft.halves[Tube::outer] = {measured(outer), measured(556), std::nullopt, std::nullopt, {}};
    now.shaft.halves[Tube::inner].cut_to = mm(596);
    now.shaft.halves[Tube::outer].cut_to = mm(574);
    now.fits[0].shortest = measured(shortest);
    return now;
}

}  // namespace

TEST_CASE("a half that is as an earlier sheet allowed is not cut again, and lacks clearance with a warning")
{
    const WorkOrder order = worked(cut_before(601, 574));
    CHECK(order.verdict == Verdict::fits);
    REQUIRE(order.cut);
    CHECK(order.cut->plan.left_as_cut[Tube::inner]);
    CHECK(check(order, CheckId::closing_clearance).result == CheckResult::warn);
    CHECK(check(order, CheckId::closing_clearance).value == mm(35).um());
    Job unsaid = cut_before(601, 574);
    for (const Tube tube : both_tubes) unsaid.shaft.halves[tube].cut_to.reset();
    CHECK(worked(unsaid).cut->plan.cut[Tube::inner] == mm(5));
}

TEST_CASE("a half that reads longer than the saw and two tapes explain is cut")
{
    const WorkOrder order = worked(cut_before(602, 574));
    REQUIRE(order.cut);
    CHECK(order.cut->plan.cut[Tube::inner] == mm(6));
    CHECK(check(order, CheckId::closing_clearance).result == CheckResult::pass);
}

TEST_CASE("less than the floor was not left by that cut: another machine, or a wrong figure")
{
    // 702 closed leaves the floor of 25 at 727.
    CHECK(check(worked(cut_before(596, 574, 727)), CheckId::closing_clearance).result == CheckResult::warn);
    CHECK(check(worked(cut_before(596, 574, 726)), CheckId::closing_clearance).result == CheckResult::fail);
}

TEST_CASE("with nothing left at the worst the clearance fails all the same, whatever the floor")
{
    // S − 2 − (C + 2): 702 closed leaves 1 at 707 and nothing at 706.
    const auto result_without_floor = [](double shortest) {
        Job now = cut_before(596, 574, shortest);
        now.limits[Limit::closing_clearance_floor] = LimitSetting{LimitValue{0, 1}, {}};
        return check(worked(now), CheckId::closing_clearance).result;
    };
    CHECK(result_without_floor(707) == CheckResult::warn);
    CHECK(result_without_floor(706) == CheckResult::fail);
}

TEST_CASE("the other half, of which no sheet says so, is cut as ever")
{
    Job one = cut_before(601, 590);
    one.shaft.halves[Tube::outer].cut_to.reset();
    const WorkOrder order = worked(one);
    REQUIRE(order.cut);
    CHECK(order.cut->plan.cut[Tube::inner] == Length());
    CHECK(order.cut->plan.cut[Tube::outer] == mm(16));
}

TEST_CASE("the guard of a half that stays as it was cut stays too, unless it would stop the shaft before the tubes do")
{
    Catalogue with_faces = catalogue();
    with_faces.series[0].halves[Tube::outer].guard_shoulder = mm(124);
    const auto guard_cut = [&](double guard) {
        Job now = cut_before(601, 574);
        now.shaft.halves[Tube::inner].guard = measured(guard);
        return *work_up(now, with_faces, workshop(), now.units).cut->plan.guard_cut[Tube::inner];
    };
    // The tubes close to 707: 583 of guard and the outer half's face at 124 do too.
    CHECK(guard_cut(583) == Length());
    CHECK(guard_cut(588) == Length());
    CHECK(guard_cut(589) == mm(6));
}

TEST_CASE("what an earlier sheet kept and no half can have of it is a contradiction")
{
    const auto consistency = [](double kept) {
        Job now = cut_before(596, 574);
        now.shaft.halves[Tube::inner].cut_to = mm(kept);
        return check(worked(now), CheckId::consistency).result;
    };
    CHECK(consistency(601) == CheckResult::pass);
    CHECK(consistency(602) == CheckResult::fail);  // the half is shorter than the saw and two tapes explain
    CHECK(consistency(63) == CheckResult::pass);
    CHECK(consistency(62) == CheckResult::fail);   // its seat in the series
}
