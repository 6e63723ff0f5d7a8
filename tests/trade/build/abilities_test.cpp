// What a series can do, held against cutting and building with it.
#include "shaftcut/trade/build/abilities.hpp"

#include "build/ability_words.hpp"
#include "support/catch.hpp"
#include "support/orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Series sound() { return build_catalogue().series[0]; }
std::string lines(const Series& series) { return ability_lines(abilities_of(series), Wording(Units::mm)); }
bool says(const Series& series, const std::string& words) { return lines(series).find(words) != std::string::npos; }

Series without(PartKind kind)
{
    Series series = sound();
    std::erase_if(series.parts, [&](const CataloguePart& part) { return part.kind == kind; });
    return series;
}

}  // namespace

TEST_CASE("a series that states everything can be cut and built, and lacks nothing")
{
    const Series series = sound();
    CHECK(abilities_of(series).cuts());
    CHECK(abilities_of(series).builds());
    CHECK(lines(series) == "  can           cut, cut with halves measured, build\n");
}

TEST_CASE("each figure that building asks for is named where it lacks, and then no shaft is built")
{
    for (const Tube tube : both_tubes) {
        Series series = sound();
        series.halves[tube].seat.reset();
        series.halves[tube].guard_seat_wide_angle.reset();
        const std::string half = std::string("the ") + to_word(tube) + " half's ";
        CHECK(says(series, "to build      state " + half + "seat and " + half + "guard-seat-wide-angle\n"));
        CHECK(says(series, "can           cut, cut with halves measured\n"));
        Catalogue catalogue = build_catalogue();
        catalogue.series[0] = series;
        CHECK(planned_with(build_order(), catalogue).verdict == BuildVerdict::refused);
    }
}

TEST_CASE("without a shoulder the halves must be measured")
{
    Series series = sound();
    series.halves[Tube::outer].shoulder.reset();
    CHECK(says(series, "  can           cut with halves measured\n  to cut        state the outer half's shoulder\n"));
    series.shortening_forbidden = true;
    CHECK(says(series, "  can           nothing yet; none of it may be cut\n"));
    CHECK_FALSE(says(series, "to cut"));
}

TEST_CASE("each part without a name is asked for, and its orders are held")
{
    for (const PartKind kind : {PartKind::double_yoke, PartKind::tube_yoke, PartKind::pin, PartKind::guard_tube, PartKind::guard_bearing, PartKind::chain, PartKind::label, PartKind::book, PartKind::connection_yoke}) {
        INFO(to_word(kind));
        Catalogue catalogue = build_catalogue();
        catalogue.series[0] = without(kind);
        CHECK_FALSE(abilities_of(catalogue.series[0]).builds());
        CHECK(says(catalogue.series[0], "  to build      name "));
        CHECK(planned_with(build_order(), catalogue).verdict == BuildVerdict::held);
    }
    CHECK(says(without(PartKind::chain), "name Alder 2 guard chain\n"));
    CHECK(says(without(PartKind::pin), "how the inner tube is held in its yoke and how the outer tube is held in its yoke\n"));
}

TEST_CASE("a device of which nobody knows whether it is the yoke is asked about")
{
    Series series = sound();
    series.parts.back().device = Device::slip_clutch;
    series.parts.back().replaces.reset();
    CHECK(says(series, "what the slip-clutch replaces"));
}

TEST_CASE("figures that cannot be are said")
{
    Series series = sound();
    series.halves[Tube::inner].width = mm(46);
    series.halves[Tube::outer].width = mm(51);
    series.halves[Tube::outer].wall = mm(3);
    CHECK(says(series, "CANNOT BE     an inner tube of 46 mm does not go into an outer one of 45 mm inside"));
    series = sound();
    series.halves[Tube::inner].least_tube = mm(180);
    // 340 less 106 and 62.
    series.closed_lengths = {mm(340)};
    CHECK(says(series, "CANNOT BE     closed 340 mm: 172 mm of the inner tube would be left, 180 mm is the least"));
}
