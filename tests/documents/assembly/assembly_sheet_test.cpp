#include "assembly/assembly_sheet.hpp"

#include <functional>

#include "catalogue_reader.hpp"
#include "documents/build_cases.hpp"
#include "documents/page/page_checks.hpp"
#include "files/load.hpp"
#include "lists/orders_reader.hpp"
#include "page/font.hpp"
#include "shaft_title_words.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "support/sentences.hpp"
#include "text.hpp"
#include "workshop_reader.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::papers;

namespace {

// The sheets of every case on both papers.
template <class Look>
void on_all_sheets(const Look& look)
{
    for (const BuildCase& one : build_cases()) {
        const BuildPlan plan = planned(one);
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            INFO(one.name << (paper == Paper::a4 ? ", A4" : ", Letter"));
            look(one, plan, draw_assembly_sheet(plan, paper, font_files()));
        }
    }
}

std::vector<Length> blanks_of(const BuiltLengths& lengths)
{
    std::vector<Length> blanks;
    for (const Tube tube : both_tubes) {
        blanks.push_back(lengths.blank[tube]);
        if (lengths.guard_blank[tube]) blanks.push_back(*lengths.guard_blank[tube]);
    }
    return blanks;
}

}  // namespace

TEST_CASE("the shafts made to order are what their names say")
{
    for (const BuildCase& one : build_cases()) {
        INFO(one.name);
        const BuildVerdict verdict = one.name.starts_with("refused") ? BuildVerdict::refused : one.name.starts_with("held") ? BuildVerdict::held : BuildVerdict::build;
        CHECK(planned(one).verdict == verdict);
    }
}

TEST_CASE("an assembly work order takes one sheet or two, and says where it goes on")
{
    on_all_sheets([](const BuildCase& one, const BuildPlan&, const std::vector<Page>& pages) {
        CHECK(pages.size() <= one.most_sheets);
        CHECK(find(pages.front(), "1 of " + std::to_string(pages.size())));
        CHECK((contains(pages, "continued on sheet 2") || contains(pages, "in full after the checks") || contains(pages, "last sheet")) == (pages.size() > 1));
    });
}

// The sheets of the sample's orders on both papers, in both units.
template <class Look>
void on_sample_sheets(const Look& look)
{
    const std::string folder = std::string(SHAFTCUT_SOURCE_DIR) + "/";
    const auto source = [&](const char* name) { return std::get<Source>(load(folder + name)); };
    const Catalogue catalogue = read_catalogue(source("config/series.xml")).value.value();
    const Workshop workshop = read_workshop(source("config/workshop.xml")).value.value();
    const OrderList list = read_orders_csv(source("samples/orders.csv"), catalogue, Units::mm);
    REQUIRE(list.orders.size() == 20);
    for (const BuildOrder& order : list.orders)
        for (const Units units : {Units::mm, Units::in})
            for (const Paper paper : {Paper::a4, Paper::letter}) {
                INFO(order.order << (paper == Paper::a4 ? ", A4, " : ", Letter, ") << unit_word(units));
                const BuildPlan plan = plan_build(order, catalogue, workshop, units);
                look(plan, draw_assembly_sheet(plan, paper, font_files()));
            }
}

std::string name_of(CheckId id)
{
    std::string name = to_word(id);
    std::replace(name.begin(), name.end(), '-', ' ');
    return name;
}

bool any_text(const std::vector<Page>& pages, const std::function<bool(const Text&)>& holds)
{
    return std::any_of(pages.begin(), pages.end(), [&](const Page& page) {
        const std::vector<Text> texts = texts_of(page);
        return std::any_of(texts.begin(), texts.end(), holds);
    });
}

