// The checks that need no overlap: angles, ripple, what may be cut, locks, connections and the device, each at its limits.
#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using enum CheckResult;

namespace {

// One stated angle at one end, and no other there.
Change angle(End end, Range range, double degrees)
{
    return [=](Setting& s) {
        s.fit().angles[end] = {};
        s.fit().angles[end][range] = Angle::from_degrees(degrees);
    };
}
Change both(Change first, Change second)
{
    return [=](Setting& s) {
        first(s);
        second(s);
    };
}
Change angle_limit_of(Limit limit, double degrees)
{
    return [=](Setting& s) { s.job.limits[limit] = LimitSetting{{Angle::from_degrees(degrees).mdeg(), 1}, {}}; };
}
// The inner half is at the implement, the outer at the tractor.
Change feature(Tube tube, Feature which)
{
    return [=](Setting& s) { s.half(tube).features = {which}; };
}
Change hole(double far_edge)
{
    return [=](Setting& s) { s.half(Tube::inner).lubrication_hole = measured(far_edge); };
}
Change one_chain_limit(double millimetres)
{
    return [=](Setting& s) { s.job.limits[Limit::one_chain_shortening] = LimitSetting{{mm(millimetres).um(), 1}, {}}; };
}
const Change no_cut = [](Setting& s) { s.fit().shortest = measured(836); };

}  // namespace

TEST_CASE("joint angles of a standard joint: 25, 35 and 90 degrees")
{
    const auto at = [](Range range, double degrees) { return angle(End::implement, range, degrees); };
    // 25 common practice; 35 two manuals; 90 published practice.
    hold_all(CheckId::joint_angle_implement,
             {{"working on its limit", at(Range::working, 25), pass, 25, {}, 25},
              {"working past its limit", at(Range::working, 25.001), warn, 25.001, {}, 25},
              {"working on the turning limit", at(Range::working, 35), warn, 35, {}, 25},
              {"working past the turning limit", at(Range::working, 35.001), fail, 35.001, {}, 25},
              {"turning on its limit", at(Range::turning, 35), pass, 35, {}, 35},
              {"turning past its limit", at(Range::turning, 35.001), fail, 35.001, {}, 35},
              {"standing on its limit", at(Range::standing, 90), pass, 90, {}, 90},
              {"standing past its limit", at(Range::standing, 90.001), fail, 90.001, {}, 90},
              {"no joint folds past 90 whatever the limit",
               both(at(Range::standing, 90.001), angle_limit_of(Limit::angle_standard_standing, 120)), fail, 90.001, {}, 120},
              {"the nearest to its limit decides", [](Setting&) {}, pass, 8, {}, 25},
              {"none given", [](Setting& s) { s.fit().angles[End::implement] = {}; }, not_checked, {}, {}, {}}});
}

TEST_CASE("joint angles of a wide-angle joint: 25, 70 and 70 degrees")
{
    const auto at = [](Range range, double degrees) { return angle(End::tractor, range, degrees); };
    hold_all(CheckId::joint_angle_tractor,
             {{"working on its limit", at(Range::working, 25), pass, 25, {}, 25},
              {"working past its limit", at(Range::working, 25.001), warn, 25.001, {}, 25},
              {"working past the turning limit", at(Range::working, 70.001), fail, 70.001, {}, 25},
              {"turning on its limit", at(Range::turning, 70), pass, 70, {}, 70},
              {"turning past its limit", at(Range::turning, 70.001), fail, 70.001, {}, 70},
              {"standing on its limit", at(Range::standing, 70), pass, 70, {}, 70},
              {"standing past its limit", at(Range::standing, 70.001), fail, 70.001, {}, 70}});
}

