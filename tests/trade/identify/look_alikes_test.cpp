// What a catalogue cannot tell apart.
#include "shaftcut/trade/identify/look_alikes.hpp"

#include <cmath>

#include "support/catch.hpp"
#include "support/identify/invented.hpp"
#include "support/identify/plain_shafts.hpp"
#include "support/identify/reference_files.hpp"

using namespace shaftcut;

namespace {

std::string six() { return std::string(SHAFTCUT_SOURCE_DIR) + "/tests/trade/identify/reference/six/series.xml"; }

// A width's standard deviation by the page's figures: ½√(0.4² + 0.4²) with wear 0.5 of mean 0.35 and dirt 0.15 of mean 0.2.
double inner_width_spread()
{
    const double mean = 0.5 * 0.35 - 0.15 * 0.2;
    return std::sqrt((0.16 + 0.16) / 4 + 2 * 0.5 * 0.35 * 0.35 + 2 * 0.15 * 0.2 * 0.2 - mean * mean);
}

// Two series that differ by their inner tubes' width and nothing else.
LookAlikes apart_by(double mm)
{
    Catalogue catalogue;
    for (const double width : {43.0, 43.0 + mm}) {
        Series& series = catalogue.series.emplace_back();
        series.name = std::to_string(width);
        series.shape = Shape::lemon;
        series.crosses.push_back({Length::millimetres(22), Length::millimetres(54), {}, {}, {}, {}, {}});
        series.halves[Tube::inner].width = Length::from_mm(width);
        series.halves[Tube::outer].width = Length::millimetres(51);
    }
    return look_alikes(catalogue);
}

}  // namespace

TEST_CASE("a figure tells two series apart from four standard deviations on")
{
    const double four = 4 * inner_width_spread();
    CHECK(apart_by(0).never.size() == 1);
    CHECK(apart_by(four - 0.01).never.size() == 1);
    CHECK(apart_by(four - 0.01).never[0].apart == Approx(4).margin(0.03));
    CHECK(apart_by(four + 0.01).never.empty());
    CHECK(apart_by(four + 0.01).only_wide_angle.empty());
}

TEST_CASE("series that only a wide-angle joint tells apart are a list of their own")
{
    Catalogue catalogue = test::read_reference_catalogue(six());
    const LookAlikes found = look_alikes(catalogue);
    REQUIRE(found.never.size() == 1);
    CHECK(found.never[0].series == std::array<std::uint32_t, 2>{0, 5});
    catalogue.series[5].wide_angle->spacing = Length::millimetres(90);
    const LookAlikes wide = look_alikes(catalogue);
    CHECK(wide.never.empty());
    REQUIRE(wide.only_wide_angle.size() == 1);
    CHECK(wide.only_wide_angle[0].series == std::array<std::uint32_t, 2>{0, 5});
}

// By the second implementation of the model (the catalogue beside reference_test.cpp).
TEST_CASE("a hundred invented series have as many look-alikes as a second implementation finds")
{
    const Catalogue catalogue = test::read_reference_catalogue(std::string(SHAFTCUT_SOURCE_DIR) + "/tests/trade/identify/reference/hundred/series.xml");
    const LookAlikes found = look_alikes(catalogue);
    CHECK(found.never.size() == 6);
    CHECK(found.only_wide_angle.size() == 3);
}

TEST_CASE("of thousands of series that are alike a pair takes no more than its places and its distance")
{
    Catalogue catalogue;
    catalogue.series.assign(800, test::plain_series("Alder 2", 22, 54, 43, 51));
    CHECK(look_alikes(catalogue).never.size() == 800 * 799 / 2);
    CHECK(sizeof(LookAlike) <= 16);
}
