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

}  // namespace

TEST_CASE("the manual's job is read as it stands")
{
    const Job job = good("job_example.xml");
    CHECK(job.order == "K-1042");
    CHECK(job.date == "2026-11-24");
    CHECK(job.customer == "A demonstration customer");
    CHECK(job.units == Units::mm);
    CHECK(job.shaft.series == std::optional<std::string>("Alder 2"));
    CHECK(job.shaft.role == Role::primary);
    CHECK(job.shaft.speed == std::optional(540));
    CHECK(job.shaft.inner_tube == End::implement);
    CHECK(job.shaft.built == std::optional(2018));
    CHECK(job.shaft.closed.length == mm(860));
    CHECK_FALSE(job.shaft.closed.plus_minus);
    CHECK(job.shaft.closed.place == Place{"job_example.xml", 5, 13});
    CHECK(job.shaft.closed_reference == std::optional(Reference::outer_cross));
    CHECK(job.shaft.ends[End::tractor].joint == JointKind::wide_angle);
    CHECK(job.shaft.ends[End::implement].joint == JointKind::standard);
    CHECK(job.shaft.ends[End::tractor].lock == std::optional(Lock::shrouded_push_pin));
    CHECK(job.shaft.ends[End::implement].connection == std::optional<std::string>("1-3/8-6"));
    CHECK_FALSE(job.shaft.ends[End::implement].onto);
    CHECK(job.shaft.halves[Tube::inner].length->length == mm(690));
    CHECK(job.shaft.halves[Tube::outer].guard->length == mm(650));
    CHECK(job.shaft.halves[Tube::outer].guard->place == Place{"job_example.xml", 9, 37});
}

