#include "saw_sheet/saw_sheet.hpp"

#include <set>

#include "documents/page/page_checks.hpp"
#include "documents/saw_cases.hpp"
#include "page/cairo_pages.hpp"
#include "page/font.hpp"
#include "saw/saw_words.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "support/saw/linear_programme.hpp"
#include "text.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

template <class Look>
void on_every_page(const Look& look)
{
    for (const SawCase& one : saw_cases())
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> pages = draw_saw_sheet(one.order, paper, font_files());
            for (std::size_t i = 0; i < pages.size(); ++i) {
                INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter") << ", sheet " << i + 1);
                look(pages[i]);
            }
        }
}

}  // namespace

TEST_CASE("saw sheet: every text can be read, and nothing drawn leaves the margins")
{
    on_every_page([](const Page& page) {
        check_texts(page);
        check_lines(page, 9.9);
    });
}

TEST_CASE("saw sheet: nothing is dropped: every bar, every piece's stop and label, every total")
{
    for (const SawCase& one : saw_cases()) {
        const SawOrder& order = one.order;
        const std::vector<Page> pages = draw_saw_sheet(order, Paper::a4, font_files());
        const std::string text = all_text(pages);
        const auto shown = [&](const std::string& words) { return text.find(squeezed(fonts().printable(words))) != std::string::npos; };
        INFO(one.name);
        std::int64_t number = 1;
        std::int64_t stops = 0, expected = 0;
        for (const BarLayout& bar : order.bars) {
            const std::string length = saw_figure_with_unit(bar.length, order.units);
            CHECK(shown(bar.count == 1 ? "Bar " + std::to_string(number) + ": " + length
                                          : "Bars " + std::to_string(number) + "–" + std::to_string(number + bar.count - 1) + ": " + std::to_string(bar.count) + " alike of " + length));
            number += bar.count;
            for (const PlacedPiece& piece : bar.pieces) CHECK((shown(saw_figure(piece.stop, order.units)) && shown(piece.label)));
            if (bar.use != LeftoverUse::none) CHECK(shown("leftover " + saw_figure_with_unit(bar.leftover, order.units)));
        }
        // Each stop as often as the bars have it.
        const Length first = order.bars[0].pieces.back().stop;
        for (const BarLayout& bar : order.bars)
            for (const PlacedPiece& piece : bar.pieces) expected += piece.stop == first ? 1 : 0;
        for (const std::string& words : {saw_figure(first, order.units), saw_figure_with_unit(first, order.units)}) stops += count_of(pages, words);
        CHECK(stops >= expected);
        for (const BarsToFetch& bars : order.fetch) CHECK(shown(std::to_string(bars.count) + " × " + saw_figure_with_unit(bars.length, order.units)));
        for (const SawCaution caution : order.cautions) CHECK(shown(say(caution, order, Wording(order.units))));
        CHECK(shown(cost_and_bound(order, Wording(order.units))));
        CHECK(shown(order.name));
    }
}

TEST_CASE("saw sheet: a bar is drawn to scale, its waste hatched and a leftover for the rack not")
{
    const SawOrder order = saw_order("scale", saw_task({{Length::millimetres(2000), 1, "A"}}));
    const Page page = draw_saw_sheet(order, Paper::a4, font_files()).front();
    const double scale = 190.0 / 6000.0;
    std::vector<double> widths;
    for (const Mark& mark : page.marks)
        if (const auto* path = std::get_if<Path>(&mark.what); path && path->fill == Fill::hatched) widths.push_back(path->points[1].x - path->points[0].x);
    REQUIRE(widths.size() == 2);
    CHECK(widths[0] == Approx(10 * scale));
    CHECK(widths[1] == Approx(5 * scale));
    bool cut = false;
    for (const Mark& mark : page.marks)
        if (const auto* path = std::get_if<Path>(&mark.what); path && path->points.size() == 2) cut = cut || std::abs(path->points[0].x - (10 + 2010 * scale)) < 1e-9;
    CHECK(cut);
    CHECK(count_of({page}, "RACK") == 1);
}

