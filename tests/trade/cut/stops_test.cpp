// Where the tubes stop, and what no second figure says of it. The drawn job: closed 796 telescoping, halves 690 and 668 ± 2, s_A 128, s_B 106.
#include "shaftcut/trade/cut/stops.hpp"

#include "shaftcut/trade/checks/confirmation.hpp"
#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Check consistency(const Change& change)
{
    Setting setting;
    change(setting);
    return check(worked(setting), CheckId::consistency);
}

WorkOrder worked_with(const Change& change)
{
    Setting setting;
    change(setting);
    return worked(setting);
}

bool confirms(const WorkOrder& order, Confirmed what)
{
    return std::any_of(order.confirm.begin(), order.confirm.end(), [&](const Confirmation& one) { return one.what == what; });
}

// A shaft of no known series whose joints are standard: closed 800, halves 690 and 600, of which only the inner one stops it.
void of_no_series(Setting& s)
{
    s.job.shaft.series.reset();
    s.job.shaft.shape = Shape::star;
    for (const End end : both_ends) {
        s.job.shaft.ends[end].joint = JointKind::standard;
        s.fit().angles[end] = {};
    }
    s.job.shaft.closed = measured(800);
    s.job.shaft.closed_reference.reset();
    s.half(Tube::inner) = {measured(690), measured(672), measured(100), std::nullopt, {}};
    s.half(Tube::outer) = {measured(600), measured(585), measured(110), std::nullopt, {}};
    s.fit().reference.reset();
}

}  // namespace

TEST_CASE("a shoulder far from its series' stands only if its own path confirms it")
{
    const auto shoulder = [](Tube tube, double length) { return [=](Setting& s) { s.half(tube).shoulder = measured(length); }; };
    // The inner half's shoulder is in the outer half's path: 668 + 128 = 796 = C.
    CHECK(consistency(shoulder(Tube::inner, 128)).result == CheckResult::pass);
    CHECK(consistency(shoulder(Tube::inner, 140.8)).result != CheckResult::fail);  // 10 % of 128 is not too far
    const Check far = consistency(shoulder(Tube::inner, 62.1));
    CHECK(far.result == CheckResult::fail);
    CHECK(said(far).find("65.9 mm less than its series' 128 mm") != std::string::npos);
    CHECK(consistency(shoulder(Tube::inner, 12.8)).result == CheckResult::fail);
    CHECK(consistency(shoulder(Tube::inner, 0)).result == CheckResult::fail);
    // Of a shorter outer half the closed length bears out a greater shoulder.
    CHECK(consistency([](Setting& s) {
              s.half(Tube::outer).length = measured(648);
              s.half(Tube::outer).guard = measured(632);
              s.half(Tube::inner).shoulder = measured(148);
          }).result == CheckResult::pass);
}

TEST_CASE("a shoulder is at least its seat, less 30 on the outer half, and never under 25")
{
    const auto refused = [](Tube tube, double seat, double shoulder) {
        return said(consistency([=](Setting& s) {
                   of_no_series(s);
                   s.job.shaft.series = "Alder 2";
                   s.job.shaft.shape.reset();
                   s.series_half(tube).shoulder.reset();
                   s.series_half(tube).seat = mm(seat);
                   s.half(tube).shoulder = measured(shoulder);
               })).find("the least that it can be") != std::string::npos;
    };
    CHECK_FALSE(refused(Tube::inner, 62, 62));
    CHECK(refused(Tube::inner, 62, 61.99));
    CHECK_FALSE(refused(Tube::outer, 62, 32));
    CHECK(refused(Tube::outer, 62, 31.99));
    CHECK(refused(Tube::outer, 40, 24.99));
    CHECK_FALSE(refused(Tube::outer, 40, 25));
}