TEST_CASE("irregularity warns past its limit and never refuses")
{
    const auto at = [](double degrees) { return angle(End::implement, Range::working, degrees); };
    const auto limited = [&](double degrees, double percent) {
        return both(at(degrees), [=](Setting& s) { s.job.limits[Limit::irregularity] = LimitSetting{{thousandths(percent).value(), 1}, {}}; });
    };
    hold_all(CheckId::irregularity,
             {{"tan 8 · sin 8", at(8), pass, 1.956, {}, 10},
              {"on the limit", limited(8, 1.956), pass, 1.956, {}, 1.956},
              {"past the limit", limited(8, 1.955), warn, 1.956, {}, 1.955},
              {"45 degrees: tan 45 · sin 45", at(45), warn, 70.711, {}, 10},
              {"90 degrees has no ripple", at(90), not_checked, {}, {}, {}},
              {"no working angle", angle(End::implement, Range::turning, 8), not_checked, {}, {}, {}},
              {"two wide-angle joints turn evenly",
               [](Setting& s) { s.job.shaft.ends[End::implement].joint = JointKind::wide_angle; }, pass, 0, {}, 10}});
}

TEST_CASE("irregularity against published speeds of one joint")
{
    // Source: published exam key (500 min⁻¹ at 20 degrees) and computed tables (540 min⁻¹); speeds to 0.01 min⁻¹, so that
    // (max − min)/mean is known to 0.01/500, 0.002 %, and the check rounds to 0.001 %.
    struct SpeedRow { double mean, degrees, least, greatest; };
    for (const SpeedRow& row : {SpeedRow{500, 20, 469.85, 532.09}, SpeedRow{540, 10, 531.80, 548.33}, SpeedRow{540, 25, 489.41, 595.82},
                                SpeedRow{540, 35, 442.34, 659.22}}) {
        Setting setting;
        angle(End::implement, Range::working, row.degrees)(setting);
        const Check found = check(worked(setting), CheckId::irregularity);
        INFO(row.degrees);
        CHECK(static_cast<double>(*found.value) / 1000.0 == Approx(100 * (row.greatest - row.least) / row.mean).margin(0.0025));
    }
    // In one plane and in phase 25 and 15 degrees are as one joint of 20.236 degrees (computed): 540 becomes 506.67 to 575.52.
    Setting two;
    two.job.shaft.ends[End::tractor].joint = JointKind::standard;
    angle(End::tractor, Range::working, 25)(two);
    angle(End::implement, Range::working, 15)(two);
    const Check found = check(worked(two), CheckId::irregularity);
    CHECK(static_cast<double>(*found.value) / 1000.0 == Approx(100 * (575.52 - 506.67) / 540).margin(0.0025));
    CHECK(found.result == warn);
}

TEST_CASE("shortening-allowed: what forbids the cut, and what asks for work after it")
{
    const Change forbids = [](Setting& s) { s.series_half(Tube::inner).shortening_forbidden = true; };
    const Change series_forbids = [](Setting& s) { s.catalogue.series[0].shortening_forbidden = true; };
    // a' = 596, guards lose 94. One user handbook: about 70 mm on one chain.
    hold_all(CheckId::shortening_allowed,
             {{"nothing", [](Setting&) {}, pass, {}, {}, {}},
              {"the half forbids it", forbids, fail, {}, {}, {}},
              {"the series forbids it", series_forbids, fail, {}, {}, {}},
              {"forbidden, but nothing is cut", both(no_cut, series_forbids), pass, {}, {}, {}},
              {"ends at the hole", hole(596), pass, {}, {}, {}},
              {"ends before the hole by what decides nothing", hole(596.009), pass, {}, {}, {}},
              {"ends before the hole", hole(596.010), fail, {}, {}, {}},
              {"coated", feature(Tube::inner, Feature::coated), warn, {}, {}, {}},
              {"end stop", feature(Tube::outer, Feature::end_stop), warn, {}, {}, {}},
              {"coated, nothing cut", both(no_cut, feature(Tube::inner, Feature::coated)), pass, {}, {}, {}},
              {"one chain", feature(Tube::inner, Feature::one_chain_guard), warn, {}, {}, {}},
              {"one chain, on its limit", both(feature(Tube::inner, Feature::one_chain_guard), one_chain_limit(94)), pass, {}, {}, {}},
              {"one chain, past it by what decides nothing",
               both(feature(Tube::inner, Feature::one_chain_guard), one_chain_limit(93.991)), pass, {}, {}, {}},
              {"one chain, past it", both(feature(Tube::inner, Feature::one_chain_guard), one_chain_limit(93.990)), warn, {}, {}, {}}});
}