TEST_CASE("every order of the sample takes two sheets at most; on A4 in millimetres its parts and work are on the first")
{
    on_sample_sheets([](const BuildPlan& plan, const std::vector<Page>& pages) {
        CHECK(pages.size() <= 2);
        CHECK(find(pages.front(), "1 of " + std::to_string(pages.size())));
        if (!plan.built || plan.units == Units::in || pages.front().height < 290) return;
        for (const Operation& operation : plan.built->operations) CHECK(contains({pages.front()}, say(operation, wording_of(plan))));
        for (const ShaftPart& part : plan.built->parts) CHECK(contains({pages.front()}, say(part.name, wording_of(plan))));
    });
}

// 0.85 of the font's width is what the sheets' usual 0.9 may be narrowed to: less is lost on a poor copy of 100 dots an inch.
TEST_CASE("no letter of the sample's sheets is squeezed, no text overlaps another, and none leaves the margins")
{
    on_sample_sheets([](const BuildPlan&, const std::vector<Page>& pages) {
        for (const Page& page : pages) {
            CHECK(overlapping_texts(page).empty());
            const std::vector<std::string> struck = struck_texts(page);
            INFO((struck.empty() ? std::string() : "struck: " + struck.front()));
            CHECK(struck.empty());
            for (const Text& text : texts_of(page)) {
                INFO(text.text);
                CHECK(inside(page, text.box, 9.9));
                CHECK(text.stretch >= 0.85);
            }
        }
    });
}

TEST_CASE("each check that was made is said, and every warning has a line of its own in bold")
{
    on_sample_sheets([](const BuildPlan& plan, const std::vector<Page>& pages) {
        for (const Check& check : plan.checks) {
            INFO(to_word(check.id));
            const std::string start = check.result == CheckResult::warn ? "WARNING, " + name_of(check.id) + ":" : name_of(check.id) + (check.result == CheckResult::fail ? ": FAILED" : ": pass");
            if (check.result == CheckResult::not_checked) continue;
            if (check.result != CheckResult::warn) CHECK(contains(pages, start));
            else CHECK(any_text(pages, [&](const Text& text) { return text.text.starts_with(start) && text.weight == Weight::bold; }));
        }
    });
}

TEST_CASE("a warning stands on the first sheet, or that sheet says that there is one")
{
    on_sample_sheets([](const BuildPlan& plan, const std::vector<Page>& pages) {
        if (!plan.built || std::none_of(plan.checks.begin(), plan.checks.end(), [](const Check& check) { return check.result == CheckResult::warn; })) return;
        CHECK(contains({pages.front()}, "WARNING, "));
    });
}

TEST_CASE("the ordered shortest and longest lengths stand over those that the finished shaft allows, exactly")
{
    for (const Units units : {Units::mm, Units::in}) {
        const BuildPlan plan = planned(build_order("B-101"), units);
        const Page page = draw_assembly_sheet(plan, Paper::a4, font_files()).front();
        const Text* ordered = find(page, "Ordered");
        const Text* allowed = find(page, "This shaft allows");
        REQUIRE(ordered);
        REQUIRE(allowed);
        const auto in_row = [&](const Text& head, const AtEither& length) {
            const std::string words = saw_figure(length[plan.reference], units) + " " + unit_word(units);
            const std::vector<Text> texts = texts_of(page);
            return std::any_of(texts.begin(), texts.end(), [&](const Text& text) { return text.baseline.y == head.baseline.y && text.text == words; });
        };
        CHECK(in_row(*ordered, *plan.ordered_use.shortest));
        CHECK(in_row(*allowed, plan.built->use.shortest));
        for (const Range range : all_ranges) CHECK((in_row(*ordered, *plan.ordered_use.longest[range]) && in_row(*allowed, *plan.built->use.longest[range])));
    }
}

