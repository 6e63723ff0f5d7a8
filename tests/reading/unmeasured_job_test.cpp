#include "job_reader.hpp"

#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

TEST_CASE("before measuring a job says whose it is")
{
    const auto read = read_unmeasured_job({"f", bytes_of(project / "samples/before-measuring/hay-rake.xml")});
    REQUIRE(read.value);
    CHECK(read.value->order == "P-601");
    CHECK(read.value->customer == "Hillside Farm (invented)");
    CHECK(read.value->circumstances.phone == "555 0142 (invented)");
}

TEST_CASE("a job that was measured is no estimate, and every other fault has its place")
{
    CHECK(lines_of(read_unmeasured_job({"f", bytes_of(project / "samples/plain-cut.xml")}).faults).find("unknown element \"shaft\"") != std::string::npos);
    CHECK(lines_of(read_unmeasured_job({"f", "<job order=\"a/b\" units=\"mm\" date=\"2026-02-30\"/>"}).faults) ==
          "f:1:6: order \"a/b\" cannot name files; write 1 to 40 letters, digits, \".\", \"_\" or \"-\", not beginning with \".\"\n"
          "f:1:29: date \"2026-02-30\" is no day of the calendar; write YYYY-MM-DD, such as 2026-11-24\n");
}
