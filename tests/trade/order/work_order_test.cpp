#include "shaftcut/trade/order/work_order.hpp"

#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/sentences.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("the documented example comes out as documented")
{
    const WorkOrder order = worked(job());
    INFO(reasons_of(order).size());
    for (const Check& one : order.checks) UNSCOPED_INFO(to_word(one.id) << " " << to_word(one.result) << ": " << said(one));
    REQUIRE(order.verdict == Verdict::cut);
    CHECK(order.reading.shaft.closed.value == mm(796));
    for (const Tube tube : both_tubes) {
        CHECK(order.cut->plan.cut[tube] == mm(94));
        CHECK(order.cut->plan.guard_cut[tube] == mm(94));
    }
    CHECK(order.cut->plan.half[Tube::inner] == mm(596));
    CHECK(order.cut->plan.half[Tube::outer] == mm(574));
    CHECK(order.cut->plan.guard_half[Tube::inner] == mm(578));
    CHECK(order.cut->plan.guard_half[Tube::outer] == mm(556));
    CHECK(order.cut->plan.closed == mm(702));
    CHECK(order.cut->closed_at[order.reading.reference] == mm(766));
    CHECK(order.overlap_closed_before == mm(562));
    CHECK(order.cut->overlap.closed == mm(468));
    CHECK(order.cut->overlap.shortest == mm(428));
    CHECK(order.cut->overlap.longest[Range::turning] == mm(320));
    CHECK(check(order, CheckId::closing_clearance).value == 40'000);
    CHECK(check(order, CheckId::closing_clearance).worst == 35'000);
}
