// What was measured after the cut, read as its file states it.
#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

constexpr Length mm(std::int64_t count) { return Length::millimetres(count); }

MeasuredAfterCut good(const std::string& name)
{
    const std::string bytes = bytes_of(folder / "good" / name);
    auto read = read_measured({name, bytes}, &job_of(bytes));
    REQUIRE(read.value);
    return std::move(*read.value);
}

}  // namespace

TEST_CASE("everything that may be measured after the cut is read")
{
    const MeasuredAfterCut measured = good("measured_everything.xml");
    CHECK(measured.order == "K-1042");
    CHECK(measured.date == "2026-11-27");
    CHECK(measured.by == "A. Fitter");
    CHECK(measured.units == Units::mm);
    REQUIRE(measured.closed);
    CHECK(measured.closed->length.length == mm(766));
    CHECK(measured.closed->length.plus_minus == mm(1));
    CHECK(measured.closed->reference == Reference::outer_cross);
    CHECK(measured.halves[Tube::inner].length->length == Length::micrometres(598'488));
    CHECK(measured.halves[Tube::inner].guard->length == mm(578));
    CHECK_FALSE(measured.halves[Tube::inner].stands_out);
    CHECK_FALSE(measured.halves[Tube::outer].guard);
    CHECK(measured.halves[Tube::outer].stands_out->length == mm(18));
    CHECK(measured.halves[Tube::outer].stands_out->plus_minus == mm(1));
    CHECK(measured.marks.overall_dry->length == mm(1010));
    CHECK(measured.marks.overall->length == mm(1011));
    CHECK(measured.marks.closed->length == mm(412));
    CHECK(measured.marks.shortest->length == mm(455));
    CHECK_FALSE(measured.marks.longest[Range::working]);
    CHECK(measured.marks.longest[Range::turning]->length == mm(561));
    CHECK(measured.marks.longest[Range::standing]->length == mm(616));
    CHECK(measured.marks.longest[Range::standing]->plus_minus == mm(1));
}

TEST_CASE("what is left out was not measured")
{
    const MeasuredAfterCut measured = good("measured_one_half.xml");
    CHECK_FALSE(measured.closed);
    CHECK(measured.halves[Tube::inner].length);
    CHECK_FALSE(measured.halves[Tube::inner].length->plus_minus);
    CHECK_FALSE(measured.halves[Tube::outer].length);
    CHECK_FALSE(measured.marks.closed);
    CHECK(measured.by.empty());
}

TEST_CASE("without a job nothing is compared with it")
{
    const Source other{"m.xml", "<measured order=\"K-7\" units=\"mm\"><half tube=\"outer\" guard=\"5\"/></measured>"};
    CHECK(read_measured(other, nullptr).value);
    CHECK(read_measured(other, &job_of(other.bytes)).faults.size() == 1);
}
