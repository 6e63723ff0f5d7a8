// A job to choose a shaft for: what of it is read, and how it differs from a job of a shaft that is there.
#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

const std::string job_text = "<job order=\"c\" units=\"mm\"><for power=\"30\"/><shaft role=\"secondary\" speed=\"1000\">"
                             "<end side=\"tractor\" joint=\"either\" connection=\"1-3/8-6\" onto=\"1-3/8-21\" lock=\"clamp-bolt\" device=\"none\"/>"
                             "<end side=\"implement\" joint=\"wide-angle\" connection=\"1-3/8-21\"/></shaft>"
                             "<fit between=\"grooves\"><shortest length=\"742\"/><longest when=\"turning\" length=\"850\"/></fit></job>";

Read<JobToChooseFor> read(const std::string& text) { return read_job_to_choose_for({"choose.xml", text}, catalogue()); }

std::string replaced(std::string text, const std::string& what, const std::string& by)
{
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), by);
}

}  // namespace

TEST_CASE("of a job to choose a shaft for its ends and its fits are read")
{
    const auto wanted = read(job_text).value;
    REQUIRE(wanted);
    CHECK(!wanted->joint[End::tractor]);
    CHECK(wanted->joint[End::implement] == JointKind::wide_angle);
    CHECK(!wanted->only_series);
    const JobShaft& shaft = wanted->job.shaft;
    CHECK(!shaft.series);
    CHECK(shaft.role == Role::secondary);
    CHECK(shaft.speed == 1000);
    CHECK(shaft.inner_tube == End::implement);
    CHECK(shaft.ends[End::tractor].connection == "1-3/8-6");
    CHECK(shaft.ends[End::tractor].onto == "1-3/8-21");
    CHECK(shaft.ends[End::tractor].lock == Lock::clamp_bolt);
    CHECK(shaft.ends[End::implement].connection == "1-3/8-21");
    CHECK(wanted->job.order == "c");
    CHECK(wanted->job.circumstances.power == 30'000);
    REQUIRE(wanted->job.fits.size() == 1);
    CHECK(wanted->job.fits[0].shortest->length == Length::millimetres(742));
}

TEST_CASE("the end that carries the inner tube may be stated")
{
    const auto wanted = read(replaced(job_text, "role=\"secondary\"", "role=\"secondary\" inner-tube=\"tractor\"")).value;
    REQUIRE(wanted);
    CHECK(wanted->job.shaft.inner_tube == End::tractor);
}

TEST_CASE("what belongs to a shaft that is there is refused by its name and not read")
{
    const FaultList faults = read(replaced(job_text, "</shaft>", "<closed length=\"x\"/></shaft>")).faults;
    CHECK(lines_of(faults) == "choose.xml:1:" + std::to_string(job_text.find("</shaft>") + 1)
                                  + ": closed belongs to a shaft that is there, and this one is still to be chosen; leave it out: every series is tried at every closed length\n");
    const std::string known = lines_of(read(replaced(job_text, "speed=\"1000\"", "series=\"Alder 2\" colour=\"red\"")).faults);
    CHECK(known.find("series belongs to a shaft that is there") != std::string::npos);
    CHECK(known.find("unknown attribute \"colour\"; shaft takes role, speed and inner-tube") != std::string::npos);
}

TEST_CASE("lengths between crosses are bad input where no shaft is chosen yet, a machine beside them or not")
{
    const std::string crosses = lines_of(read(replaced(job_text, " between=\"grooves\"", "")).faults);
    CHECK(crosses.find("the fit's lengths run between crosses, and no shaft is chosen yet whose crosses they could be; measure between the locking grooves of the two stubs") != std::string::npos);
    CHECK(lines_of(read(replaced(job_text, "grooves", "crosses")).faults).find(":" + std::to_string(job_text.find("between") + 1) + ": the fit's lengths") != std::string::npos);
}

TEST_CASE("a job of a shaft that is there is none to choose for, and the other way round")
{
    CHECK(!read(bytes_of(project / "samples/plain-cut.xml")).value);
    CHECK(!read_job({"choose.xml", job_text}, catalogue()).value);
}