TEST_CASE("locking: no lock of a primary shaft stands out, EN 12965:2019")
{
    const auto lock = [](std::optional<Lock> which, std::optional<int> built, Role role) {
        return [=](Setting& s) {
            s.job.shaft.ends[End::implement].lock = which;
            s.job.shaft.built = built;
            s.job.shaft.role = role;
        };
    };
    for (const Lock exposed : {Lock::exposed_collar, Lock::exposed_push_pin})
        hold_all(CheckId::locking, {{"built unknown", lock(exposed, std::nullopt, Role::primary), warn, {}, {}, {}},
                                    {"built 2021", lock(exposed, 2021, Role::primary), fail, {}, {}, {}},
                                    {"built 2020", lock(exposed, 2020, Role::primary), warn, {}, {}, {}},
                                    {"secondary", lock(exposed, 2021, Role::secondary), pass, {}, {}, {}}});
    for (const Lock covered : {Lock::covered_collar, Lock::shrouded_push_pin, Lock::clamp_bolt, Lock::tapered_clamp, Lock::flange})
        hold_all(CheckId::locking, {{"covered", lock(covered, 2021, Role::primary), pass, {}, {}, {}}});
    hold_all(CheckId::locking, {{"unknown", lock(Lock::unknown, 2021, Role::primary), warn, {}, {}, {}},
                                {"not stated", lock(std::nullopt, 2021, Role::primary), not_checked, {}, {}, {}}});
}

TEST_CASE("connection: the same type on both sides, at its rated speed")
{
    const auto ends = [](std::optional<std::string> connection, std::optional<std::string> onto, int speed) {
        return [=](Setting& s) {
            s.job.shaft.ends[End::tractor].connection = connection;
            s.job.shaft.ends[End::tractor].onto = onto;
            s.job.shaft.speed = speed;
        };
    };
    // Rated speeds by ISO 500-1:2014: type 1 540 (1000 is met too), type 2 1000.
    hold_all(CheckId::connection, {{"matches", ends("1-3/8-6", "1-3/8-6", 540), pass, {}, {}, {}},
                                   {"differs", ends("1-3/8-6", "1-3/8-21", 540), fail, {}, {}, {}},
                                   {"type 1 at 1000", ends("1-3/8-6", "1-3/8-6", 1000), pass, {}, {}, {}},
                                   {"type 2 at 1000", ends("1-3/8-21", "1-3/8-21", 1000), pass, {}, {}, {}},
                                   {"type 2 at 540", ends("1-3/8-21", "1-3/8-21", 540), warn, {}, {}, {}},
                                   {"what it goes onto is not stated", ends("1-3/8-6", std::nullopt, 540), not_checked, {}, {}, {}},
                                   {"not stated", ends(std::nullopt, "1-3/8-6", 540), not_checked, {}, {}, {}}});
}

TEST_CASE("overload-device: not on the tractor end of a primary shaft")
{
    const auto device = [](End end, std::optional<Device> which, Role role) {
        return [=](Setting& s) {
            s.job.shaft.ends[end].device = which;
            s.job.shaft.role = role;
        };
    };
    // Source: three manuals; a torque limiter or overrunning device belongs at the machine end.
    for (const Device which : {Device::slip_clutch, Device::overrunning_clutch, Device::shear_bolt})
        hold_all(CheckId::overload_device, {{"tractor end", device(End::tractor, which, Role::primary), fail, {}, {}, {}},
                                            {"implement end", device(End::implement, which, Role::primary), pass, {}, {}, {}},
                                            {"tractor end, secondary", device(End::tractor, which, Role::secondary), pass, {}, {}, {}}});
    hold_all(CheckId::overload_device, {{"not stated", device(End::tractor, std::nullopt, Role::primary), not_checked, {}, {}, {}}});
}
