// The summary of a list: its counts, what is asked, sawn and fetched.
#include "saw_sheet/batch_summary.hpp"

#include "documents/build_cases.hpp"
#include "documents/page/page_checks.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::papers;

namespace {

std::vector<Page> summary_of(const Batch& batch, Paper paper = Paper::a4) { return draw_batch_summary(batch, paper, font_files()); }

BuildOrder counted(BuildOrder order, int count)
{
    order.count = count;
    return order;
}

BuildOrder held(const std::string& number)
{
    BuildOrder order = build_order(number);
    order.shaft.ends[End::implement].connection.reset();
    return order;
}

BuildOrder refused(const std::string& number)
{
    BuildOrder order = build_order(number);
    order.shaft.ends[End::tractor].lock = Lock::exposed_push_pin;
    return order;
}

}  // namespace

TEST_CASE("the summary counts shafts to build and orders held and refused, on one sheet")
{
    const Batch batch = batch_of({counted(build_order("A-1"), 3), counted(closed_order("A-2", 830), 2), held("A-3"), refused("A-4"), refused("A-5")}, Units::mm);
    const std::vector<Page> pages = summary_of(batch);
    CHECK(pages.size() == 1);
    for (const char* words : {"5 TO BUILD", "1 HELD", "2 REFUSED"}) CHECK(find(pages.front(), words));
    CHECK(contains(pages, "A-3: What the implement end fits is not stated."));
    CHECK(contains(pages, "A-5: mounted mower (invented)"));
    CHECK_FALSE(contains(pages, "A-1:"));
}

TEST_CASE("the pick list has every part once, for all shafts to build; what is sawn is fetched as bars")
{
    const Batch batch = batch_of({counted(build_order("A-1"), 3), counted(closed_order("A-2", 830), 2), counted(held("A-3"), 50)}, Units::mm);
    const std::vector<Page> pages = summary_of(batch);
    for (const PartCount& part : batch.parts) {
        INFO(part.name.known);
        const bool tube = part.name.known.find("tube ") != std::string::npos && part.name.known.find("yoke") == std::string::npos;
        CHECK(contains(pages, std::to_string(part.count) + " × " + part.name.known) == !tube);
    }
    CHECK(contains(pages, "10 × spring pin 10 x 60"));
    CHECK(contains(pages, "lemon tube 43 x 3.4: 1 × 6000 mm for 5 pieces"));
    CHECK(contains(pages, "guard tube 80: NO PLAN"));
}

TEST_CASE("no text of a summary overlaps another or leaves the margins, on either paper, in either unit")
{
    for (const Units units : {Units::mm, Units::in})
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const Page& page : summary_of(case_batch(units), paper)) {
                CHECK(overlapping_texts(page).empty());
                for (const Text& text : texts_of(page)) {
                    INFO(text.text);
                    CHECK(inside(page, text.box, 9.9));
                }
            }
}

TEST_CASE("a long pick list goes on in the second column and on the next sheet, and loses nothing")
{
    Batch batch = batch_of({build_order("A-1")}, Units::mm);
    batch.parts.clear();
    for (int i = 100; i < 400; ++i) {
        PartName name;
        name.known = "part number " + std::to_string(i);
        batch.parts.push_back({name, 1});
    }
    const std::vector<Page> pages = summary_of(batch);
    CHECK(pages.size() > 1);
    for (int i = 100; i < 400; ++i) CHECK(contains(pages, "1 × part number " + std::to_string(i)));
}