TEST_CASE("each of several shafts alike has a line of boxes: serial number, closed length and O")
{
    const auto boxes_of = [](int count) {
        BuildOrder order = build_order("B-101");
        order.count = count;
        int boxes = 0;
        for (const Page& page : draw_assembly_sheet(planned(order), Paper::a4, font_files()))
            for (int number = 1; number <= count; ++number) boxes += find(page, "Shaft " + std::to_string(number) + ": serial no.") ? 1 : 0;
        return boxes;
    };
    CHECK(boxes_of(1) == 0);
    for (const int count : {2, 3, 7, 100}) CHECK(boxes_of(count) == count);
    CHECK(boxes_of(101) == 100);
}

TEST_CASE("a single shaft's closed length is to be within the saw's tolerance and the tape's")
{
    const BuildPlan plan = planned(build_order("B-101"));
    const Page page = draw_assembly_sheet(plan, Paper::a4, font_files()).front();
    for (const std::string& words : {std::string("Serial no."), std::string("O"), "(" + figure_with_unit(plan.built->closed_at[plan.reference], Units::mm) + " ± 3 mm)"}) CHECK(find(page, words));
}

TEST_CASE("a held order says how much is open, what, whom to ask and what to send, and holds no length")
{
    const BuildOrder sound = build_order("B-106");
    BuildOrder held = sound;
    held.shaft.ends[End::implement].connection.reset();
    held.shaft.ends[End::implement].device = Device::overrunning_clutch;
    const BuiltLengths lengths = planned(sound).built->lengths;
    const BuildPlan plan = planned(held);
    REQUIRE(plan.open.size() == 3);
    const std::vector<Page> pages = draw_assembly_sheet(plan, Paper::a4, font_files());
    const Text* verdict = find(pages.front(), "HELD: 3 open");
    REQUIRE(verdict);
    CHECK(verdict->cap_height >= 10);
    for (const char* words : {"What is open", "Ask whoever ordered it.", "Ask whoever supplies the parts.", "Ready to send", "To whoever supplies the parts: Our order B-106"}) CHECK(contains(pages, words));
    for (const Length length : blanks_of(lengths)) CHECK_FALSE(contains(pages, figure_with_unit(length, Units::mm)));
    for (const char* words : {"saw to", "BUILD", "Fetch", "Serial no."}) CHECK_FALSE(contains(pages, words));
}

TEST_CASE("a refused assembly work order does not speak of a finished shaft")
{
    on_sample_sheets([](const BuildPlan& plan, const std::vector<Page>& pages) {
        CHECK(contains(pages, "Checks on the finished shaft") == plan.built.has_value());
        CHECK(contains(pages, "What was checked") == !plan.built);
    });
}

TEST_CASE("every text of an assembly work order can be read, and no line leaves the sheet")
{
    on_all_sheets([](const BuildCase&, const BuildPlan& plan, const std::vector<Page>& pages) {
        for (const Page& page : pages) {
            check_texts(page);
            check_lines(page, 9);
            // The order's number of 40 wide letters and the largest words may be narrowed further.
            for (const Text& text : texts_of(page))
                if (text.cap_height < 5 && text.text != plan.order) CHECK(text.stretch >= 0.85);
        }
    });
}

TEST_CASE("the lengths to saw are bold and over 5 mm high")
{
    on_all_sheets([](const BuildCase&, const BuildPlan& plan, const std::vector<Page>& pages) {
        if (!plan.built) return;
        for (const Length blank : blanks_of(plan.built->lengths)) {
            const Text* text = find(pages.front(), saw_figure(blank, plan.units) + " " + unit_word(plan.units));
            REQUIRE(text);
            CHECK(text->cap_height > 5);
            CHECK(text->weight == Weight::bold);
        }
    });
}

