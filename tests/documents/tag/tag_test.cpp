#include <algorithm>

#include "documents/page/page_checks.hpp"
#include "documents/sample_orders.hpp"
#include "shaftcut/trade/order/tag.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "tag/tag_sheet.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const Firm firm{"Demonstration workshop (invented)", "", "555 0100", "", "", ""};

std::vector<Page> tag_of(const WorkOrder& order, Paper paper = Paper::a4) { return draw_tag({order, firm}, paper, font_files(), Wording(order.units)); }

WorkOrder sample(const std::string& name)
{
    static const std::vector<SheetCase> all = sample_orders(SHAFTCUT_SOURCE_DIR);
    const auto found = std::find_if(all.begin(), all.end(), [&](const SheetCase& one) { return one.name == name + " in mm"; });
    REQUIRE(found != all.end());
    return found->order;
}

}  // namespace

TEST_CASE("tag: every text can be read, nothing leaves the sheet, and a refused shaft has none")
{
    for (const SheetCase& sample : sample_orders(SHAFTCUT_SOURCE_DIR)) {
        INFO(sample.name);
        const auto why = why_no_tag(sample.order);
        CHECK((why == WhyNoTag::refused) == (sample.order.verdict == Verdict::refused));
        if (why) continue;
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> pages = tag_of(sample.order, paper);
            REQUIRE(pages.size() == 1);
            check_texts(pages.front());
            check_lines(pages.front(), 9.4);
        }
    }
}

TEST_CASE("tag: it names what was measured, what is to be asked, and whom")
{
    WorkOrder order = sample("plain-cut");
    order.machine = "mower";
    order.tractor = "old tractor";
    for (FitReading& fit : order.fits) fit.tractor.clear();
    order.circumstances.hitch = "second hole";
    order.circumstances.measured_by.date = "2026-11-20";
    order.shaft.number = "S 77";
    const std::vector<Page> pages = tag_of(order);
    CHECK(contains(pages, "Cut for mower on old tractor, hole and hitch as on 2026-11-20: second hole."));
    CHECK(contains(pages, "have it measured first"));
    CHECK(contains(pages, "telephone 555 0100"));
    CHECK(contains(pages, "Order " + order.order + ", shaft S 77"));
    CHECK(contains(pages, "Never tie anything to the shaft"));
    for (const char* caution : {"engine off, key out, wait until it stands", "Stand clear", "Guard complete", "Never step over a turning shaft"}) CHECK(contains(pages, caution));
    const std::string closed = figure_of_with_unit(Rounded::closed_after, order.cut->closed_at[Reference::inner_cross], Units::mm);
    CHECK(contains(pages, "closed " + closed));
    CHECK(contains(pages, "shortest " + figure_of_with_unit(Rounded::shortest, order.fit.shortest->value, Units::mm)));
}

TEST_CASE("tag: one for a machine elsewhere says that it was not tried")
{
    WorkOrder order = sample("plain-cut");
    order.circumstances.machine_here = true;
    CHECK_FALSE(contains(tag_of(order), "NOT YET TRIED"));
    order.circumstances.machine_here = false;
    CHECK(contains(tag_of(order), "NOT YET TRIED: do steps 14 to 16 of its cut sheet first"));
}

TEST_CASE("tag: the end with the outer tube is drawn at its own side")
{
    WorkOrder order = sample("plain-cut");
    for (const End end : both_ends) {
        order.shaft.inner_tube = end;
        const Page page = tag_of(order).front();
        const Text* inner = find(page, "inner tube");
        const Text* outer = find(page, "outer tube");
        REQUIRE((inner && outer));
        CHECK((inner->baseline.x < outer->baseline.x) == (end == End::tractor));
    }
}

TEST_CASE("tag: a position that the lengths rest on is said, of a lift by its heights")
{
    const WorkOrder order = sample("mounted-lift");
    const auto& range = std::get<Mounted>(order.fits.front().geometry->machine).ranges.turning;
    REQUIRE(range);
    CHECK(contains(tag_of(order), figure_of_with_unit(Rounded::at_most, range->highest.value, Units::mm) + " above the ground"));
    WorkOrder measured = sample("plain-cut");
    REQUIRE(measured.fits.front().longest[Range::turning]);
    measured.fits.front().longest_at[Range::turning] = "lift at the second mark";
    CHECK(contains(tag_of(measured), "no further than measured: lift at the second mark"));
}

TEST_CASE("tag: none where a guard is not used again or came in incomplete")
{
    WorkOrder order = sample("plain-cut");
    CHECK_FALSE(why_no_tag(order));
    for (const Tube tube : both_tubes) {
        WorkOrder without = order;
        without.shaft.halves[tube].guard_use = GuardUse::damaged;
        CHECK(why_no_tag(without) == WhyNoTag::guard_not_used);
    }
    order.shaft.condition.emplace().guard = Completeness::missing;
    CHECK(why_no_tag(order) == WhyNoTag::guard_incomplete);
    order.shaft.condition->guard = Completeness::complete;
    CHECK_FALSE(why_no_tag(order));
}
