// What a length can be at all, and the slips of the unit.
#include "data/bounds.hpp"

#include "support/check_rows.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("both ends of a bound belong to it")
{
    CHECK(telescoping_bounds.hold(mm(200)));
    CHECK(telescoping_bounds.hold(mm(3'500)));
    CHECK_FALSE(telescoping_bounds.hold(mm(199.999)));
    CHECK_FALSE(telescoping_bounds.hold(mm(3'500.001)));
}

TEST_CASE("a slip of the unit is one that the other unit mends, in both directions")
{
    CHECK(unit_slip(mm(860), half_bounds) == UnitSlip::none);
    CHECK(unit_slip(mm(27.165), half_bounds) == UnitSlip::inches_read_as_millimetres);    // 690 mm
    CHECK(unit_slip(mm(17'526), half_bounds) == UnitSlip::millimetres_read_as_inches);    // 690 in
    CHECK(unit_slip(mm(0.5), half_bounds) == UnitSlip::none);
}

TEST_CASE("a job with one length in the other unit is refused and asks for the unit, whichever length it is")
{
    const std::vector<Change> lengths{
        [](Setting& s) { s.job.shaft.closed.length = mm(860 / 25.4); },
        [](Setting& s) { s.job.shaft.closed.length = mm(860 * 25.4); },
        [](Setting& s) { s.half(Tube::inner).length = measured(690 / 25.4); },
        [](Setting& s) { s.half(Tube::outer).guard = measured(650 * 25.4); },
        [](Setting& s) { s.half(Tube::outer).shoulder = measured(106 / 25.4); },
        [](Setting& s) { s.fit().shortest = measured(742 / 25.4); },
        [](Setting& s) { s.fit().longest[Range::standing] = measured(905 * 25.4); },
    };
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        INFO(i);
        Setting setting;
        lengths[i](setting);
        const WorkOrder order = worked(setting);
        CHECK(order.verdict == Verdict::refused);
        CHECK(says(reasons_of(order), "is its unit right?"));
    }
}

TEST_CASE("a job all of whose lengths are 25.4 times what they should be agrees with itself and is refused all the same")
{
    for (const double factor : {25.4, 1 / 25.4}) {
        Setting setting;
        const auto slip = [&](std::optional<Measurement>& length) {
            if (length) length->length = Length::from_mm(length->length.mm() * factor);
        };
        setting.job.shaft.closed.length = Length::from_mm(setting.job.shaft.closed.length.mm() * factor);
        for (const Tube tube : both_tubes) {
            slip(setting.half(tube).length);
            slip(setting.half(tube).guard);
        }
        slip(setting.fit().shortest);
        for (const Range range : all_ranges) slip(setting.fit().longest[range]);
        const WorkOrder order = worked(setting);
        CHECK(order.verdict == Verdict::refused);
        CHECK(says(reasons_of(order), "is its unit right?"));
    }
}
