#include "catalogue_reader.hpp"

#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {
constexpr Length mm(std::int64_t count) { return Length::millimetres(count); }
}  // namespace

TEST_CASE("a series is read as it stands")
{
    const Series* series = find_series(catalogue(), "Alder 2");
    REQUIRE(series);
    CHECK(series->shape == Shape::lemon);
    CHECK(series->wide_angle_reference == std::optional(Reference::outer_cross));
    REQUIRE(series->crosses.size() == 1);
    CHECK(series->crosses[0].cap == mm(22));
    CHECK(series->crosses[0].span == mm(54));
    CHECK(series->wide_angle->spacing == mm(64));
    REQUIRE(series->wide_angle->crosses.size() == 2);
    CHECK(series->wide_angle->crosses[1].span == mm(70));
    const SeriesHalf& inner = series->halves[Tube::inner];
    CHECK(inner.shoulder == std::optional(mm(128)));
    CHECK(inner.seat == std::optional(mm(62)));
    CHECK(inner.least_tube == std::optional(mm(180)));
    CHECK(inner.width == std::optional(mm(43)));
    CHECK(inner.wall == std::optional(Length::micrometres(3400)));
    CHECK(inner.guard_shoulder == std::optional(mm(122)));
    CHECK(inner.guard_seat == std::optional(mm(46)));
    CHECK(inner.guard_seat_wide_angle == std::optional(mm(74)));
    CHECK_FALSE(inner.shortening_forbidden);
    CHECK(series->halves[Tube::outer].shoulder == std::optional(mm(106)));
    CHECK(series->limits[Limit::closing_clearance]->value == LimitValue{40'000, 1});
    CHECK(series->closed_lengths == std::vector{mm(480), mm(590), mm(705), mm(830), mm(960), mm(1100), mm(1250)});
    CHECK_FALSE(series->shortening_forbidden);
}

TEST_CASE("what a series leaves out is not known")
{
    const auto read = read_catalogue({"f", bytes_of(folder / "good/series_least.xml")});
    REQUIRE(read.value);
    const Series& least = read.value->series[0];
    CHECK(least.crosses[0].cap.um() == 22'225);  // 7/8 in
    CHECK_FALSE(least.wide_angle_reference);
    CHECK_FALSE(least.wide_angle);
    CHECK_FALSE(least.halves[Tube::inner].shoulder);
    CHECK(least.yokes.empty());
    CHECK(least.closed_lengths.empty());
    const Series& second = read.value->series[1];
    CHECK(second.shortening_forbidden);
    CHECK(second.halves[Tube::outer].shortening_forbidden);
    CHECK_FALSE(second.halves[Tube::inner].shortening_forbidden);
    CHECK(second.closed_lengths[1].um() == 546'100);  // 21-1/2 in
    CHECK(second.closed_lengths[2] == mm(600));
    CHECK(cross_to_groove(second, "late", JointKind::standard)->um() == 50'800);
    CHECK_FALSE(cross_to_groove(second, "late", JointKind::wide_angle));
    CHECK(find_connection(*read.value, "late")->speeds == std::vector{540, 1000});
}

TEST_CASE("the catalogue's rated speeds are those of ISO 500-1:2014")
{
    // ISO 500-1:2014 types 1 to 4; the speed of type 4 was found in one text.
    const std::vector<std::pair<std::string, int>> published{{"1-3/8-6", 540}, {"1-3/8-21", 1000}, {"1-3/4-20", 1000}, {"2-1/4-22", 1300}};
    for (const auto& [name, speed] : published) {
        const Connection* connection = find_connection(catalogue(), name);
        REQUIRE(connection);
        CHECK(connection->speeds == std::vector{speed});
        CHECK(connection->source.find("ISO 500-1:2014") == 0);
    }
}

TEST_CASE("the demonstration's series can be made and cut")
{
    for (const Series& series : catalogue().series) {
        INFO(series.name);
        const SeriesHalf& inner = series.halves[Tube::inner];
        const SeriesHalf& outer = series.halves[Tube::outer];
        for (const Tube tube : both_tubes) {
            const SeriesHalf& half = series.halves[tube];
            CHECK(*half.seat < *half.shoulder);
            // A guard 10 mm short of its tube must not stop the shaft before its tubes do.
            if (half.guard_shoulder) CHECK(*half.guard_shoulder <= *half.shoulder + mm(10));
            if (half.guard_seat) CHECK(*half.guard_seat < *half.guard_shoulder);
        }
        CHECK(*inner.width < *outer.width);
        // The shortest stock length leaves both tubes long enough, also with a wide-angle joint at one end.
        if (series.closed_lengths.empty()) continue;
        const auto reference = series.wide_angle_reference ? series.wide_angle_reference : usual_reference(series.shape);
        const bool outer_cross = series.wide_angle && reference == Reference::outer_cross;
        const Length closed = series.closed_lengths.front() - (outer_cross ? series.wide_angle->spacing : Length());
        CHECK(closed - *outer.shoulder - *inner.seat >= *inner.least_tube);
        CHECK(closed - *inner.shoulder - *outer.seat >= *outer.least_tube);
    }
}
