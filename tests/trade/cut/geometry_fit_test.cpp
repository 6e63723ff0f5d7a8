// A fit that holds a machine's geometry: what is computed counts as if it had been measured, and what was measured wins.
#include "hitch/geometry_figures.hpp"
#include "hitch/hitch_shaft.hpp"
#include "shaftcut/trade/cut/datum.hpp"
#include "support/catch.hpp"
#include "support/machine_jobs.hpp"
#include "support/sentences.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const GeometryReading& geometry_of(const WorkOrder& order) { return order.fits.at(0).geometry.value(); }

std::string origin_of(const ExtremeLength& length)
{
    const Wording w(Units::mm);
    return "computed from the machine's geometry, " + in_words(length.at, w) + ", " + doubt_in_words(length, w);
}

// The same job with the computed lengths and angles written in as measured between the crosses.
Job measured_instead(const Job& job, const WorkOrder& order)
{
    Job found = job;
    JobFit& fit = found.fits[0];
    fit.machine.reset();
    fit.reference = Reference::inner_cross;
    fit.shortest = Measurement{order.fit.shortest->value, order.fit.shortest->plus_minus, {}};
    for (const Range range : all_ranges)
        if (const auto& longest = order.fit.longest[range]) fit.longest[range] = Measurement{longest->value, longest->plus_minus, {}};
    fit.angles = order.fit.angles;
    return found;
}

}  // namespace

TEST_CASE("the shaft that meets a machine has the series' yokes and spacing, and its tube's phase step")
{
    const Catalogue series = catalogue();
    const auto meets = hitch_shaft(job().shaft, all_of(&series.series[0]));
    REQUIRE(std::holds_alternative<HitchShaft>(meets));
    const HitchShaft& shaft = std::get<HitchShaft>(meets);
    CHECK(shaft.tractor.cross_to_groove == mm(60));
    CHECK(shaft.tractor.spacing == mm(64));
    CHECK(shaft.implement.spacing == Length());
    CHECK(shaft.phase_step == Angle::degrees(90));
    JobShaft unknown = job().shaft;
    unknown.ends[End::implement].connection.reset();
    CHECK(std::get<std::vector<End>>(hitch_shaft(unknown, all_of(&series.series[0]))) == std::vector{End::implement});
    CHECK(std::get<std::vector<End>>(hitch_shaft(unknown, all_of(nullptr))) == std::vector{End::tractor, End::implement});
}

TEST_CASE("computed lengths and angles are used as if they had been measured")
{
    for (const Machine& machine : {Machine(lifted_machine()), Machine(turned_machine(25))}) {
        const Job with_machine = machine_job(machine);
        const WorkOrder order = worked(with_machine);
        const OperatingLengths& lengths = geometry_of(order).lengths;
        REQUIRE(order.fit.shortest);
        CHECK(order.fit.shortest->value == lengths.shortest.length);
        CHECK(order.fit.shortest->plus_minus == lengths.shortest.plus_minus);
        CHECK(order.fit.longest[Range::standing]->value == lengths.ranges.standing->longest.length);
        CHECK(order.fit.angles[End::implement][Range::turning] == std::optional(lengths.ranges.turning->implement.angle));
        const WorkOrder measured_order = worked(measured_instead(with_machine, order));
        CHECK(measured_order.verdict == order.verdict);
        REQUIRE(measured_order.cut.has_value() == order.cut.has_value());
        if (order.cut)
            for (const Tube tube : both_tubes) CHECK(measured_order.cut->plan.cut[tube] == order.cut->plan.cut[tube]);
        for (std::size_t i = 0; i < order.checks.size(); ++i) {
            if (order.checks[i].id == CheckId::irregularity) continue;
            INFO(to_word(order.checks[i].id));
            CHECK(measured_order.checks[i].result == order.checks[i].result);
            CHECK(measured_order.checks[i].value == order.checks[i].value);
            CHECK(measured_order.checks[i].worst == order.checks[i].worst);
        }
    }
}

