// Each check on lengths at, just inside and just outside each of its limits; less than 0.01 mm decides nothing.
// The drawn example: C 796, a 690, b 668, S 742, k 40, all ± 2 and the saw ± 1, so cut 94, a' 596, b' 574, C' 702,
// v'(C') 468, guards 578 and 556.
#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using enum CheckResult;

namespace {

Change shortest_plus_minus(double plus_minus)
{
    return [=](Setting& s) { s.fit().shortest->plus_minus = mm(plus_minus); };
}
Change shortest(double length)
{
    return [=](Setting& s) { s.fit().shortest = measured(length); };
}
// The shortest, and no longest below it.
Change raised(double length)
{
    return [=](Setting& s) {
        s.fit().shortest = measured(length);
        for (const Range range : all_ranges) s.fit().longest[range]->length = std::max(s.fit().longest[range]->length, mm(length));
    };
}
Change longest(Range range, double length)
{
    return [=](Setting& s) { set_longest(s, range, length); };
}
Change job_limit(Limit limit, double millimetres)
{
    return [=](Setting& s) { s.job.limits[limit] = LimitSetting{{mm(millimetres).um(), 1}, {}}; };
}
Change guards(double inner, double outer)
{
    return [=](Setting& s) {
        s.half(Tube::inner).guard = measured(inner);
        s.half(Tube::outer).guard = measured(outer);
    };
}
Change both(Change first, Change second)
{
    return [=](Setting& s) {
        first(s);
        second(s);
    };
}
const Change guard_faces = [](Setting& s) {
    s.series_half(Tube::inner).guard_shoulder = mm(50);
    s.series_half(Tube::outer).guard_shoulder = mm(40);
};

// The checks on a plan that the cut would not have made.
std::vector<Check> checks_on(const Change& change, const std::function<void(CutPlan&)>& spoil)
{
    Setting setting;
    change(setting);
    const WorkOrder order = worked(setting);
    std::optional<CutPlan> plan = order.cut->plan;
    spoil(*plan);
    return run_checks({setting.job, setting.catalogue, &setting.catalogue.series[0], order.limits, order.saw, order.reading, order.fits,
                       order.fit, order.stops, plan});
}

}  // namespace

TEST_CASE("closing-clearance: worst case against the floor and 0")
{
    // Common practice: clearance 40, floor 25 (about 22 published manuals and guides).
    hold_all(CheckId::closing_clearance,
             {{"as drawn: u_S + u_C + t off", [](Setting&) {}, pass, 40, 35, 40},
              {"worst on the floor", shortest_plus_minus(12), pass, 40, 25, 40},
              {"worst under the floor by what decides nothing", shortest_plus_minus(12.009), pass, 40, 24.991, 40},
              {"worst under the floor", shortest_plus_minus(12.010), warn, 40, 24.990, 40},
              {"worst above 0", shortest_plus_minus(36.990), warn, 40, 0.010, 40},
              {"worst above 0 by what decides nothing", shortest_plus_minus(36.991), fail, 40, 0.009, 40},
              {"worst 0", shortest_plus_minus(37), fail, 40, 0, 40},
              {"nothing cut: no saw tolerance", raised(836), pass, 40, 36, 40},
              {"short by what decides nothing: nothing cut", raised(835.991), pass, 39.991, 35.991, 40},
              {"short: the least cut", raised(835.990), pass, 44.990, 39.990, 40},
              {"another floor", job_limit(Limit::closing_clearance_floor, 35.010), warn, 40, 35, 40}});
}

TEST_CASE("closing-clearance: a plan that leaves less than is asked fails")
{
    for (const auto& [over, result] : {std::pair(0.009, pass), std::pair(0.010, fail)}) {
        const auto checks = checks_on([](Setting&) {}, [over = over](CutPlan& plan) { plan.closed += mm(over); });
        CHECK(checks[static_cast<std::size_t>(CheckId::closing_clearance)].result == result);
    }
}

