// For every check that can refuse, a job that it alone refuses; contradictions; which limit is in force.
#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using enum CheckResult;

namespace {

struct RefusingRow {
    CheckId id;
    Change change;
};

// Guard clearance is the one check whose value no job can bring under its limit: the cut itself sees to it.
const std::vector<RefusingRow> refusing{
    {CheckId::consistency, [](Setting& s) { s.fit().longest[Range::working] = measured(860); }},
    {CheckId::closing_clearance, [](Setting& s) { s.fit().shortest->plus_minus = mm(37); }},
    {CheckId::overlap_working, [](Setting& s) { set_longest(s, Range::working, 940); }},
    {CheckId::overlap_turning, [](Setting& s) { set_longest(s, Range::turning, 1020); }},
    {CheckId::overlap_standing, [](Setting& s) { set_longest(s, Range::standing, 1071); }},
    {CheckId::tube_left, [](Setting& s) { s.series_half(Tube::inner).least_tube = mm(535); }},
    {CheckId::shortening_allowed, [](Setting& s) { s.catalogue.series[0].shortening_forbidden = true; }},
    {CheckId::guard_cover,
     [](Setting& s) {
         s.half(Tube::inner).guard = measured(440);
         s.half(Tube::outer).guard = measured(420);
     }},
    {CheckId::joint_angle_tractor, [](Setting& s) { s.fit().angles[End::tractor][Range::turning] = Angle::degrees(71); }},
    {CheckId::joint_angle_implement, [](Setting& s) { s.fit().angles[End::implement][Range::turning] = Angle::degrees(36); }},
    {CheckId::locking,
     [](Setting& s) {
         s.job.shaft.ends[End::tractor].lock = Lock::exposed_collar;
         s.job.shaft.built = 2021;
     }},
    {CheckId::connection, [](Setting& s) { s.job.shaft.ends[End::tractor].onto = "1-3/8-21"; }},
    {CheckId::overload_device, [](Setting& s) { s.job.shaft.ends[End::tractor].device = Device::slip_clutch; }},
    {CheckId::rating,
     [](Setting& s) {
         s.job.circumstances.power = 16'001;
         s.catalogue.series[0].ratings = {{540, 16'000}};
     }},
    {CheckId::condition,
     [](Setting& s) {
         s.job.shaft.condition = Condition();
         s.job.shaft.condition->weld = Weld::welded;
     }},
};

Change longest(Range range, double length)
{
    return [=](Setting& s) { s.fit().longest[range] = measured(length); };
}
Change half(Tube tube, double length)
{
    return [=](Setting& s) { s.half(tube).length = measured(length); };
}
Change guard(double length)
{
    return [=](Setting& s) { s.half(Tube::inner).guard = measured(length); };
}
Change seat(double length)
{
    return [=](Setting& s) {
        s.series_half(Tube::inner).seat = mm(length);
        s.series_half(Tube::inner).shoulder.reset();  // it would be below such a seat
    };
}
Change shortest(double length)
{
    return [=](Setting& s) { s.fit().shortest = measured(length); };
}
// Halves of 398 that barely meet at the closed length of 796, of a shaft whose shoulders nobody knows.
Change barely_meeting(double inner)
{
    return [=](Setting& s) {
        for (const Tube tube : both_tubes) s.half(tube).guard.reset();
        s.series_half(Tube::inner).shoulder.reset();
        s.series_half(Tube::outer).shoulder.reset();
        s.half(Tube::inner).length = measured(inner);
        s.half(Tube::outer).length = measured(398);
    };
}
Change angles(double working, double turning)
{
    return [=](Setting& s) {
        s.fit().angles[End::implement][Range::working] = Angle::from_degrees(working);
        s.fit().angles[End::implement][Range::turning] = Angle::from_degrees(turning);
    };
}

CheckResult consistency_of(const Change& change)
{
    Setting setting;
    change(setting);
    return check(worked(setting), CheckId::consistency).result;
}

Setting with_clearances(std::optional<double> job, std::optional<double> series, std::optional<double> workshop)
{
    Setting setting;
    const auto set = [](Limits& limits, std::optional<double> value) {
        if (value) limits[Limit::closing_clearance] = LimitSetting{{mm(*value).um(), 1}, {}};
    };
    set(setting.job.limits, job);
    set(setting.catalogue.series[0].limits, series);
    set(setting.workshop.limits, workshop);
    return setting;
}

}  // namespace

TEST_CASE("every check that can refuse refuses a job alone")
{
    for (const RefusingRow& row : refusing) {
        Setting setting;
        row.change(setting);
        const WorkOrder order = worked(setting);
        INFO(to_word(row.id));
        CHECK(order.verdict == Verdict::refused);
        CHECK_FALSE(order.cut);
        CHECK(reasons_of(order).size() == 1);
        CHECK_FALSE(order.ways_out.empty());
        for (const Check& one : order.checks) {
            INFO(to_word(one.id) << ": " << said(one));
            CHECK((one.result == fail) == (one.id == row.id));
        }
    }
}

TEST_CASE("contradictions at, just inside and just outside of what geometry allows")
{
    struct Row { const char* what; Change change; CheckResult result; };
    for (const Row& row : {
             Row{"working on turning", longest(Range::working, 850), pass}, Row{"working over by nothing", longest(Range::working, 850.009), pass},
             Row{"working over turning", longest(Range::working, 850.010), fail}, Row{"standing on turning", longest(Range::standing, 850), pass},
             Row{"standing under by nothing", longest(Range::standing, 849.991), pass},
             Row{"standing under turning", longest(Range::standing, 849.990), fail}, Row{"working on shortest", longest(Range::working, 742), pass},
             Row{"working under by nothing", longest(Range::working, 741.991), pass}, Row{"working under shortest", longest(Range::working, 741.990), fail},
             Row{"shortest over turning", shortest(850.010), fail}, Row{"no shortest", shortest(0), fail}, Row{"shortest 0.009", shortest(0.009), fail},
             Row{"shortest at its bound", shortest(200), pass}, Row{"shortest under its bound", shortest(199.999), fail}, Row{"half as long as closed", half(Tube::inner, 796), fail},
             Row{"half short of closed by nothing", half(Tube::outer, 795.991), fail}, Row{"half short of closed", half(Tube::outer, 795.990), warn},
             Row{"guard as long as closed", guard(796), fail}, Row{"guard short of closed by nothing", guard(795.991), fail},
             Row{"guard short of closed", guard(795.990), pass}, Row{"half beyond its seat", seat(689.990), pass},
             Row{"half beyond its seat by nothing", seat(689.991), fail}, Row{"half at its seat", seat(690), fail},
             Row{"halves meet by nothing", barely_meeting(398.009), fail}, Row{"halves meet", barely_meeting(398.010), pass},
             Row{"working angle on turning", angles(15, 15), pass}, Row{"working angle over turning", angles(15.001, 15), fail}}) {
        INFO(row.what);
        CHECK(std::string(to_word(consistency_of(row.change))) == to_word(row.result));
    }
}

TEST_CASE("the closed length against halves and shoulders: doubted past the sum of the tolerances, 6 mm")
{
    struct Row { double closed; CheckResult result; ClosedAgreement agreement; };
    // 860 from the outer cross; halves and shoulders give 796 between the inner crosses.
    for (const Row& row : {Row{860, pass, ClosedAgreement::agrees}, Row{866, pass, ClosedAgreement::agrees}, Row{866.009, pass, ClosedAgreement::agrees},
                           Row{866.010, warn, ClosedAgreement::longer}, Row{854, pass, ClosedAgreement::agrees},
                           Row{853.991, pass, ClosedAgreement::agrees}, Row{853.990, warn, ClosedAgreement::shorter}}) {
        Setting setting;
        setting.job.shaft.closed = measured(row.closed);
        const WorkOrder order = worked(setting);
        INFO(row.closed);
        CHECK(check(order, CheckId::consistency).result == row.result);
        CHECK(order.stops->agreement == row.agreement);
    }
}

TEST_CASE("fits of several tractors contradict themselves, not each other")
{
    JobFit without_standing = job().fits[0];
    without_standing.longest[Range::standing].reset();
    without_standing.longest[Range::turning] = measured(920);  // above the other's standing 905
    Setting setting;
    setting.job.fits = {job().fits[0], without_standing};
    CHECK(check(worked(setting), CheckId::consistency).result == pass);
    setting.job.fits = {without_standing, job().fits[0]};
    CHECK(check(worked(setting), CheckId::consistency).result == pass);
}

TEST_CASE("a limit is the job's, else the series', else the workshop's, else the default")
{
    struct Row { std::optional<double> job, series, workshop; double limit; CheckResult consistency; const char* basis; };
    for (const Row& row : {Row{{}, {}, {}, 40, pass, "common practice"}, Row{{}, {}, 50., 50, pass, "set by the workshop"},
                           Row{{}, 30., 50., 30, pass, "set by the series"}, Row{60., 30., 50., 60, pass, "set by the job"},
                           Row{45., {}, 50., 45, warn, "set by the job"}, Row{30., {}, {}, 30, warn, "set by the job"},
                           Row{50., {}, 50., 50, pass, "set by the job"}}) {
        const WorkOrder order = worked(with_clearances(row.job, row.series, row.workshop));
        const Check clearance = check(order, CheckId::closing_clearance);
        CHECK(clearance.limit == thousandths(row.limit));
        CHECK(basis_said(clearance).find(row.basis) != std::string::npos);
        CHECK(check(order, CheckId::consistency).result == row.consistency);
    }
}

TEST_CASE("a job's limit looser than the workshop's warns, whichever limit it is, and prints both")
{
    for (const LimitRow& row : limit_rows()) {
        for (const bool looser : {true, false}) {
            Setting setting;
            const LimitValue standard = row.standard;
            // One part in a thousand to either side.
            const LimitValue other{standard.numerator * (looser == row.greater_is_looser ? 1001 : 999), standard.denominator * 1000};
            setting.job.limits[row.limit] = LimitSetting{row.kind == LimitKind::fraction ? other : LimitValue{other.numerator / 1000, 1}, {}};
            const Check found = check(worked(setting), CheckId::consistency);
            INFO(row.name << (looser ? " looser" : " tighter"));
            CHECK((found.result == warn) == looser);
            CHECK((said(found).find(row.name) != std::string::npos) == looser);
            CHECK((said(found).find(limit_text(row.limit, standard, Wording(Units::mm))) != std::string::npos) == looser);
        }
    }
}