TEST_CASE("the manual's fit is read as it stands")
{
    const Job job = good("job_example.xml");
    REQUIRE(job.fits.size() == 1);
    const JobFit& fit = job.fits.front();
    CHECK(fit.between == Between::crosses);
    CHECK(fit.reference == std::optional(Reference::inner_cross));
    CHECK(fit.shortest->length == mm(742));
    CHECK(fit.longest[Range::working]->length == mm(800));
    CHECK(fit.longest[Range::turning]->length == mm(850));
    CHECK(fit.longest[Range::standing]->length == mm(905));
    CHECK(fit.angles[End::tractor][Range::turning] == std::optional(Angle::degrees(40)));
    CHECK(fit.angles[End::implement][Range::working] == std::optional(Angle::degrees(8)));
    CHECK(fit.angle_places[End::implement] == Place{"job_example.xml", 17, 5});
    CHECK(job.limits[Limit::closing_clearance]->value == LimitValue{40'000, 1});
    CHECK(job.limits[Limit::closing_clearance]->place == Place{"job_example.xml", 19, 11});
    CHECK_FALSE(job.limits[Limit::overlap_working]);
}

TEST_CASE("everything that a job may say is read")
{
    const Job job = good("job_everything.xml");
    CHECK(job.customer == "M\u00fcller & S\u00f6hne");
    CHECK(job.shaft.closed.plus_minus == std::optional(Length::micrometres(1500)));
    const JobHalf& inner = job.shaft.halves[Tube::inner];
    CHECK(inner.features == std::vector{Feature::coated, Feature::end_stop, Feature::one_chain_guard});
    CHECK(inner.shoulder->length == mm(133));
    CHECK(inner.lubrication_hole->length == mm(410));
    CHECK(inner.lubrication_hole->plus_minus == std::optional(mm(1)));
    CHECK(job.shaft.halves[Tube::outer].features.empty());
    CHECK(job.shaft.halves[Tube::outer].length->plus_minus == std::optional(Length()));
    CHECK(job.shaft.ends[End::tractor].device == std::optional(Device::none));
    CHECK(job.shaft.ends[End::implement].onto == std::optional<std::string>("1-3/8-6"));
    REQUIRE(job.fits.size() == 2);
    CHECK(job.fits[0].tractor == "Tractor 1");
    CHECK(job.fits[1].between == Between::grooves);
    CHECK_FALSE(job.fits[1].reference);
    CHECK_FALSE(job.fits[1].longest[Range::working]);
    CHECK_FALSE(job.fits[1].angles[End::tractor][Range::standing]);
    CHECK(job.fits[0].angles[End::implement][Range::standing] == std::optional(Angle::millidegrees(70'125)));
    for (const LimitRow& row : limit_rows()) CHECK(job.limits[row.limit]);
    CHECK(job.limits[Limit::overlap_working]->value == LimitValue{1, 2});
    const LimitValue turning = job.limits[Limit::overlap_turning]->value;  // 0.4, in whatever terms
    CHECK(10 * turning.numerator == 4 * turning.denominator);
    CHECK(job.limits[Limit::angle_wide_turning]->value == LimitValue{70'000, 1});
    CHECK(job.limits[Limit::irregularity]->value == LimitValue{7'500, 1});
}

TEST_CASE("inches, fractions and millimetres stand beside each other")
{
    const Job job = good("job_inches_mixed.xml");
    CHECK(job.units == Units::in);
    CHECK(job.shaft.closed.length.um() == 860'425);            // 33-7/8 in
    CHECK(job.shaft.closed.plus_minus->um() == 1'588);         // 1/16 in is 1587.5
    CHECK(job.shaft.spacing->um() == 69'850);                  // 2-3/4 in
    CHECK(job.shaft.shape == std::optional(Shape::star));
    CHECK(job.shaft.halves[Tube::inner].length->length == mm(690));
    CHECK(job.shaft.halves[Tube::inner].guard->length.um() == 673'100);   // 26.5 in
    CHECK(job.shaft.halves[Tube::outer].length->length.um() == 668'338);  // 26-5/16 in is 668337.5
    CHECK(job.shaft.halves[Tube::outer].guard->length.um() == 650'500);
    CHECK(job.fits[0].shortest->length.um() == 741'363);        // 29-3/16 in is 741362.5
    CHECK(job.fits[0].shortest->plus_minus == std::optional(mm(2)));
}

TEST_CASE("parts may stand in any order")
{
    const Job job = good("job_other_order.xml");
    CHECK(job.fits[0].longest[Range::turning]->length == mm(850));
    CHECK(job.fits[0].longest[Range::working]->length == mm(800));
    CHECK(job.shaft.ends[End::tractor].place.line == 14);
    CHECK(job.customer.empty());
}

TEST_CASE("a closed length needs a reference only where nothing else states one")
{
    const auto series = [](const std::string& rest) {
        return *read_catalogue({"c", "<catalogue units=\"mm\"><series name=\"S\" " + rest + "><cross cap=\"22\" span=\"54\"/><wide-angle spacing=\"64\"/></series></catalogue>"}).value;
    };
    const std::string job = "<job order=\"x\" units=\"mm\"><shaft series=\"S\" role=\"primary\" inner-tube=\"tractor\"><closed length=\"800\"/>"
                            "<end side=\"tractor\" joint=\"wide-angle\"/><end side=\"implement\" joint=\"standard\"/></shaft>"
                            "<fit><shortest length=\"742\"/><longest when=\"turning\" length=\"850\"/></fit></job>";
    CHECK(read_job({"f", job}, series("shape=\"lemon\"")).value);
    CHECK(read_job({"f", job}, series("shape=\"triangular\"")).value);
    CHECK(read_job({"f", job}, series("shape=\"square\" wide-angle-reference=\"inner-cross\"")).value);
    CHECK(lines_of(read_job({"f", job}, series("shape=\"square\"")).faults) ==
          "f:1:81: closed has no reference, and series \"S\" does not state one; add reference=\"outer-cross\" or "
          "reference=\"inner-cross\", whichever the closed length was measured from\n");
}

TEST_CASE("only days of the calendar are dates")
{
    const auto accepted = [](const std::string& date) {
        const std::string text = bytes_of(folder / "good/job_other_order.xml");
        const auto at = text.find("order=\"_least\"");
        return read_job_text(text.substr(0, at) + "date=\"" + date + "\" " + text.substr(at)).value.has_value();
    };
    for (const char* date : {"2024-02-29", "2000-02-29", "2026-12-31", "0001-01-01"}) CHECK(accepted(date));
    for (const char* date : {"2023-02-29", "1900-02-29", "2026-04-31", "2026-13-01", "2026-00-10", "2026-10-00", "0000-01-01", "26-11-24", "2026-1-1", "2026/11/24",
                             "2026-1a-01", " 2026-11-24", "2026-11-24 ", "24-11-2026"})
        CHECK_FALSE(accepted(date));
}
