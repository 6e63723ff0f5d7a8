// What is read of what was measured to tell a series: how readings come together, in either unit, in a file and in a job.
#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

Measures measures_of(const std::string& text)
{
    const auto read = read_measures({"f", text});
    INFO(lines_of(read.faults));
    REQUIRE(read.value);
    return *read.value;
}

Length mm(double length) { return Length::from_mm(length); }

}  // namespace

TEST_CASE("readings of one figure come together, of each pair of caps its own")
{
    const Measures read = measures_of(bytes_of(folder / "good/measures_everything.xml"));
    CHECK(read.shaft == "bench-7");
    CHECK(read.date == "2026-11-24");
    CHECK(read.ends[End::tractor].joint == JointKind::wide_angle);
    const auto& crosses = read.ends[End::tractor].crosses;
    REQUIRE(crosses.size() == 2);
    CHECK(crosses[0].at == CrossPlace::inner);
    CHECK(crosses[0].circlip == Circlip::inside);
    CHECK(crosses[1].nipple == Nipple::cap);
    const MeasuredPair& first = crosses[1].pairs[CapPair::first];
    CHECK(first.cap_read == CapRead::bore);
    REQUIRE((first.cap.size() == 1 && first.span.size() == 1));
    CHECK(without_spacers(first.span[0]) == mm(70.1));
    CHECK(first.span[0].length == mm(82.1));
    CHECK(crosses[1].pairs[CapPair::second].cap_read == CapRead::cap);
    CHECK(crosses[1].pairs[CapPair::second].cap[0].length == mm(23.8));
    CHECK(crosses[1].pairs[CapPair::second].span[0].length == mm(61.3));
    CHECK(read.ends[End::tractor].spacing.size() == 2);
    CHECK(read.ends[End::tractor].spacing[0].plus_minus == mm(1));
    CHECK_FALSE(read.ends[End::tractor].spacing[1].plus_minus);
    // 0.864 in is 21.9456 mm, to the micrometre.
    const SizeReadings& caps = read.ends[End::implement].crosses.at(0).pairs[CapPair::first].cap;
    REQUIRE(caps.size() == 2);
    CHECK(caps[0].length == Length::micrometres(21'946));
    CHECK(read.shape == Shape::lemon);
    REQUIRE(read.tubes.size() == 2);
    CHECK(read.tubes[0].tube == Tube::inner);
    CHECK_FALSE(read.tubes[1].tube);
    CHECK(read.tubes[1].width.at(0).length == mm(50.9));
    CHECK(read.writing == "Alder 2");
    CHECK(read.closed.value().reading.length == mm(860));
    CHECK(read.closed->reference == Reference::outer_cross);
}

TEST_CASE("a reading keeps the place at which it stands, for what is said of it afterwards")
{
    const Measures read = measures_of("<measures shaft=\"x\" units=\"mm\">\n  <tubes><tube><width length=\"43\"/></tube></tubes></measures>");
    CHECK(read.tubes.at(0).width.at(0).place == Place{"f", 2, 23});
}

TEST_CASE("what a job's shaft was told by is read as in a file of its own, in the units of the job")
{
    const auto job = read_job({"f", bytes_of(folder / "good/job_measures.xml")}, catalogue());
    REQUIRE(job.value);
    const Measures& read = job.value->shaft.measures.value();
    CHECK(read.date == "2026-11-24");
    CHECK(without_spacers(read.ends[End::tractor].crosses.at(0).pairs[CapPair::second].span.at(0)) == mm(54));
    CHECK(read.tubes.size() == 2);
    CHECK(read.writing == "Alder 2");
    // Its own units would be a second truth beside the job's.
    const std::string text = bytes_of(folder / "good/job_measures.xml");
    const std::size_t at = text.find("<measures ") + 10;
    CHECK(lines_of(read_job({"f", text.substr(0, at) + "units=\"in\" " + text.substr(at)}, catalogue()).faults) ==
          "f:7:15: unknown attribute \"units\"; measures takes date\n");
}

TEST_CASE("while it is open which half is where, nothing is said of spacings that would belong to one")
{
    const std::string text = "<job order=\"x\" units=\"mm\"><shaft series=\"Alder 2\" role=\"primary\" inner-tube=\"?\"><closed length=\"860\"/>"
                             "<end side=\"tractor\" joint=\"standard\"/><end side=\"implement\" joint=\"wide-angle\" spacing=\"70\"/>"
                             "<half tube=\"inner\" series=\"none\" length=\"690\"/><half tube=\"outer\" length=\"668\"/></shaft>"
                             "<fit><shortest length=\"742\"/><longest when=\"turning\" length=\"850\"/></fit></job>";
    CHECK(lines_of(read_job({"f", text}, catalogue()).faults) == "f:1:66: inner-tube is still open; measure it or look, and write it in the place of the \"?\"\n");
}