TEST_CASE("a measurement wins over the geometry, whichever it is")
{
    Job mixed = machine_job(lifted_machine());
    const WorkOrder computed = worked(mixed);
    mixed.fits[0].longest[Range::standing] = measured(computed.fit.longest[Range::standing]->value.mm() - 1);
    mixed.fits[0].angles[End::tractor][Range::turning] = Angle::degrees(5);
    const WorkOrder order = worked(mixed);
    CHECK(order.fit.longest[Range::standing]->value == mixed.fits[0].longest[Range::standing]->length);
    CHECK(order.fit.angles[End::tractor][Range::turning] == std::optional(Angle::degrees(5)));
    CHECK(order.fit.shortest->value == computed.fit.shortest->value);
    CHECK(order.fits[0].computed_longest(Range::standing) == nullptr);
    CHECK(order.fits[0].computed_longest(Range::turning) != nullptr);
    CHECK(check(order, CheckId::consistency).result == CheckResult::pass);
}

TEST_CASE("a measurement outside what the geometry reaches by more than its tolerance is doubted, on both sides")
{
    const Job base = machine_job(lifted_machine());
    const OperatingLengths lengths = geometry_of(worked(base)).lengths;
    const auto result = [&](Length longest) {
        Job mixed = base;
        mixed.fits[0].longest[Range::turning] = Measurement{longest, mm(3), {}};
        return check(worked(mixed), CheckId::consistency).result;
    };
    const RangeExtremes& turning = *lengths.ranges.turning;
    CHECK(result(turning.longest.length + mm(3)) == CheckResult::pass);
    CHECK(result(turning.longest.length + mm(3.01)) == CheckResult::warn);
    Job mixed = base;
    mixed.fits[0].shortest = Measurement{lengths.shortest.length - mm(3), mm(3), {}};
    CHECK(check(worked(mixed), CheckId::consistency).result == CheckResult::pass);
    mixed.fits[0].shortest->length = lengths.shortest.length - mm(3.01);
    const Check doubted = check(worked(mixed), CheckId::consistency);
    CHECK(doubted.result == CheckResult::warn);
    CHECK(said(doubted).find("less than the machine's geometry can reach") != std::string::npos);
}

TEST_CASE("a position that was not measured and goes past a measurement by more than its tolerance is a warning that names it")
{
    const Job base = machine_job(lifted_machine());
    const OperatingLengths lengths = geometry_of(worked(base)).lengths;
    Job mixed = base;
    mixed.fits[0].shortest = Measurement{lengths.shortest.length + mm(0.5), mm(0.5), {}};
    CHECK(check(worked(mixed), CheckId::consistency).result == CheckResult::pass);
    mixed.fits[0].shortest->length = lengths.shortest.length + mm(0.51);
    const WorkOrder order = worked(mixed);
    const Check undercut = check(order, CheckId::consistency);
    CHECK(undercut.result == CheckResult::warn);
    CHECK(said(undercut).find("goes past the measured shortest") != std::string::npos);
    CHECK(said(undercut).find("by 0.5 mm") != std::string::npos);
    CHECK(said(undercut).find(in_words(lengths.shortest.at, Wording(Units::mm))) != std::string::npos);
    CHECK(order.fit.shortest->value == mixed.fits[0].shortest->length);
    for (const Range range : all_ranges) {
        const ExtremeLength& longest = lengths.ranges[range]->longest;
        const auto result = [&](Length length) {
            Job exceeded = base;
            exceeded.fits[0].longest[range] = Measurement{length, mm(0.5), {}};
            return check(worked(exceeded), CheckId::consistency);
        };
        CHECK(result(longest.length - mm(0.5)).result == CheckResult::pass);
        const Check exceeded = result(longest.length - mm(0.51));
        CHECK(exceeded.result == CheckResult::warn);
        CHECK(said(exceeded).find("goes past the measured longest " + std::string(to_word(range))) != std::string::npos);
        CHECK(said(exceeded).find(in_words(longest.at, Wording(Units::mm))) != std::string::npos);
    }
}

TEST_CASE("ranges of a geometry need not contain each other, measured ones must")
{
    Mounted machine = lifted_machine();
    machine.ranges.working = support::heights(200, 300);
    machine.ranges.turning = support::heights(400, 440);
    machine.ranges.standing = support::heights(410, 420);
    const WorkOrder order = worked(machine_job(machine));
    REQUIRE(order.fit.longest[Range::working]->value > order.fit.longest[Range::turning]->value);
    CHECK(check(order, CheckId::consistency).result == CheckResult::pass);
    const Job as_measured = measured_instead(machine_job(machine), order);
    CHECK(check(worked(as_measured), CheckId::consistency).result == CheckResult::fail);
}

