// Where the measuring form asks for what: on the sheet of the step at which one can know it, with a box to write in or a square to tick.
#include <map>
#include <pugixml.hpp>

#include "documents/page/page_checks.hpp"
#include "support/catch.hpp"
#include "support/papers.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

enum Sheet : std::size_t { together, parted, at_the_machine, trailed, mounted };

std::vector<Page> plain_pages(Paper paper)
{
    MeasuringForm form;
    form.plus_minus = Length::millimetres(2);
    return measuring_form_of(form, paper);
}

// The boxes to write in whose name, in the upper corner, is this one or begins with it.
std::vector<Rect> boxes_named(const Page& page, const std::string& name)
{
    std::vector<Rect> found;
    for (const Rect& box : boxes_of(page))
        for (const Text& text : texts_of(page)) {
            const bool named = text.text == name || text.text.starts_with(name + " ") || text.text.starts_with(name + ", ");
            const bool in_corner = std::abs(text.baseline.x - box.x - 1.5) < 0.1 && std::abs(text.baseline.y - box.y - 3.9) < 0.1;
            if (named && in_corner && box.width > 20) found.push_back(box);
        }
    return found;
}

// Whether a square to tick stands right before this text.
bool has_tick(const Page& page, const Text& text)
{
    for (const Mark& mark : page.marks)
        if (const auto* path = std::get_if<Path>(&mark.what); path && is_tick(*path)) {
            const double to_text = text.baseline.x - path->points[2].x, above = text.baseline.y - path->points[0].y;
            if (to_text > 0 && to_text < 3 && above > 0 && above < 4) return true;
        }
    return false;
}

// The words with a square on the line of this name, right of it, in their order.
std::vector<std::string> ticks_behind(const Page& page, const std::string& name)
{
    std::map<double, std::string> words;
    for (const Text& first : texts_of(page)) {
        if (first.text != name || has_tick(page, first)) continue;
        for (const Text& text : texts_of(page))
            if (std::abs(text.baseline.y - first.baseline.y) < 0.1 && text.baseline.x > first.baseline.x && text.baseline.x < first.baseline.x + 95 && has_tick(page, text))
                words[text.baseline.x] = text.text;
        if (!words.empty()) break;
    }
    std::vector<std::string> in_order;
    for (const auto& [x, word] : words) in_order.push_back(word);
    return in_order;
}

std::size_t ticks_of(const Page& page, const std::string& word)
{
    std::size_t count = 0;
    for (const Text& text : texts_of(page)) count += text.text == word && has_tick(page, text) ? 1 : 0;
    return count;
}

// The attributes of the schema's condition, each with the words that it may hold.
std::map<std::string, std::vector<std::string>> conditions()
{
    pugi::xml_document schema;
    REQUIRE(schema.load_file(SHAFTCUT_SOURCE_DIR "/config/job.xsd"));
    std::map<std::string, std::vector<std::string>> all;
    for (const auto& found : schema.select_nodes("/xs:schema/xs:complexType[@name='condition']/xs:attribute")) {
        const pugi::xml_node attribute = found.node();
        const std::string type = attribute.attribute("type").value();
        const auto words = type.empty() ? attribute.select_nodes(".//xs:enumeration") : schema.select_nodes(("/xs:schema/xs:simpleType[@name='" + type + "']//xs:enumeration").c_str());
        for (const auto& word : words) all[attribute.attribute("name").value()].emplace_back(word.node().attribute("value").value());
    }
    return all;
}

}  // namespace

TEST_CASE("measuring form: sheet 1 has a square for each word of the shaft's condition, on the line of what it is said of")
{
    const auto all = conditions();
    CHECK(all.size() == 9);
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Page page = plain_pages(paper)[together];
        for (const auto& [name, words] : all) {
            INFO(name);
            CHECK(ticks_behind(page, name) == words);
        }
    }
}

TEST_CASE("measuring form: each half has its own boxes and squares for what is measured once it is parted")
{
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Page page = plain_pages(paper)[parted];
        for (const char* name : {"guard", "lubrication-hole", "shoulder", "stop-depth", "length", "plus-minus", "series", "spacing", "cross-to-groove"}) {
            INFO(name);
            CHECK(boxes_named(page, name).size() == 2);
        }
        CHECK(ticks_of(page, "damaged") == 2);
        // Each guard's and each half's series', and that of the other tractors.
        CHECK(ticks_of(page, "none") == 5);
    }
}

// The two run from the same face: a stop depth from the free end, a shoulder from the inner cross; together they are the length.
TEST_CASE("measuring form: shoulder and stop depth stand on one line, in the place of each other")
{
    const Page page = plain_pages(Paper::a4)[parted];
    const auto shoulders = boxes_named(page, "shoulder"), depths = boxes_named(page, "stop-depth"), lengths = boxes_named(page, "length");
    REQUIRE((shoulders.size() == 2 && depths.size() == 2 && lengths.size() == 2));
    for (std::size_t i = 0; i < shoulders.size(); ++i) {
        CHECK(shoulders[i].y == Approx(depths[i].y));
        CHECK(shoulders[i].right() < depths[i].x);
        CHECK(lengths[i].y > depths[i].bottom());
    }
}

TEST_CASE("measuring form: whom and what it is for, where it was measured, by whom, and why a limit was loosened each have a box on the sheet of that step")
{
    const std::map<Sheet, std::map<std::string, std::size_t>> places{
        {together, {{"order", 1}, {"date", 1}, {"customer", 1}, {"phone", 1}, {"number", 1}, {"machine", 1}, {"tractor", 1}, {"tractor:", 2}, {"hitch", 1}, {"power", 1}, {"series", 1}, {"spacing", 1},
                    {"closing-clearance", 1}, {"limit", 1}, {"why", 1}, {"by", 1}}},
        {parted, {{"other-tractor", 2}}},
        {at_the_machine, {{"tractor (for", 1}, {"at", 4}, {"length", 4}, {"plus-minus", 4}, {"tractor side-view", 1}, {"implement side-view", 1}, {"tractor plan", 1},
                          {"implement plan", 1}, {"measured-by: name", 1}, {"date", 1}, {"with", 1}}},
        {trailed, {{"tractor", 1}, {"measured-by: name", 1}, {"date", 1}, {"with", 1}}},
        {mounted, {{"tractor", 1}, {"measured-by: name", 1}, {"date", 1}, {"with", 1}}}};
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const std::vector<Page> pages = plain_pages(paper);
        for (const auto& [sheet, names] : places)
            for (const auto& [name, count] : names) {
                INFO("sheet " << sheet + 1 << ", " << name);
                CHECK(boxes_named(pages[sheet], name).size() == count);
            }
        CHECK(ticks_behind(pages[together], "machine-here") == std::vector<std::string>{"yes", "no"});
        CHECK(ticks_behind(pages[parted], "other-tractors") == std::vector<std::string>{"none"});
        for (const Range range : all_ranges) CHECK(ticks_of(pages[at_the_machine], to_word(range)) == 2);
    }
}