TEST_CASE("overlap-working: half of the new closed overlap")
{
    // v'(X) = 1170 − X, less u_a + u_b + u_X + 2 t = 8. Common practice: 1/2.
    const auto at = [](double length) { return longest(Range::working, length); };
    hold_all(CheckId::overlap_working,
             {{"worst on the limit", at(928), pass, 242, 234, 234},
              {"worst short by what decides nothing", at(928.009), pass, 241.991, 233.991, 234},
              {"worst short", at(928.010), warn, 241.990, 233.990, 234},
              {"on the limit", at(936), warn, 234, 226, 234},
              {"short by what decides nothing", at(936.009), warn, 233.991, 225.991, 234},
              {"short", at(936.010), fail, 233.990, 225.990, 234},
              {"not given", [](Setting& s) { s.fit().longest[Range::working].reset(); }, not_checked, {}, {}, {}}});
}

TEST_CASE("overlap-turning: a third of the new closed overlap and at least 150 mm")
{
    const auto at = [](double length) { return longest(Range::turning, length); };
    const auto least = [&](double length, double limit) { return both(at(length), job_limit(Limit::least_overlap_turning, limit)); };
    // 468 / 3 = 156. Common practice: 1/3 and 150 mm.
    hold_all(CheckId::overlap_turning,
             {{"worst on the limit", at(1006), pass, 164, 156, 156},
              {"worst short by what decides nothing", at(1006.009), pass, 163.991, 155.991, 156},
              {"worst short", at(1006.010), warn, 163.990, 155.990, 156},
              {"on the limit", at(1014), warn, 156, 148, 156},
              {"short by what decides nothing", at(1014.009), warn, 155.991, 147.991, 156},
              {"short", at(1014.010), fail, 155.990, 147.990, 156},
              {"the least decides: on it", least(970, 200), warn, 200, 192, 200},
              {"the least decides: short", least(970.010, 200), fail, 199.990, 191.990, 200},
              {"cut to 444 of closed overlap: 150, not a third", both(shortest(718), at(972)), warn, 150, 142, 150}});
}

TEST_CASE("overlap-standing: at least 100 mm")
{
    const auto at = [](double length) { return longest(Range::standing, length); };
    hold_all(CheckId::overlap_standing,
             {{"worst on the limit", at(1062), pass, 108, 100, 100},
              {"worst short by what decides nothing", at(1062.009), pass, 107.991, 99.991, 100},
              {"worst short", at(1062.010), warn, 107.990, 99.990, 100},
              {"on the limit", at(1070), warn, 100, 92, 100},
              {"short by what decides nothing", at(1070.009), warn, 99.991, 91.991, 100},
              {"short", at(1070.010), fail, 99.990, 91.990, 100},
              {"not given", [](Setting& s) { s.fit().longest[Range::standing].reset(); }, not_checked, {}, {}, {}}});
}

TEST_CASE("tube-left: the least tube of the halves that are cut")
{
    const auto least = [](Tube tube, double length) { return [=](Setting& s) { s.series_half(tube).least_tube = mm(length); }; };
    // a' − seat = 534, b' − seat = 516.
    hold_all(CheckId::tube_left,
             {{"as drawn: the outer half decides", [](Setting&) {}, pass, 336, {}, 0},
              {"inner on its limit", least(Tube::inner, 534), pass, 0, {}, 0},
              {"inner short by what decides nothing", least(Tube::inner, 534.009), pass, -0.009, {}, 0},
              {"inner short", least(Tube::inner, 534.010), fail, -0.010, {}, 0},
              {"outer short", least(Tube::outer, 516.010), fail, -0.010, {}, 0},
              {"a half that is not cut does not count", both(raised(836), least(Tube::inner, 900)), pass, {}, {}, 0},
              {"unknown", [](Setting& s) { s.series_half(Tube::inner).seat.reset(); }, not_checked, {}, {}, {}},
              {"one unknown, the other short",
               both(least(Tube::outer, 600), [](Setting& s) { s.series_half(Tube::inner).seat.reset(); }), fail, -84, {}, 0}});
}