TEST_CASE("a failed joint angle names its posture, and the turn up to which the shaft would serve")
{
    const WorkOrder order = worked(machine_job(turned_machine(50)));
    const Check& angle = check(order, CheckId::joint_angle_tractor);
    REQUIRE(angle.result == CheckResult::fail);
    CHECK(said(angle).find("(turned 50° to the right") != std::string::npos);
    REQUIRE(says(order.ways_out, "would serve with the PTO turning up to a turn of "));
    for (const std::string& way : say_all(order.ways_out, wording_of(order))) {
        const std::string words = "would serve with the PTO turning up to a turn of ";
        const std::size_t at = way.find(words);
        if (at == std::string::npos) continue;
        const double served = std::stod(way.substr(at + words.size()));
        for (const auto& [turn, holds] : {std::pair(served, true), std::pair(served + 0.2, false)}) {
            Trailed narrower = turned_machine(50);
            narrower.ranges.turning->turn.value = Angle::from_degrees(turn);
            const auto extremes = *geometry_of(worked(machine_job(narrower))).lengths.ranges.turning;
            const bool within = extremes.tractor.angle <= Angle::degrees(35) && extremes.implement.angle <= Angle::degrees(35);
            CHECK(within == holds);
        }
    }
}

TEST_CASE("a trailed machine is not told to be lifted less, nor a mounted one to turn less")
{
    CHECK(says(worked(machine_job(turned_machine(50))).ways_out, "Limit the turn so that the joint at "));
    Mounted machine = lifted_machine();
    machine.input_tilt = support::angle(60);
    CHECK(says(worked(machine_job(machine)).ways_out, "Limit the lift so that the joint at "));
    Job both = machine_job(turned_machine(50));
    both.fits.push_back(machine_job(machine).fits[0]);
    CHECK(says(worked(both).ways_out, "Limit the turn or the lift so that the joint at "));
}

TEST_CASE("a lift that goes too high for the overlap says how high this shaft would serve")
{
    Mounted machine = lifted_machine();
    machine.input_above = support::length(350);
    machine.ranges.standing = support::heights(300, 1150);
    const WorkOrder order = worked(machine_job(machine));
    REQUIRE(check(order, CheckId::overlap_standing).result == CheckResult::fail);
    CHECK(says(order.ways_out, "with the PTO stopped with the lower hitch point lifted from 300 mm up to "));
}

TEST_CASE("the basis names the two dimensions that matter most")
{
    const WorkOrder order = worked(machine_job(lifted_machine()));
    const ExtremeLength& shortest = geometry_of(order).lengths.shortest;
    const std::string basis = basis_said(check(order, CheckId::closing_clearance));
    for (std::size_t i = 0; i < 2; ++i) CHECK(basis.find(shortest.influences[i].dimension + " (") != std::string::npos);
    CHECK(basis.find(shortest.influences[2].dimension + " (") == std::string::npos);
    CHECK(basis_said(check(order, CheckId::overlap_turning)).find("computed from the machine's geometry") != std::string::npos);
}

TEST_CASE("the ripple comes from the geometry, with what it would be one step out of phase, unless a working angle was measured")
{
    Job twisted = machine_job(turned_machine(25));
    const WorkOrder order = worked(twisted);
    const OperatingLengths& lengths = geometry_of(order).lengths;
    const Check& ripple = check(order, CheckId::irregularity);
    CHECK(*ripple.value == std::llround(*lengths.irregularity->percent * 1000));
    CHECK(said(ripple).find("Put together one step of 90° out of phase it would be up to ") != std::string::npos);
    CHECK(said(ripple).find("always") == std::string::npos);
    twisted.fits[0].angles[End::tractor][Range::working] = Angle::degrees(10);
    CHECK(basis_said(check(worked(twisted), CheckId::irregularity)).find("in one plane") != std::string::npos);
}

TEST_CASE("the step that puts the shaft together in phase says what one step of its tubes out of phase would do")
{
    for (const auto& [shape, step] : {std::pair(Shape::lemon, 90), {Shape::triangular, 120}}) {
        Catalogue series = catalogue();
        series.series[0].shape = shape;
        const WorkOrder order = work_up(machine_job(turned_machine(25)), series, workshop(), Units::mm);
        const OperatingLengths& lengths = geometry_of(order).lengths;
        REQUIRE(lengths.irregularity_out_of_phase->percent);
        const auto text = [](double percent) { return figure(Angle::from_degrees(percent)) + " %"; };
        CHECK(says(order.steps, "strokes in line. The speed then ripples by up to " + text(*lengths.irregularity->percent) + ", one step (" +
                                        std::to_string(step) + "°) out by up to " + text(*lengths.irregularity_out_of_phase->percent) + "."));
    }
    const WorkOrder wide = worked(job());
    CHECK_FALSE(says(wide.steps, "out by up to"));
}