TEST_CASE("a stop that only the job states and its path does not confirm warns and is confirmed before sawing")
{
    // 690 + 110 = 800 = C; 600 + 100 = 700 confirms nothing.
    const WorkOrder order = worked_with(of_no_series);
    REQUIRE(order.cut);
    CHECK(check(order, CheckId::consistency).result == CheckResult::warn);
    CHECK(confirms(order, Confirmed::inner_shoulder));
    CHECK_FALSE(confirms(order, Confirmed::outer_shoulder));
    // Its half is short by its own figure alone; its guard, 15 mm shorter, bears it out.
    CHECK_FALSE(confirms(order, Confirmed::outer_half));
    CHECK(confirms(worked_with([](Setting& s) { of_no_series(s); s.half(Tube::outer).guard = measured(540); }), Confirmed::outer_half));
    CHECK(confirms(worked_with([](Setting& s) { of_no_series(s); s.half(Tube::outer).guard.reset(); }), Confirmed::outer_half));
}

TEST_CASE("a closed length off by the spacing was read at the other cross")
{
    // Taken from the inner cross 860 is 64 more than the halves give.
    const Check check = consistency([](Setting& s) { s.job.shaft.closed_reference = Reference::inner_cross; });
    CHECK(check.result == CheckResult::fail);
    CHECK(said(check).find("it seems to be measured from the outer cross") != std::string::npos);
    const Check short_by_it = consistency([](Setting& s) { s.job.shaft.closed = measured(796); });
    CHECK(short_by_it.result == CheckResult::fail);
    CHECK(said(short_by_it).find("it seems to be measured from the inner cross") != std::string::npos);
    // With the halves' own shoulders as measured the altered shaft is believed.
    CHECK(consistency([](Setting& s) {
              s.job.shaft.closed = measured(796);
              s.half(Tube::inner).shoulder = measured(128 - 64);
              s.half(Tube::outer).shoulder = measured(106 - 64);
          }).result != CheckResult::fail);
}

TEST_CASE("without halves the series' closed lengths tell the cross, or the sheet asks")
{
    const auto unmeasured = [](double closed, Reference reference) {
        return [=](Setting& s) {
            for (const Tube tube : both_tubes) s.half(tube) = JobHalf();
            s.catalogue.series[0].closed_lengths = {mm(860)};
            s.job.shaft.closed = measured(closed);
            s.job.shaft.closed_reference = reference;
        };
    };
    CHECK(consistency(unmeasured(860, Reference::outer_cross)).result == CheckResult::pass);
    CHECK(consistency(unmeasured(867, Reference::outer_cross)).result == CheckResult::pass);
    CHECK(consistency(unmeasured(868, Reference::outer_cross)).result == CheckResult::warn);
    const Check other = consistency(unmeasured(796, Reference::outer_cross));
    CHECK(other.result == CheckResult::fail);
    CHECK(said(other).find("read from the inner cross it is one") != std::string::npos);
    CHECK(consistency(unmeasured(860, Reference::inner_cross)).result == CheckResult::fail);
    const WorkOrder asked = worked_with(unmeasured(830, Reference::outer_cross));
    CHECK(confirms(asked, Confirmed::inner_half));
    CHECK(confirms(asked, Confirmed::outer_half));
}

TEST_CASE("halves exchanged are refused where the shaft closes below them, and warned of where it closes above")
{
    const auto exchanged = [](double inner, double outer, double shoulder) {
        return [=](Setting& s) {
            s.half(Tube::inner) = {measured(inner), std::nullopt, std::nullopt, std::nullopt, {}};
            s.half(Tube::outer) = {measured(outer), std::nullopt, std::nullopt, std::nullopt, {}};
            s.series_half(Tube::inner).shoulder = mm(shoulder);
        };
    };
    // True halves 690 and 640, s_B 106, s_A 140: C = 796. Exchanged: 640 + 106 = 746, 690 + 140 = 830.
    CHECK(consistency(exchanged(690, 640, 140)).result == CheckResult::pass);
    const Check below = consistency(exchanged(640, 690, 140));
    CHECK(below.result == CheckResult::fail);
    CHECK(said(below).find("seem to be exchanged") != std::string::npos);
    // True halves 640 and 690, s_A 106: the other way round they give only 784.
    const Check above = consistency([&](Setting& s) {
        exchanged(690, 640, 156)(s);
        s.series_half(Tube::outer).shoulder = mm(94);
        s.job.shaft.closed = measured(846 + 64);
        std::swap(s.half(Tube::inner).length, s.half(Tube::outer).length);
        std::swap(s.half(Tube::inner).length, s.half(Tube::outer).length);
    });
    CHECK(above.result == CheckResult::warn);
    CHECK(said(above).find("perhaps exchanged") != std::string::npos);
}

