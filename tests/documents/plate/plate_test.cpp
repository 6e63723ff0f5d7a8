#include "documents/page/page_checks.hpp"
#include "plate/plate_sheet.hpp"
#include "plate/plate_words.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "support/orders.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

BuildPlan plan(int count = 1)
{
    BuildOrder order = build_order();
    order.count = count;
    Catalogue catalogue = build_catalogue();
    catalogue.series[0].ratings = {{540, 16'000}};
    BuildPlan found = plan_build(order, catalogue, workshop(), Units::mm);
    found.firm.name = "Demonstration workshop (invented)";
    found.firm.address = "1 Example Road, Nowhere";
    return found;
}

std::vector<Page> plates(const BuildPlan& plan, Paper paper = Paper::a4) { return draw_plates(plan, paper, font_files(), wording_of(plan)); }

}  // namespace

TEST_CASE("plate: firm, series, speed, rating and boxes for what nobody has yet, on every paper")
{
    for (const Paper paper : {Paper::a4, Paper::letter})
        for (const int count : {1, 3, 10'000}) {
            const std::vector<Page> pages = plates(plan(count), paper);
            REQUIRE(pages.size() == 1);
            check_texts(pages.front());
            check_lines(pages.front(), 9.4);
            for (const char* text : {"Demonstration workshop (invented)", "1 Example Road, Nowhere", "PTO drive shaft Alder 2", "Greatest speed 540 min⁻¹", "At most 16 kW, 282 N m at that speed",
                                     "Serial number", "Year built", "Mass, kg", "weigh it", "Read the instruction book"})
                CHECK(contains(pages, text));
        }
}

TEST_CASE("plate: it bears no mark of conformity, and its sheet says so")
{
    const std::vector<Page> pages = plates(plan());
    CHECK(contains(pages, "bears no mark of conformity"));
}

TEST_CASE("plate: what is not rated is not said, and a speed that nobody knows is a box")
{
    BuildPlan unknown = plan();
    unknown.built->plate = {};
    unknown.firm = {};
    const std::vector<Page> pages = plates(unknown);
    CHECK_FALSE(contains(pages, "kW"));
    CHECK_FALSE(contains(pages, "min⁻¹"));
    CHECK(contains(pages, "Greatest speed"));
    CHECK(contains(pages, "Made by"));
    check_texts(pages.front());
}

TEST_CASE("plate: a sheet that does not hold all of an order says how often it is needed")
{
    CHECK_FALSE(contains(plates(plan(8)), "Print this sheet"));
    CHECK(contains(plates(plan(9)), "Print this sheet 2 times."));
}
