#include "oracle/base_jobs.hpp"

#include "oracle/slipped_jobs.hpp"
#include "support/machine_jobs.hpp"

namespace shaftcut::test {

BaseJob base(std::string name, Job job_)
{
    job_.order = "T-" + name;
    return {std::move(name), std::move(job_), catalogue(), workshop(), {}, false};
}

BaseJob standard()
{
    Job changed = job();
    changed.shaft.ends[End::tractor].joint = JointKind::standard;
    changed.shaft.closed = measured(796);
    changed.fits[0].reference.reset();
    changed.fits[0].angles[End::tractor][Range::turning] = Angle::degrees(30);
    return base("standard", changed);
}

namespace {

BaseJob outer_with_angles()
{
    Job changed = job();
    changed.fits[0].reference = Reference::outer_cross;
    changed.fits[0].shortest = measured(806);
    changed.fits[0].longest[Range::working] = measured(860);
    changed.fits[0].longest[Range::turning] = measured(905);
    changed.fits[0].longest[Range::standing] = measured(950);
    return base("outer-with-angles", changed);
}

BaseJob outer_without_angles()
{
    BaseJob found = outer_with_angles();
    found.name = "outer-without-angles";
    found.job.fits[0].angles = {};
    return found;
}

BaseJob grooves()
{
    Job changed = outer_with_angles().job;
    JobFit& fit = changed.fits[0];
    fit.reference.reset();
    fit.between = Between::grooves;
    fit.shortest = measured(926, 1);
    fit.longest[Range::working] = measured(980);
    fit.longest[Range::turning] = measured(1020, 3);
    fit.longest[Range::standing].reset();
    return base("grooves", changed);
}

BaseJob grooves_without_yokes()
{
    BaseJob found = base("grooves-without-yokes", grooves().job);
    found.catalogue.series[0].yokes.clear();
    return found;
}

BaseJob halves_derived()
{
    Job changed = job();
    changed.shaft.halves = {};
    return base("halves-derived", changed);
}

BaseJob one_half_derived()
{
    Job changed = standard().job;
    changed.shaft.halves[Tube::outer].length.reset();
    changed.shaft.halves[Tube::inner] = {measured(690, 1), measured(672, 1), measured(129, 1), std::nullopt, {}};
    return base("one-half-derived", changed);
}

BaseJob guard_shoulders()
{
    BaseJob found = base("guard-shoulders", standard().job);
    found.job.shaft.closed = measured(804);
    found.job.shaft.halves[Tube::inner].guard = measured(680);
    found.catalogue.series[0].halves[Tube::inner].guard_shoulder = mm(140);
    found.catalogue.series[0].halves[Tube::outer].guard_shoulder = mm(124);
    return found;
}

BaseJob inches()
{
    Job changed = job();
    changed.units = Units::in;
    changed.shaft.closed = measured(860.425);                                      // 33-7/8 in
    changed.shaft.halves[Tube::inner] = {measured(690.563), measured(671.513), std::nullopt, std::nullopt, {}};  // 27-3/16, 26-7/16
    changed.shaft.halves[Tube::outer] = {measured(668.338), std::nullopt, std::nullopt, std::nullopt, {}};       // 26-5/16
    changed.fits[0].shortest = measured(741.363);                                  // 29-3/16
    changed.fits[0].longest[Range::standing].reset();
    return base("inches", changed);
}

BaseJob several_fits()
{
    Job changed = standard().job;
    JobFit second = changed.fits[0];
    second.tractor = "second tractor";
    second.shortest = measured(735, 1);
    second.longest[Range::turning] = measured(840);
    second.longest[Range::standing] = measured(930, 4);
    changed.fits.push_back(second);
    return base("several-fits", changed);
}

BaseJob features()
{
    Job changed = standard().job;
    changed.shaft.halves[Tube::inner].lubrication_hole = measured(590);
    changed.shaft.halves[Tube::outer].features = {Feature::coated, Feature::one_chain_guard};
    return base("features", changed);
}

BaseJob forbidden()
{
    BaseJob found = base("forbidden", job());
    found.catalogue.series[0].shortening_forbidden = true;
    return found;
}

BaseJob refused_overlap()
{
    Job changed = job();
    changed.fits[0].longest[Range::turning] = measured(1025);
    changed.fits[0].longest[Range::standing] = measured(1060);
    return base("refused-overlap", changed);
}

BaseJob refused_lock()
{
    Job changed = standard().job;
    changed.shaft.ends[End::tractor].lock = Lock::exposed_collar;
    return base("refused-lock", changed);
}

BaseJob no_series() { return base("no-series", plain_job(1000, 850, 840, 800, 950)); }

BaseJob nothing_known()
{
    Job changed = plain_job(1000, 850, 850, 800, 950);
    changed.shaft.halves = {};
    return base("nothing-known", changed);
}

BaseJob fits_as_it_is()
{
    Job changed = standard().job;
    changed.fits[0].shortest = measured(840);
    changed.fits[0].longest[Range::working] = measured(900);
    changed.fits[0].longest[Range::turning] = measured(950);
    changed.fits[0].longest[Range::standing] = measured(1000);
    return base("fits", changed);
}

// A saw whose least cut is no whole number of its steps, odd fractions, a clearance that the tolerances could use up.
BaseJob odd_workshop()
{
    BaseJob found = base("odd-workshop", standard().job);
    found.workshop.saw = {mm(2), mm(3), mm(0.5), mm(5)};
    found.workshop.limits[Limit::overlap_working] = LimitSetting{{2, 3}, {}};
    found.workshop.limits[Limit::overlap_turning] = LimitSetting{{3, 7}, {}};
    found.workshop.limits[Limit::least_overlap_turning] = LimitSetting{{120'000, 1}, {}};
    found.job.limits[Limit::closing_clearance] = LimitSetting{{4'500, 1}, {}};
    return found;
}

// Cuts of less than the least cut, with guards that were not measured.
BaseJob least_cut()
{
    BaseJob found = odd_workshop();
    found.name = "least-cut";
    found.job.fits[0].shortest = measured(797.5);
    for (const Tube tube : both_tubes) found.job.shaft.halves[tube].guard.reset();
    return found;
}

// The inner half closes to just what is wanted, the outer one is cut to the same: a hair decides which sets the new closed length.
BaseJob uneven_halves()
{
    Job changed = standard().job;
    changed.shaft.halves[Tube::inner] = {measured(596), measured(578), std::nullopt, std::nullopt, {}};
    return base("uneven-halves", changed);
}

// As an earlier sheet cut it, read a little longer; its guards have faces of their own to stop at.
BaseJob cut_before()
{
    BaseJob found = guard_shoulders();
    found.name = "cut-before";
    found.job.order = "T-cut-before";
    found.job.shaft.closed = measured(706);
    found.job.shaft.halves[Tube::inner] = {measured(600), measured(582), std::nullopt, std::nullopt, {}};
    found.job.shaft.halves[Tube::outer] = {measured(575), measured(557), std::nullopt, std::nullopt, {}};
    found.job.shaft.halves[Tube::inner].cut_to = mm(596);
    found.job.shaft.halves[Tube::outer].cut_to = mm(574);
    return found;
}

BaseJob one_shoulder()
{
    BaseJob found = base("one-shoulder", standard().job);
    found.job.shaft.closed = measured(793);
    found.catalogue.series[0].halves[Tube::inner].shoulder.reset();
    return found;
}

// Everything from a geometry that turns little, so that many changed jobs can be worked up; the closed length is at the outer cross.
BaseJob trailed_wide_angle()
{
    Job changed = job();
    changed.fits[0] = JobFit();
    Trailed machine = turned_machine(20);
    machine.pin_behind = support::length(250);
    machine.input_behind = support::length(625);
    machine.ranges.working = support::turns(10, 0, 0);
    machine.ranges.turning = support::turns(20, 0, 0);
    machine.ranges.standing = support::turns(20, 6, 0);
    changed.fits[0].machine = machine;
    return base("trailed-wide-angle", changed);
}

BaseJob mounted_with_measured_longest()
{
    Job changed = machine_job(lifted_machine());
    changed.fits[0].longest[Range::turning] = measured(620, 3);
    return base("mounted-measured-longest", changed);
}

// A measured shortest, and ranges that do not contain each other.
BaseJob mounted_with_measured_shortest()
{
    Mounted machine = lifted_machine();
    machine.ranges.working = support::heights(200, 300);
    machine.ranges.turning = support::heights(400, 440);
    Job changed = machine_job(machine);
    changed.fits[0].shortest = measured(598);
    changed.fits[0].longest[Range::standing] = measured(650);
    return base("mounted-measured-shortest", changed);
}

// Longest lengths measured between grooves over a wide-angle joint at the angles that the machine reaches, or at none.
BaseJob mounted_between_grooves()
{
    Job changed = job();
    changed.fits[0] = JobFit();
    changed.fits[0].between = Between::grooves;
    Mounted machine = lifted_machine();
    machine.input_behind = support::length(120);
    machine.ranges.standing.reset();
    changed.fits[0].machine = machine;
    changed.fits[0].longest[Range::working] = measured(840);
    changed.fits[0].longest[Range::turning] = measured(860, 1);
    changed.fits[0].longest[Range::standing] = measured(930);
    return base("mounted-between-grooves", changed);
}

BaseJob mounted_in_inches()
{
    Job changed = machine_job(lifted_machine());
    changed.units = Units::in;
    changed.fits[0].longest[Range::standing] = measured(663.575);  // 26-1/8 in
    return base("mounted-inches", changed);
}

BaseJob two_tractors_one_geometry()
{
    Job changed = machine_job(lifted_machine());
    JobFit second;
    second.tractor = "second tractor";
    second.shortest = measured(610);
    second.longest[Range::working] = measured(640);
    second.longest[Range::turning] = measured(650);
    changed.fits.push_back(second);
    return base("two-tractors-one-geometry", changed);
}

BaseJob machine_without_yokes()
{
    BaseJob found = base("machine-without-yokes", machine_job(lifted_machine()));
    found.catalogue.series[0].yokes.clear();
    return found;
}

}  // namespace

std::vector<BaseJob> base_jobs()
{
    std::vector<BaseJob> all{standard(),        outer_with_angles(), outer_without_angles(), grooves(),      grooves_without_yokes(), halves_derived(), one_half_derived(),
            guard_shoulders(), inches(),            several_fits(),         features(),     forbidden(),             refused_overlap(), refused_lock(),
            no_series(),       nothing_known(),     fits_as_it_is(),        odd_workshop(), least_cut(),             one_shoulder(),
            uneven_halves(),   cut_before(),           trailed_wide_angle(),
            mounted_with_measured_longest(), mounted_with_measured_shortest(), mounted_between_grooves(), mounted_in_inches(),
            two_tractors_one_geometry(), machine_without_yokes()};
    for (BaseJob& base : slipped_jobs()) all.push_back(std::move(base));
    for (BaseJob& base : all) base.issued = worked(base, base.job);
    return all;
}

}  // namespace shaftcut::test