TEST_CASE("two ways of stopping err differently: the worst case of closing")
{
    // Halves of 670 and 688 ± 20, in truth perhaps 690 and 668: nothing is sure to be left of the clearance.
    const WorkOrder order = worked_with([](Setting& s) {
        s.half(Tube::inner) = {Measurement{mm(670), mm(20), {}}, std::nullopt, std::nullopt, std::nullopt, {}};
        s.half(Tube::outer) = {Measurement{mm(688), mm(20), {}}, std::nullopt, std::nullopt, std::nullopt, {}};
    });
    CHECK(*check(order, CheckId::closing_clearance).worst < 25'000);
}

TEST_CASE("of two tractors each counts with its own tolerance")
{
    const auto clearance = [](const WorkOrder& order) { return check(order, CheckId::closing_clearance); };
    const WorkOrder one = worked_with([](Setting& s) { s.fit().shortest = Measurement{mm(742), mm(1), {}}; });
    const WorkOrder two = worked_with([](Setting& s) {
        s.fit().shortest = Measurement{mm(742), mm(1), {}};
        s.job.fits.push_back(s.fit());
        s.job.fits[1].shortest = Measurement{mm(745), mm(20), {}};
    });
    CHECK(*clearance(one).worst - *clearance(two).worst == 16'000);  // 741 and 725
    CHECK(clearance(one).value == clearance(two).value);
}

TEST_CASE("a range that one fit leaves out can fail and cannot pass")
{
    const auto with = [](std::optional<double> standing, double turning) {
        return worked_with([=](Setting& s) {
            s.job.fits.push_back(s.fit());
            s.job.fits[1].tractor = "second tractor";
            s.job.fits[1].longest[Range::turning] = measured(turning);
            s.job.fits[1].longest[Range::standing] = standing ? std::optional(measured(*standing)) : std::nullopt;
        });
    };
    const Check known = check(with(910, 850), CheckId::overlap_standing);
    CHECK(known.result == CheckResult::pass);
    const WorkOrder unknown = with(std::nullopt, 850);
    const Check least = check(unknown, CheckId::overlap_standing);
    CHECK(least.result == CheckResult::not_checked);
    CHECK(basis_said(least).find("second tractor") != std::string::npos);
    CHECK(least.value);
    CHECK_FALSE(unknown.fit.longest[Range::standing]);
    // A standing longest is at least the turning one of the same fit: 1170 − 1072 is under 100.
    CHECK(check(with(std::nullopt, 1072), CheckId::overlap_standing).result == CheckResult::fail);
}

TEST_CASE("a guard that is cut away refuses")
{
    const WorkOrder order = worked_with([](Setting& s) { s.half(Tube::inner).guard = measured(50); });
    CHECK(check(order, CheckId::guard_cover).result == CheckResult::fail);
    CHECK(order.verdict == Verdict::refused);
    // The other guard was not measured: it is refused all the same.
    CHECK(check(worked_with([](Setting& s) {
                    s.half(Tube::inner).guard = measured(100);
                    s.half(Tube::outer).guard.reset();
                }), CheckId::guard_cover).result == CheckResult::fail);
}

TEST_CASE("beside lengths that contradict each other no length passes, and each keeps its value")
{
    const WorkOrder order = worked_with([](Setting& s) { s.job.shaft.closed_reference = Reference::inner_cross; });
    REQUIRE(order.verdict == Verdict::refused);
    int lengths = 0;
    for (const Check& one : order.checks) {
        if (one.unit != CheckUnit::mm) continue;
        INFO(to_word(one.id));
        CHECK((one.result == CheckResult::fail || one.result == CheckResult::not_checked));
        lengths += one.value ? 1 : 0;
    }
    CHECK(lengths > 3);
    CHECK(order.confirm.empty());
}
