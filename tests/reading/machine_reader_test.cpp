#include "machine_reader.hpp"

#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

TEST_CASE("every dimension of a machine is read into its place, with the tolerance of its element")
{
    const auto read = read_job({"job.xml", bytes_of(folder / "good" / "job_geometry.xml")}, catalogue());
    REQUIRE(read.value);
    const Trailed trailed = std::get<Trailed>(read.value->fits.at(0).machine.value());
    CHECK(trailed.pto_height.value == Length::millimetres(650));
    CHECK(trailed.pin_behind.value == Length::millimetres(400));
    CHECK(trailed.pin_height.value == Length::millimetres(450));
    CHECK(trailed.input_behind.value == Length::millimetres(600));
    CHECK(trailed.input_height.value == Length::millimetres(700));
    CHECK(trailed.input_left.value == Length::millimetres(-20));
    CHECK(trailed.input_tilt.value == Angle::millidegrees(-1500));
    CHECK(trailed.input_left.plus_minus == std::optional(Length::millimetres(3)));
    CHECK(trailed.pin_behind.place == Place{"job.xml", 10, 31});
    CHECK(trailed.ranges.working->turn.value == Angle::degrees(10));
    CHECK_FALSE(trailed.ranges.standing);
    const Mounted mounted = std::get<Mounted>(read.value->fits.at(1).machine.value());
    CHECK(mounted.lower_pivot_behind.value == Length::millimetres(-100));
    CHECK(mounted.lower_pivot_height.value == Length::millimetres(500));
    CHECK(mounted.lower_link.value == Length::millimetres(900));
    CHECK(mounted.top_pivot_behind.value == Length::millimetres(-50));
    CHECK(mounted.top_pivot_height.value == Length::millimetres(950));
    CHECK(mounted.top_link.value == Length::millimetres(700));
    CHECK(mounted.mast.value == Length::millimetres(610));
    CHECK(mounted.input_behind.value == Length::millimetres(300));
    CHECK(mounted.input_above.value == Length::millimetres(-25));
    CHECK(mounted.mast.plus_minus == std::optional(Length::millimetres(1)));
    CHECK(mounted.ranges.standing->highest.value == Length::millimetres(850));
    CHECK(mounted.ranges.standing->highest.plus_minus == std::optional(Length::millimetres(5)));
    CHECK_FALSE(mounted.ranges.turning->lowest.plus_minus);
}

TEST_CASE("a fit without a shortest or a longest turning length needs a machine that gives it")
{
    const auto read = read_job({"job.xml", bytes_of(folder / "good" / "job_geometry.xml")}, catalogue());
    REQUIRE(read.value);
    CHECK_FALSE(read.value->fits[0].shortest);
    CHECK(read.value->fits[0].longest[Range::standing]->length == Length::millimetres(1000));
    CHECK_FALSE(read.value->fits[0].longest[Range::turning]);
}
