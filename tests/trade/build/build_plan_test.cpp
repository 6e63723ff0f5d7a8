// Orders through to their plans: built, measured again and worked up as a shaft that exists.
#include "shaftcut/trade/build/build_plan.hpp"

#include "shaftcut/trade/saw/saw_order.hpp"

#include "support/catch.hpp"
#include "support/machine_jobs.hpp"
#include "support/orders.hpp"
#include "support/drawn/random_orders.hpp"
#include "support/sentences.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

// Shortest 742 less 40: the shaft of method 3's example after its cut, which had no guard shoulders.
TEST_CASE("a shaft is built to close with its clearance at the shortest length")
{
    const BuildPlan plan = planned(build_order());
    REQUIRE(plan.verdict == BuildVerdict::build);
    CHECK(plan.built->lengths.closed == mm(702));
    CHECK(plan.built->closed_at[Reference::outer_cross] == mm(766));
    CHECK(plan.built->overlap_closed == mm(468));
    CHECK(plan.built->overlap_shortest == mm(428));
    CHECK(plan.built->overlap_longest[Range::turning] == mm(320));
    // Sawn lengths carry the saw's ± 1, the shortest the tape's ± 2.
    CHECK(check(plan, CheckId::closing_clearance).value == 40'000);
    CHECK(check(plan, CheckId::closing_clearance).worst == 37'000);
    CHECK(check(plan, CheckId::overlap_turning).worst == 316'000);
    CHECK(reasons_of(plan).empty());
    CHECK(plan.ways_out.empty());
}

TEST_CASE("a shaft built to a fit and then measured as built fits as it is, at either reference")
{
    int built = 0;
    for (std::uint64_t number = 0; number < 6'000; ++number) {
        const OrderWorld world = random_order(number);
        if (world.order.closed) continue;
        const BuildPlan plan = plan_build(world.order, world.catalogue, world.workshop, world.units);
        if (!plan.built) continue;
        ++built;
        for (const Reference reference : {Reference::outer_cross, Reference::inner_cross}) {
            Job job = measured_as_built(plan, world.order.fits);
            // The closed length may be written at either cross; the fit's own reference must then be stated.
            for (JobFit& fit : job.fits)
                if (fit.between == Between::crosses) fit.reference = fit.reference.value_or(plan.reference);
            job.shaft.closed_reference = reference;
            job.shaft.closed.length = plan.built->closed_at[reference];
            job.limits = world.order.limits;
            const WorkOrder order = work_up(job, world.catalogue, world.workshop, world.units);
            INFO("order " << number << " from the " << to_word(reference));
            CHECK(order.verdict == Verdict::fits);
        }
    }
    CHECK(built > 300);
}

TEST_CASE("a shaft built to a machine's geometry fits that machine as it is")
{
    for (const Machine& machine : {Machine(lifted_machine()), Machine(turned_machine(30))}) {
        const Job from = machine_job(machine);
        BuildOrder order = build_order();
        order.shaft = from.shaft;
        order.shaft.halves = {};
        order.fits = from.fits;
        const BuildPlan plan = planned(order);
        INFO(running_text(say(plan.reasons, wording_of(plan))));
        REQUIRE(plan.built);
        CHECK(check(plan, CheckId::closing_clearance).value.value() >= 40'000);
        CHECK(check(plan, CheckId::joint_angle_tractor).result == CheckResult::pass);
        CHECK(work_up(measured_as_built(plan, order.fits), build_catalogue(), workshop(), Units::mm).verdict == Verdict::fits);
    }
}

TEST_CASE("a closed length that is ordered is what the shaft closes at, at either reference, within the saw's step")
{
    for (const Reference reference : {Reference::outer_cross, Reference::inner_cross}) {
        const BuildPlan plan = planned(closed_order(860, reference));
        REQUIRE(plan.built);
        CHECK(plan.built->closed_at[reference] == mm(860));
    }
    const BuildPlan between_steps = planned(closed_order(860.7));
    CHECK(between_steps.built->closed_at[Reference::outer_cross] == mm(860));
    CHECK(says(between_steps.notes, "0.7 mm below the closed length ordered"));
    for (std::uint64_t number = 0; number < 6'000; ++number) {
        const OrderWorld world = random_order(number);
        if (!world.order.closed) continue;
        const BuildPlan plan = plan_build(world.order, world.catalogue, world.workshop, world.units);
        if (!plan.built) continue;
        const Length below = world.order.closed->length - plan.built->closed_at[plan.reference];
        const Length step = Length::micrometres(plan.saw.step_um.numerator / plan.saw.step_um.denominator + 1);
        INFO("order " << number);
        // What lacks less than 0.01 mm to a step counts as that step.
        CHECK(below > -negligible);
        CHECK(below < step);
    }
}

TEST_CASE("blanks and seats add up to the halves, and halves and shoulders to the closed length")
{
    int built = 0;
    for (std::uint64_t number = 0; number < 6'000; ++number) {
        const OrderWorld world = random_order(number);
        const BuildPlan plan = plan_build(world.order, world.catalogue, world.workshop, world.units);
        if (!plan.built) continue;
        ++built;
        INFO("order " << number);
        const BuiltLengths& lengths = plan.built->lengths;
        const auto& halves = world.catalogue.series[0].halves;
        for (const Tube tube : both_tubes) {
            CHECK(lengths.blank[tube] + *halves[tube].seat == lengths.half[tube]);
            CHECK(lengths.half[tube] + *halves[other(tube)].shoulder <= lengths.closed);
            const bool wide = plan.ordered.ends[end_of(plan.ordered, tube)].joint == JointKind::wide_angle;
            if (plan.guard) CHECK(*lengths.guard_blank[tube] + (wide ? *halves[tube].guard_seat_wide_angle : *halves[tube].guard_seat) == *lengths.guard_half[tube]);
        }
    }
    CHECK(built > 1'000);
}

TEST_CASE("of a closed length alone no machine is known: what needs one is not checked, and how far it may be pulled is said")
{
    const BuildPlan plan = planned(closed_order(860));
    REQUIRE(plan.built);
    for (const CheckId id : {CheckId::closing_clearance, CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing, CheckId::guard_clearance, CheckId::guard_cover})
        CHECK(check(plan, id).result == CheckResult::not_checked);
    CHECK(check(plan, CheckId::tube_left).result == CheckResult::pass);
    CHECK(check(plan, CheckId::guard_setback).result == CheckResult::pass);
    // Halves 690 and 668 overlap by 562 when closed. Half of that, a third, and 100 must be left, at the worst of two sawn lengths
    // (1 each) and a measured one (2); the guards (680 and 658) must cover each other by 50 likewise.
    const UseRange& use = plan.built->use;
    CHECK(use.shortest[Reference::inner_cross] == mm(836));
    CHECK((*use.longest[Range::working])[Reference::inner_cross] == mm(1073));
    CHECK((*use.longest[Range::turning])[Reference::inner_cross] == mm(1166));  // 1166.667 to the step
    CHECK((*use.longest[Range::standing])[Reference::inner_cross] == mm(1254));
    CHECK((*use.longest[Range::standing])[Reference::outer_cross] == mm(1318));
    CHECK(says(plan.notes, "turning 1230 mm"));
    BuildOrder bare = closed_order(860);
    bare.guard = false;
    CHECK(planned(bare).built->use.longest[Range::standing].value()[Reference::inner_cross] == mm(1254));
}

TEST_CASE("a shaft pulled as far as its label says still passes every check without a warning, and a step further it does not")
{
    const BuildPlan plan = planned(closed_order(860));
    for (const int further : {0, 1}) {
        Job job = measured_as_built(plan, {reaching(836, 1166 + further)});
        job.fits[0].longest[Range::working] = measured(1073 + further);
        job.fits[0].longest[Range::standing] = measured(1254 + further);
        for (const End end : both_ends)
            for (const Range range : all_ranges) job.fits[0].angles[end][range] = Angle::degrees(5);
        const WorkOrder order = work_up(job, build_catalogue(), workshop(), Units::mm);
        for (const CheckId id : {CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing, CheckId::guard_cover})
            if (further == 0 || id != CheckId::guard_cover) CHECK(check(order, id).result == (further == 0 ? CheckResult::pass : CheckResult::warn));
    }
}

TEST_CASE("a new shaft's guard is held to the setback of new shafts, and its tubes both to their least")
{
    BuildOrder order = build_order();
    order.limits[Limit::guard_setback_new] = LimitSetting{{4'000, 1}, {}};
    const BuildPlan plan = planned(order);
    CHECK(check(plan, CheckId::guard_setback).limit == 4'000);
    CHECK(check(plan, CheckId::guard_setback).value == 4'000);
    // Inner 596 − 62 − 180, outer 574 − 58 − 180.
    CHECK(check(plan, CheckId::tube_left).value == 336'000);
}

TEST_CASE("a tube that the series forbids to shorten is not sawn")
{
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].halves[Tube::inner].shortening_forbidden = true;
    const BuildPlan plan = planned_with(build_order(), catalogue);
    REQUIRE(plan.built);
    CHECK_FALSE(plan.built->sawn[Tube::inner]);
    CHECK(plan.built->sawn[Tube::outer]);
    CHECK(says(plan.notes, "inner tube: it is fetched"));
}

// ISO 2768-1, linear dimensions, class c: over 400 to 1000 mm ± 2, over 120 to 400 mm ± 1.2.
TEST_CASE("blanks carry the tolerance of ISO 2768-1 class c beside the saw's")
{
    const BuildPlan plan = planned(build_order());
    CHECK(plan.built->coarse_tolerance[Tube::inner] == mm(2));
    CHECK(says(plan.notes, "± 1 mm; ISO 2768-1 class c allows ± 2 mm"));
    BuildOrder order = build_order();
    order.fits = {reaching(530, 570)};
    CHECK(planned(order).built->coarse_tolerance[Tube::outer] == mm(1.2));
    Workshop rough = workshop();
    rough.saw.plus_minus = mm(2.5);
    CHECK(says(plan_build(build_order(), build_catalogue(), rough, Units::mm).notes, "not exact enough"));
}

TEST_CASE("no check of an order speaks of a job or of a cut")
{
    for (std::uint64_t number = 0; number < 300; ++number) {
        const OrderWorld world = random_order(number);
        const Wording w(world.units, About::new_shaft);
        for (const Check& check : plan_build(world.order, world.catalogue, world.workshop, world.units).checks) {
            const std::string says = said(check, w) + " / " + basis_said(check, w);
            INFO(number << ": " << says);
            const bool of_cuts = check.id == CheckId::shortening_allowed;
            CHECK(says.find("the job") == std::string::npos);
            CHECK((of_cuts || says.find(" cut") == std::string::npos));
        }
    }
}

// Half lengths in sixteenths of an inch lie up to 1.6 mm below; a tenth of a millimetre is no sixteenth.
TEST_CASE("how far below the closed length a shaft closes is said exactly, in inches as in millimetres")
{
    BuildOrder order = closed_order(0, Reference::inner_cross);
    order.closed->length = Length::micrometres(838'300);
    const BuildPlan plan = planned(order, Units::in);
    REQUIRE(plan.built);
    const Length below = order.closed->length - plan.built->closed_at[Reference::inner_cross];
    REQUIRE(below > Length());
    const std::string words = "the shaft closes " + saw_figure_with_unit(below, Units::in) + " below the closed length ordered.";
    CHECK(says(say(plan.notes, wording_of(plan)), words));
    CHECK(saw_figure_with_unit(Length::micrometres(100), Units::in) == "0.004 in (0.1 mm)");
}