TEST_CASE("the note on a lift says what a measurement at its ends would miss")
{
    Job bends = machine_job(lifted_machine());
    Mounted machine = lifted_machine();
    machine.lower_pivot_behind = support::length(-220);
    machine.lower_pivot_height = support::length(495);
    machine.lower_link = support::length(925);
    machine.top_pivot_behind = support::length(-160);
    machine.top_pivot_height = support::length(1055);
    machine.top_link = support::length(815);
    machine.mast = support::length(510);
    machine.input_above = support::length(85);
    machine.ranges.standing = support::heights(220, 980);
    bends.fits[0].machine = machine;
    bends.limits[Limit::closing_clearance] = LimitSetting{{20'000, 1}, {}};
    CHECK(says(worked(bends).notes, "bottom on the way"));
    CHECK(says(worked(machine_job(lifted_machine())).notes, "left on the way"));
    const WorkOrder order = worked(machine_job(lifted_machine()));
    CHECK(says(order.notes, "The shortest lies inside the lift"));
    CHECK(says(worked(machine_job(turned_machine(25))).notes, "The joint angles would come out") );
    Job wide = job();
    wide.fits[0] = JobFit();
    wide.fits[0].machine = turned_machine(25);
    CHECK(says(worked(wide).notes, "the centre of the wide-angle joint at the tractor end"));
}

TEST_CASE("postures in words")
{
    CHECK(in_words(TrailedPosture{Angle::degrees(35), Angle::degrees(-10), Angle::degrees(5)}, Wording(Units::mm)) ==
          "turned 35° to the right, rear 10° up, right side 5° up");
    CHECK(in_words(TrailedPosture{}, Wording(Units::mm)) == "straight ahead and level");
    CHECK(in_words(MountedPosture{mm(421.5)}, Wording(Units::mm)) == "with the lower hitch point at 421.5 mm");
}

TEST_CASE("scenes show the crosses as far apart as their length and spacing say, and the curve holds the shortest")
{
    for (const Machine& machine : {Machine(lifted_machine()), Machine(turned_machine(40))}) {
        Job wide = job();
        wide.fits[0] = JobFit();
        wide.fits[0].machine = machine;
        const WorkOrder order = worked(wide);
        const MachineView& view = order.machines.at(0);
        CHECK(view.scenes.size() == (view.mounted ? 3U : 2U));
        for (const MachineScene& scene : view.scenes) {
            CHECK(size(scene.inner[End::implement] - scene.inner[End::tractor]) == Approx(scene.length.mm()).margin(0.001));
            CHECK(size(scene.inner[End::tractor] - scene.outer[End::tractor]) == Approx(64).margin(0.001));
            CHECK(size(scene.inner[End::implement] - scene.outer[End::implement]) == Approx(0).margin(0.001));
        }
        for (const CurvePoint& point : view.curve) CHECK(point.shortest >= order.fit.shortest->value - mm(0.01));
    }
}

TEST_CASE("of two machines of the same lengths a check tells the doubt of the one known less well, which decides")
{
    Job two = machine_job(lifted_machine());
    Mounted doubtful = lifted_machine();
    doubtful.input_behind.plus_minus = mm(20);
    two.fits.push_back(machine_job(doubtful).fits[0]);
    for (const bool swapped : {false, true}) {
        if (swapped) std::swap(two.fits[0], two.fits[1]);
        const WorkOrder order = worked(two);
        const OperatingLengths& lengths = order.fits[swapped ? 0 : 1].geometry->lengths;
        REQUIRE(order.fit.shortest->plus_minus == lengths.shortest.plus_minus);
        CHECK(says({basis_said(check(order, CheckId::closing_clearance))}, origin_of(lengths.shortest)));
        CHECK(says({basis_said(check(order, CheckId::overlap_turning))}, origin_of(lengths.ranges.turning->longest)));
    }
}