TEST_CASE("saw sheet: equal plans give equal bytes, hundreds of bars many sheets with their numbers")
{
    for (const SawCase& one : saw_cases()) {
        if (one.name != "hundreds of bars") continue;
        const std::vector<Page> pages = draw_saw_sheet(one.order, Paper::letter, font_files());
        REQUIRE(pages.size() > 10);
        CHECK(count_of(pages, "Sheet 2 of " + std::to_string(pages.size())) == 1);
        CHECK(count_of(pages, "continued on sheet 3 →") == 1);
        CHECK(pdf_of(pages, saw_sheet_info(one.order), font_files()) == pdf_of(draw_saw_sheet(one.order, Paper::letter, font_files()), saw_sheet_info(one.order), font_files()));
    }
}

TEST_CASE("saw sheet: bold is the length of a piece in bars and in tables, and the sheet says so")
{
    for (const SawCase& one : saw_cases()) {
        if (one.order.bars.size() > 50 || one.name == "tiny pieces") continue;  // whose lengths are the pieces' numbers too
        INFO(one.name);
        const std::vector<Page> pages = draw_saw_sheet(one.order, Paper::a4, font_files());
        CHECK(all_text(pages).find(squeezed("Bold, in a bar and in a table: the length of the piece.")) != std::string::npos);
        std::set<std::string> lengths, stops;
        for (const BarLayout& bar : one.order.bars)
            for (const PlacedPiece& piece : bar.pieces) {
                lengths.insert({saw_figure(piece.length, one.order.units), saw_figure_with_unit(piece.length, one.order.units)});
                stops.insert({saw_figure(piece.stop, one.order.units), saw_figure_with_unit(piece.stop, one.order.units)});
            }
        for (const Page& page : pages)
            for (const Text& text : texts_of(page)) {
                INFO(text.text);
                if (lengths.contains(text.text) && !stops.contains(text.text)) CHECK(text.weight == Weight::bold);
                if (stops.contains(text.text) && !lengths.contains(text.text)) CHECK(text.weight == Weight::regular);
            }
    }
}

TEST_CASE("saw sheet: a piece as long as its bar says to use it whole and has no stop, and a thin end is said")
{
    SawTask task = saw_task({{Length::millimetres(6000), 1, "A"}, {Length::millimetres(2996), 1, "B"}});
    task.trim_start = task.trim_end = Length();
    task.stock.push_back({Length::millimetres(3000), 1, 3000 * cost_unit});
    SawOutcome outcome = plan_saw(task, {[] { return 10.0; }, {}, linear_programme()});
    const SawOrder order = lay_out({"whole", "", Units::mm, std::nullopt, Length::millimetres(5), Length::millimetres(1)}, task, std::get<SawPlan>(std::move(outcome)), SawEnd::finished, 0);
    const std::vector<Page> pages = draw_saw_sheet(order, Paper::a4, font_files());
    CHECK(count_of(pages, "use whole") == 1);
    CHECK(count_of(pages, "use whole, no cut") == 1);
    CHECK(count_of(pages, "6000") == 1);  // the piece, not a stop
    CHECK(count_of(pages, "THIN END: the last cut takes off only 4 mm") == 1);
    CHECK(all_text(pages).find(squeezed("sawn lengths ± 1 mm")) != std::string::npos);
}

TEST_CASE("saw sheet: sums are in the sheet's own unit")
{
    for (const SawCase& one : saw_cases()) {
        const std::string sum = one.order.units == Units::in ? figure_with_unit(one.order.totals.pieces_length, Units::in) + " (" : figure(Length::micrometres(one.order.totals.pieces_length.um() / 1000), Units::mm, Toward::nearest, 3) + " m.";
        INFO(one.name);
        CHECK(all_text(draw_saw_sheet(one.order, Paper::a4, font_files())).find(squeezed(sum)) != std::string::npos);
    }
}
