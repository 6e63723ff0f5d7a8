// What a job may say beside its lengths.
#include "job_reader.hpp"

#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

Job good(const std::string& name)
{
    auto read = read_job({name, bytes_of(folder / "good" / name)}, catalogue());
    REQUIRE(read.value);
    return std::move(*read.value);
}

constexpr Length mm(std::int64_t count) { return Length::millimetres(count); }

using Strings = std::vector<std::string>;

}  // namespace

TEST_CASE("whom and what a shaft is for, who measured, and why a limit was loosened")
{
    const Job job = good("job_everything.xml");
    const Circumstances& around = job.circumstances;
    CHECK(around.phone == "+00 555 0100");
    CHECK(around.hitch == "drawbar, second hole");
    CHECK(around.power == std::optional<std::int64_t>(30'500));
    CHECK(around.other_tractors == Strings{"80 hp tractor", "the neighbour's"});
    CHECK_FALSE(around.no_other_tractors);
    CHECK_FALSE(around.machine_here);
    CHECK(around.measured_by.name == "A. Fitter");
    CHECK(around.measured_by.date == "2024-02-28");
    CHECK(around.measured_by.with == "steel tape");
    CHECK(around.limits_why == "short of room");
    CHECK(around.limits_by == "the foreman");
    CHECK(job.shaft.number == "S-0412");
}

TEST_CASE("what is not said of it is not known")
{
    const Job job = good("job_example.xml");
    const Circumstances& around = job.circumstances;
    CHECK_FALSE(around.power);
    CHECK(around.machine_here);
    CHECK_FALSE(around.no_other_tractors);
    CHECK(around.other_tractors.empty());
    CHECK(job.shaft.number.empty());
    CHECK_FALSE(job.shaft.condition);
    CHECK(job.fits[0].shortest_at.empty());
    CHECK_FALSE(job.fits[0].views[End::tractor]);
    for (const Tube tube : both_tubes) {
        CHECK_FALSE(job.shaft.halves[tube].series);
        CHECK_FALSE(job.shaft.halves[tube].stop_depth);
        CHECK(job.shaft.halves[tube].guard_use == GuardUse::kept);
    }
    CHECK(job.shaft.halves[Tube::outer].place.line == 9);
    CHECK(good("job_other_series.xml").circumstances.no_other_tractors);
}

TEST_CASE("how a shaft came in")
{
    const auto condition = good("job_everything.xml").shaft.condition;
    REQUIRE(condition);
    CHECK(condition->guard == Completeness::damaged);
    CHECK(condition->chains == Completeness::complete);
    CHECK(condition->crosses == CrossWear::worn);
    CHECK(condition->tubes == TubeState::dented);
    CHECK(condition->locks == LockState::stiff);
    CHECK(condition->weld == Weld::none);
    CHECK(condition->device == DeviceState::free);
    CHECK(condition->phase == Phase::in_plane);
    CHECK(condition->slides == Slides::yes);
    CHECK(condition->place.line == 15);
}

TEST_CASE("halves of another series and of none, and what their ends state")
{
    const JobShaft shaft = good("job_other_series.xml").shaft;
    const JobHalf& inner = shaft.halves[Tube::inner];
    const JobHalf& outer = shaft.halves[Tube::outer];
    REQUIRE(inner.series);
    CHECK(inner.series->name == std::optional<std::string>("Hazel 3"));
    REQUIRE(outer.series);
    CHECK_FALSE(outer.series->name);
    CHECK(outer.stop_depth->length == mm(556));
    CHECK(outer.cut_to == mm(668));
    CHECK_FALSE(outer.shoulder);
    CHECK(inner.guard_use == GuardUse::damaged);
    CHECK(outer.guard_use == GuardUse::none);
    CHECK_FALSE(inner.guard);
    CHECK_FALSE(outer.guard);
    CHECK(shaft.ends[End::tractor].spacing == std::optional(mm(66)));
    CHECK(shaft.ends[End::tractor].cross_to_groove == std::optional(mm(62)));
    CHECK_FALSE(shaft.ends[End::implement].spacing);
}

TEST_CASE("positions of lengths, and angles from two views among the others")
{
    const Job job = good("job_everything.xml");
    const JobFit& first = job.fits[0];
    const JobFit& second = job.fits[1];
    CHECK(first.shortest_at == "turned left to the stop, level");
    CHECK(first.longest_at[Range::standing] == "raised");
    CHECK(first.longest_at[Range::working].empty());
    REQUIRE(second.views[End::tractor]);
    CHECK(second.views[End::tractor]->range == Range::turning);
    CHECK(second.views[End::tractor]->side_view == Angle::degrees(12));
    CHECK(second.views[End::tractor]->plan == Angle::degrees(5));
    CHECK(second.angles[End::tractor][Range::turning] == std::optional(angle_from_views(Angle::degrees(12), Angle::degrees(5))));
    CHECK(second.angles[End::tractor][Range::working] == std::optional(Angle::degrees(10)));
    CHECK(second.views[End::implement]->range == Range::working);
    CHECK(second.angles[End::implement][Range::working] == std::optional(Angle::millidegrees(89'999)));
}

TEST_CASE("a guard is missing or damaged as the halves have it")
{
    const auto problems = [](const std::string& condition, const std::string& inner, const std::string& outer) {
        const auto half = [](const std::string& tube, const std::string& guard) { return "<half tube=\"" + tube + "\"" + (guard.empty() ? "" : " guard=\"" + guard + "\"") + "/>"; };
        return read_job_text("<job order=\"x\" units=\"mm\"><shaft series=\"Alder 2\" role=\"primary\" inner-tube=\"implement\"><closed length=\"860\"/>"
                             "<end side=\"tractor\" joint=\"standard\"/><end side=\"implement\" joint=\"standard\"/>" + half("inner", inner) + half("outer", outer) +
                             "<condition guard=\"" + condition + "\"/></shaft><fit><shortest length=\"742\"/><longest when=\"turning\" length=\"850\"/></fit></job>").faults.size();
    };
    CHECK(problems("complete", "672", "650") == 0);
    CHECK(problems("complete", "none", "650") == 1);
    CHECK(problems("complete", "none", "damaged") == 2);
    CHECK(problems("damaged", "672", "650") == 0);     // a bearing is replaced, the tube stays
    CHECK(problems("damaged", "damaged", "650") == 0);
    CHECK(problems("missing", "none", "650") == 0);
    CHECK(problems("missing", "", "650") == 0);        // that one may be the missing one
    CHECK(problems("missing", "672", "650") == 1);
    CHECK(problems("missing", "damaged", "650") == 1);
}

TEST_CASE("a series is rated once at a speed")
{
    const Series* series = find_series(catalogue(), "Alder 2");
    REQUIRE(series->ratings.size() == 2);
    CHECK(series->ratings[0].speed == 540);
    CHECK(series->ratings[0].power == 16'000);
    CHECK(find_series(catalogue(), "Juniper 8")->ratings.empty());
}