TEST_CASE("guard-clearance: S less the guards' own closed length")
{
    // The cut brings the guards to S − k where their faces are known; g_A' + r_B = 578 + 40, g_B' + r_A = 556 + 50.
    hold_all(CheckId::guard_clearance, {{"faces known", guard_faces, pass, 742 - 618, {}, 40},
                                        {"a long guard is cut to leave k", both(guard_faces, guards(790, 650)), pass, 40, {}, 40},
                                        {"faces unknown", [](Setting&) {}, not_checked, {}, {}, {}}});
    struct SpoiltRow { double guard; CheckResult result; double value; };
    for (const SpoiltRow& row : {SpoiltRow{662, pass, 40}, SpoiltRow{662.009, pass, 39.991}, SpoiltRow{662.010, warn, 39.990}, SpoiltRow{702, warn, 0},
                                 SpoiltRow{702.009, warn, -0.009}, SpoiltRow{702.010, fail, -0.010}}) {
        const auto checks = checks_on(guard_faces, [&](CutPlan& plan) { plan.guard_half[Tube::inner] = mm(row.guard); });
        hold(checks[static_cast<std::size_t>(CheckId::guard_clearance)], {"a plan with a long guard", {}, row.result, row.value, {}, 40});
    }
}

TEST_CASE("guard-cover: what the guards overlap at the greatest known longest")
{
    // g_A' + g_B' = 1134, less u_gA + u_gB + u_X + 2 t = 8. The workshop's own figure: 50.
    const auto at = [](double length) { return longest(Range::standing, length); };
    hold_all(CheckId::guard_cover,
             {{"on the limit", at(1084), pass, 50, 42, 50},
              {"short by what decides nothing", at(1084.009), pass, 49.991, 41.991, 50},
              {"short", at(1084.010), warn, 49.990, 41.990, 50},
              {"worst 0", at(1126), warn, 8, 0, 50},
              {"worst under 0 by what decides nothing", at(1126.009), warn, 7.991, -0.009, 50},
              {"worst under 0", at(1126.010), fail, 7.990, -0.010, 50},
              {"no standing: turning is the greatest",
               [](Setting& s) { s.fit().longest[Range::standing].reset(); }, pass, 1134 - 850, 1134 - 850 - 8, 50},
              {"a guard not measured", [](Setting& s) { s.half(Tube::outer).guard.reset(); }, not_checked, {}, {}, {}}});
}

TEST_CASE("guard-setback: 25 mm short of the tube at most, and not beyond it")
{
    // An implement manual: a guard tube ends not more than 25 mm short of its drive tube.
    const auto inner_guard = [](double length) { return both(guard_faces, guards(length, 650)); };
    hold_all(CheckId::guard_setback,
             {{"as drawn", [](Setting&) {}, pass, 18, {}, 25},
              {"on the limit", guards(665, 650), pass, 25, {}, 25},
              {"over by what decides nothing", guards(664.991, 650), pass, 25.009, {}, 25},
              {"over", guards(664.990, 650), warn, 25.010, {}, 25},
              {"even with its tube: the other decides", inner_guard(690), pass, 18, {}, 25},
              {"beyond by what decides nothing", inner_guard(690.009), pass, -0.009, {}, 25},
              {"beyond", inner_guard(690.010), warn, -0.010, {}, 25},
              {"one not measured: the other", [](Setting& s) { s.half(Tube::outer).guard.reset(); }, pass, 18, {}, 25},
              {"none measured",
               [](Setting& s) { for (const Tube tube : both_tubes) s.half(tube).guard.reset(); }, not_checked, {}, {}, {}}});
}

TEST_CASE("a shaft whose halves cannot be known is refused by overlap-turning alone")
{
    Setting setting;
    for (const Tube tube : both_tubes) setting.half(tube).length.reset();
    setting.series_half(Tube::inner).shoulder.reset();
    const WorkOrder order = worked(setting);
    CHECK(order.verdict == Verdict::refused);
    CHECK(reasons_of(order).size() == 1);
    CHECK(check(order, CheckId::overlap_turning).result == fail);
    CHECK(check(order, CheckId::closing_clearance).result == not_checked);
}
