#include "oracle/slipped_jobs.hpp"

#include "support/jobs.hpp"

namespace shaftcut::test {
namespace {

// The closed length was read at the inner cross and is taken for one from the outer cross.
BaseJob other_cross()
{
    Job changed = job();
    changed.shaft.closed = measured(796);
    return base("other-cross", changed);
}

// The same the other way, with a wide-angle joint at both ends of which only one was counted.
BaseJob other_cross_of_two()
{
    Job changed = job();
    changed.shaft.ends[End::implement].joint = JointKind::wide_angle;
    changed.shaft.closed_reference = Reference::inner_cross;
    return base("other-cross-of-two", changed);
}

BaseJob exchanged()
{
    Job changed = standard().job;
    changed.shaft.halves[Tube::inner] = {measured(668, 1), measured(650, 1), std::nullopt, std::nullopt, {}};
    changed.shaft.halves[Tube::outer] = {measured(690, 3), measured(672, 3), std::nullopt, std::nullopt, {}};
    return base("exchanged", changed);
}

// Each half stops short of the closed length as stated; the other way round one of them reaches it.
BaseJob perhaps_exchanged()
{
    Job changed = standard().job;
    changed.shaft.halves[Tube::inner] = {measured(668, 1), measured(650, 1), std::nullopt, std::nullopt, {}};
    changed.shaft.halves[Tube::outer] = {measured(640, 3), measured(622, 3), std::nullopt, std::nullopt, {}};
    return base("perhaps-exchanged", changed);
}

BaseJob unconfirmed_shoulder()
{
    Job changed = standard().job;
    changed.shaft.halves[Tube::inner].shoulder = measured(112.8, 1);
    return base("unconfirmed-shoulder", changed);
}

// Both shoulders stated and no series that knows them.
BaseJob lone_shoulders()
{
    Job changed = plain_job(796, 690, 668, 742, 850);
    changed.fits[0].longest[Range::working] = measured(800);
    changed.shaft.halves[Tube::inner] = {measured(690), measured(672), measured(90), std::nullopt, {}};
    changed.shaft.halves[Tube::outer] = {measured(668), measured(650), measured(106), std::nullopt, {}};
    return base("lone-shoulders", changed);
}

BaseJob stop_depths()
{
    BaseJob found = base("stop-depths", standard().job);
    found.catalogue.series[0].halves[Tube::outer].shoulder.reset();
    found.job.shaft.halves[Tube::inner].stop_depth = measured(562, 1);
    found.job.shaft.halves[Tube::outer].stop_depth = measured(562);
    return found;
}

// A repaired half: its joint is of another series, of which the shoulder is known.
BaseJob half_of_other_series()
{
    BaseJob found = base("half-of-other-series", standard().job);
    Series other = found.catalogue.series[0];
    other.name = "Birch 3";
    other.halves[Tube::inner].shoulder = mm(124);
    other.halves[Tube::inner].seat = mm(60);
    found.catalogue.series.push_back(other);
    found.job.shaft.halves[Tube::inner].series = OtherSeries{"Birch 3"};
    return found;
}

// The series was told by measuring: one stop is measured, of the other the series' is confirmed.
BaseJob told_by_measuring()
{
    BaseJob found = base("told-by-measuring", standard().job);
    found.job.shaft.measures = Measures();
    found.job.shaft.halves[Tube::inner].stop_depth = measured(562, 1);
    return found;
}

BaseJob half_of_no_series()
{
    Job changed = job();
    changed.shaft.halves[Tube::outer].series = OtherSeries{};
    changed.shaft.halves[Tube::outer].shoulder = measured(100);
    changed.shaft.ends[End::tractor].spacing = mm(64);
    return base("half-of-no-series", changed);
}

// Nothing tells from which cross the closed length was measured.
BaseJob wide_angle_of_no_series()
{
    Job changed = job();
    changed.shaft.series.reset();
    changed.shaft.shape = Shape::star;
    changed.shaft.ends[End::tractor].spacing = mm(64);
    changed.shaft.spacing = mm(64);
    return base("wide-angle-of-no-series", changed);
}

BaseJob inner_half_measured()
{
    Job changed = job();
    changed.shaft.halves[Tube::outer].length.reset();
    return base("inner-half-measured", changed);
}

BaseJob outer_half_measured()
{
    Job changed = standard().job;
    changed.shaft.halves[Tube::inner] = {};
    changed.shaft.halves[Tube::outer] = {measured(668, 4), measured(650, 4), std::nullopt, std::nullopt, {}};
    return base("outer-half-measured", changed);
}

BaseJob guard_none()
{
    Job changed = standard().job;
    changed.shaft.halves[Tube::inner].guard.reset();
    changed.shaft.halves[Tube::inner].guard_use = GuardUse::none;
    changed.shaft.halves[Tube::outer].features = {Feature::one_chain_guard};
    return base("guard-none", changed);
}

BaseJob guards_none()
{
    Job changed = standard().job;
    for (const Tube tube : both_tubes) {
        changed.shaft.halves[tube].guard.reset();
        changed.shaft.halves[tube].guard_use = tube == Tube::inner ? GuardUse::none : GuardUse::damaged;
    }
    return base("guards-none", changed);
}

// A guard that is left with less than its seat and what must stand free.
BaseJob guard_cut_away()
{
    BaseJob found = base("guard-cut-away", standard().job);
    found.catalogue.series[0].halves[Tube::inner].guard_seat = mm(48);
    found.job.shaft.halves[Tube::inner].guard = measured(180);
    found.job.shaft.halves[Tube::outer].guard.reset();
    return found;
}

// Of three tractors two leave out a range.
BaseJob several_fits_with_missing_ranges()
{
    Job changed = standard().job;
    JobFit second = changed.fits[0], third = changed.fits[0];
    second.tractor = "second tractor";
    second.shortest = measured(745, 20);
    second.longest[Range::turning] = measured(853, 1);
    second.longest[Range::standing].reset();
    third.tractor = "third tractor";
    third.longest[Range::working].reset();
    third.longest[Range::turning] = measured(846, 9);
    third.longest[Range::standing] = measured(930, 4);
    changed.fits.push_back(second);
    changed.fits.push_back(third);
    return base("several-fits-with-missing-ranges", changed);
}

BaseJob uncut_listed()
{
    Job changed = job();
    changed.shaft.halves = {};
    changed.shaft.closed = measured(830);
    return base("uncut-listed", changed);
}

// From the inner cross no length of the series, from the outer cross one.
BaseJob uncut_other_cross()
{
    Job changed = job();
    changed.shaft.halves = {};
    changed.shaft.closed = measured(960);
    changed.shaft.closed_reference = Reference::inner_cross;
    return base("uncut-other-cross", changed);
}

BaseJob uncut_unlisted_standard()
{
    Job changed = standard().job;
    changed.shaft.halves = {};
    return base("uncut-unlisted-standard", changed);
}

BaseJob uncut_without_list()
{
    BaseJob found = base("uncut-without-list", job());
    found.job.shaft.halves = {};
    found.catalogue.series[0].closed_lengths.clear();
    return found;
}

BaseJob exposed_lock_of_unknown_year()
{
    Job changed = standard().job;
    changed.shaft.ends[End::tractor].lock = Lock::exposed_collar;
    changed.shaft.built.reset();
    return base("exposed-lock", changed);
}

// Everything that a job can say around its lengths, which the sheet's heading prints.
BaseJob told()
{
    Job changed = standard().job;
    changed.customer = "Demo farm (invented)";
    changed.machine = "demo baler";
    changed.tractor = "demo tractor";
    changed.circumstances = {"012 345", "drawbar, second hole", 30'000, {"old tractor"}, false, false, {"A. Demo", "2026-11-23", "steel tape"}, "trial run", "B. Demo"};
    changed.shaft.number = "S-0412";
    changed.shaft.condition = Condition();
    changed.shaft.condition->tubes = TubeState::straight;
    changed.shaft.condition->slides = Slides::yes;
    changed.fits[0].shortest_at = "turned left to the stop, level";
    changed.fits[0].longest_at[Range::turning] = "turned right to the stop";
    return base("told", changed);
}

// Inches typed for millimetres, and the other way round.
BaseJob inches_for_millimetres()
{
    Job changed = standard().job;
    changed.fits[0].shortest = measured(29.213);
    return base("inches-for-millimetres", changed);
}

BaseJob millimetres_for_inches()
{
    Job changed = standard().job;
    changed.units = Units::in;
    changed.shaft.halves[Tube::inner].length = measured(690 * 25.4);
    return base("millimetres-for-inches", changed);
}

}  // namespace

std::vector<BaseJob> slipped_jobs()
{
    std::vector<BaseJob> all{other_cross(), other_cross_of_two(), exchanged(), perhaps_exchanged(), unconfirmed_shoulder(), lone_shoulders(), stop_depths(), half_of_other_series(), told_by_measuring(), half_of_no_series(),
            wide_angle_of_no_series(), inner_half_measured(), outer_half_measured(), guard_none(), guards_none(), guard_cut_away(), several_fits_with_missing_ranges(), uncut_listed(),
            uncut_other_cross(), uncut_unlisted_standard(), uncut_without_list(), exposed_lock_of_unknown_year(), told(), inches_for_millimetres(), millimetres_for_inches()};
    for (BaseJob& base : all)
        for (const char* name : {"perhaps-exchanged", "exchanged", "lone-shoulders", "stop-depths", "guard-cut-away", "uncut-listed"}) base.by_itself = base.by_itself || base.name == name;
    return all;
}

}  // namespace shaftcut::test
