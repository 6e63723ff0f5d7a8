#include "shaftcut/trade/cut/datum.hpp"

#include <cmath>

#include "support/catch.hpp"
#include "support/jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// The straight distance over a chain of links laid out point by point: yoke, half-bent spacing, tubes, half-bent spacing,
// yoke, each link turned from the last by its share of the joint's angle, all turning the same way.
double chain_length(double yoke_t, double spacing_t, double tubes, double spacing_i, double yoke_i, double angle_t, double angle_i)
{
    const double degree = std::acos(-1.0) / 180;
    double heading = 0, x = 0, y = 0;
    const auto forward = [&](double length) { x += length * std::cos(heading); y += length * std::sin(heading); };
    forward(yoke_t);
    heading += angle_t * degree / 2;
    forward(spacing_t);
    heading += angle_t * degree / 2;
    forward(tubes);
    heading += angle_i * degree / 2;
    forward(spacing_i);
    heading += angle_i * degree / 2;
    forward(yoke_i);
    return std::hypot(x, y);
}

Reaches reaches(double yoke_t, double spacing_t, double yoke_i, double spacing_i)
{
    Reaches all;
    all[End::tractor] = {mm(yoke_t), mm(spacing_t)};
    all[End::implement] = {mm(yoke_i), mm(spacing_i)};
    return all;
}

PerEach<End, Angle> angles(int tractor, int implement)
{
    PerEach<End, Angle> both;
    both[End::tractor] = Angle::degrees(tractor);
    both[End::implement] = Angle::degrees(implement);
    return both;
}

}  // namespace

TEST_CASE("a bent length is that of the chain drawn point by point")
{
    struct Row {
        double yoke_t, spacing_t, tubes, spacing_i, yoke_i;
        int angle_t, angle_i;
    };
    const Row row = GENERATE(Row{0, 64, 800, 0, 0, 40, 15}, Row{60, 64, 800, 0, 60, 40, 15}, Row{60, 64, 700, 64, 55, 70, 60},
                             Row{60, 0, 900, 0, 60, 35, 20}, Row{0, 64, 900, 64, 0, 0, 0}, Row{60, 0, 500, 0, 60, 90, 90});
    const double distance = chain_length(row.yoke_t, row.spacing_t, row.tubes, row.spacing_i, row.yoke_i, row.angle_t, row.angle_i);
    const Reaches all = reaches(row.yoke_t, row.spacing_t, row.yoke_i, row.spacing_i);
    CHECK(bent(mm(distance), all, angles(row.angle_t, row.angle_i)).mm() == Approx(row.tubes).margin(0.002));
}

TEST_CASE("in line is the least reading, bent the same way the greatest")
{
    const Reaches all = reaches(60, 64, 60, 0);
    const Length distance = mm(1000);
    CHECK(in_line(distance, all) == mm(816));
    CHECK(bent(distance, all, angles(0, 0)) == mm(816));
    Length last = in_line(distance, all);
    for (int angle = 5; angle <= 70; angle += 5) {
        const Length longer = bent(distance, all, angles(angle, angle / 2));
        CHECK(longer > last);
        last = longer;
    }
}

TEST_CASE("the two references of one shaft give one answer")
{
    Job outer = job();
    Job inner = job();
    inner.shaft.closed_reference = Reference::inner_cross;
    inner.shaft.closed = measured(796);
    const WorkOrder a = worked(outer);
    const WorkOrder b = worked(inner);
    CHECK(a.reading.shaft.closed.value == b.reading.shaft.closed.value);
    CHECK(a.cut->plan.cut == b.cut->plan.cut);
    CHECK(a.cut->closed_at[a.reading.reference] == mm(766));
    CHECK(b.cut->closed_at[b.reading.reference] == mm(702));
    CHECK(b.reading.closed_at[Reference::outer_cross] == mm(860));
}

TEST_CASE("where nobody states a reference the tube's shape decides")
{
    Job bare = job();
    bare.shaft.closed_reference.reset();
    Catalogue silent = catalogue();
    silent.series[0].wide_angle_reference.reset();
    CHECK(work_up(bare, silent, workshop(), Units::mm).reading.reference == Reference::outer_cross);
    silent.series[0].shape = Shape::triangular;
    CHECK(work_up(bare, silent, workshop(), Units::mm).reading.reference == Reference::inner_cross);
}

TEST_CASE("a double wide-angle shaft measured at its outer crosses loses both spacings")
{
    Job both = job();
    both.shaft.ends[End::implement].joint = JointKind::wide_angle;
    CHECK(worked(both).reading.shaft.closed.value == mm(860 - 128));
}

TEST_CASE("several fits: the least shortest and the greatest longest count")
{
    Job two = job();
    two.fits.push_back(two.fits[0]);
    two.fits[1].shortest = measured(760);
    two.fits[1].longest[Range::turning] = measured(880);
    const WorkOrder order = worked(two);
    CHECK(order.fit.shortest->value == mm(742));
    CHECK(order.fit.longest[Range::turning]->value == mm(880));
}

TEST_CASE("lengths between grooves lose both yokes and the spacing; without a known yoke the job is refused")
{
    Job grooves = job();
    grooves.fits[0].between = Between::grooves;
    grooves.fits[0].reference.reset();
    grooves.fits[0].shortest = measured(742 + 60 + 60 + 64);
    grooves.fits[0].longest[Range::working] = measured(980);
    grooves.fits[0].longest[Range::turning] = measured(1020);
    grooves.fits[0].longest[Range::standing] = measured(1050);
    CHECK(worked(grooves).fit.shortest->value == mm(742));
    grooves.shaft.ends[End::implement].connection = "1-3/8-21";
    const WorkOrder unknown = worked(grooves);
    CHECK(unknown.verdict == Verdict::refused);
    CHECK_FALSE(unknown.fit.shortest);
    CHECK_FALSE(unknown.cut);
}

TEST_CASE("a longest at the outer cross without an angle is read in line, with a warning")
{
    Job silent = job();
    silent.fits[0].reference = Reference::outer_cross;
    silent.fits[0].shortest = measured(806);
    for (const Range range : all_ranges) silent.fits[0].longest[range] = measured(silent.fits[0].longest[range]->length.mm() + 64);
    silent.fits[0].angles = {};
    const WorkOrder order = worked(silent);
    CHECK(order.fit.longest[Range::turning]->value == mm(850));
    CHECK(check(order, CheckId::consistency).result == CheckResult::warn);
    CHECK(order.fits[0].unbent.size() == 3);
    CHECK(order.fits[0].unbent[1].at_limit_angles > mm(850));
}