TEST_CASE("nothing of an order is dropped from its assembly work order")
{
    on_all_sheets([](const BuildCase&, const BuildPlan& plan, const std::vector<Page>& pages) {
        std::vector<std::string> sentences{plan.order, say(plan.shaft_title, wording_of(plan)), plan.owner, plan.customer, plan.machine, plan.due};
        const Wording w = wording_of(plan);
        // What stands in figures over the lists is no note beside them.
        std::vector<BuildNote> notes = plan.notes;
        if (plan.built)
            std::erase_if(notes, [](const BuildNote& note) {
                const auto* saw = std::get_if<SawAgainstClassC>(&note);
                return std::holds_alternative<UsableRange>(note) || (saw && saw->saw <= saw->class_c);
            });
        for (const auto& list : {say(plan.reasons, w), say(plan.ways_out, w), say(notes, w), say(plan.cautions, w)}) sentences.insert(sentences.end(), list.begin(), list.end());
        for (const OpenPoint& point : plan.open) sentences.push_back(say(point, w));
        for (const TextToSend& text : texts_to_send(plan, w)) sentences.push_back(text.text);
        if (plan.built) {
            for (const Operation& operation : plan.built->operations) sentences.push_back(say(operation, w));
            for (const ShaftPart& part : plan.built->parts) sentences.insert(sentences.end(), {say(part.name, w), place_of(part, w)});
        }
        for (const Check& check : plan.checks) {
            if (check.id == CheckId::condition) continue;  // no question to a new shaft
            std::string name = to_word(check.id);
            std::replace(name.begin(), name.end(), '-', ' ');
            sentences.push_back(name);
            if (check.result == CheckResult::warn) sentences.push_back(said(check, wording_of(plan)));
            if (check.result == CheckResult::not_checked) sentences.push_back(basis_said(check, wording_of(plan)));
        }
        for (const std::string& sentence : sentences) {
            INFO(sentence);
            CHECK(contains(pages, sentence));
        }
    });
}

TEST_CASE("parts are counted for all shafts of the order, those of one name together")
{
    BuildOrder order = build_order("B-101");
    order.count = 3;
    const std::vector<Page> pages = draw_assembly_sheet(planned(order), Paper::a4, font_files());
    CHECK(contains(pages, "6 × spring pin 10 x 60 — inner tube; outer tube"));
    CHECK(contains(pages, "3 × double yoke 64 — tractor end, between the crosses"));
    CHECK(contains(pages, "Fetch, for 3 shafts alike"));
}

TEST_CASE("a refused assembly work order says so and holds none of the lengths that it would have had")
{
    const BuildOrder sound = build_order("B-109");
    BuildOrder refused = sound;
    refused.shaft.ends[End::tractor].lock = Lock::exposed_push_pin;
    const BuiltLengths lengths = planned(sound).built->lengths;
    for (const Units units : {Units::mm, Units::in})
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> pages = draw_assembly_sheet(planned(refused, units), paper, font_files());
            const Text* verdict = find(pages.front(), "DO NOT BUILD");
            REQUIRE(verdict);
            CHECK(verdict->cap_height >= 10);
            std::vector<Length> figures = blanks_of(lengths);
            figures.insert(figures.end(), {lengths.closed, lengths.half[Tube::inner], lengths.half[Tube::outer]});
            for (const Length length : figures) CHECK_FALSE(contains(pages, figure_with_unit(length, Units::mm)));
            for (const char* words : {"saw to", "BUILD 1", "This shaft allows", "Closed, ", "Fetch"}) CHECK_FALSE(contains({pages.front()}, words));
        }
}

TEST_CASE("the drawing names both ends and both crosses of a wide-angle joint")
{
    const BuildPlan plan = planned(build_order("B-101"));
    const Page page = draw_assembly_sheet(plan, Paper::a4, font_files()).front();
    for (const char* words : {"TRACTOR END", "IMPLEMENT END", "wide-angle joint, outer tube", "standard joint, inner tube"}) CHECK(find(page, words));
    CHECK(find(page, "CLOSED " + figure_with_unit(plan.built->closed_at[Reference::outer_cross], Units::mm) + " from the OUTER cross"));
    CHECK(find(page, "closed " + figure_with_unit(plan.built->closed_at[Reference::inner_cross], Units::mm) + " from the INNER cross"));
}
