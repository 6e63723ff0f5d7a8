// Where the measuring form asks for what: on the side of the step at which one can know it, with a box to write in or a square to tick.
#include <map>
#include <pugixml.hpp>

#include "documents/page/page_checks.hpp"
#include "support/catch.hpp"
#include "support/papers.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

enum Side : std::size_t { front, back };

std::vector<Page> plain_pages(Paper paper, OnMachine machine = OnMachine::lengths)
{
    MeasuringForm form;
    form.machine = machine;
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
            const bool in_corner = std::abs(text.baseline.x - box.x - 1.5) < 0.1 && std::abs(text.baseline.y - box.y - 3.7) < 0.1;
            if (named && in_corner && box.width > 15) found.push_back(box);
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
            if (std::abs(text.baseline.y - first.baseline.y) < 0.1 && text.baseline.x > first.baseline.x && text.baseline.x < first.baseline.x + 115 && has_tick(page, text))
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

// How many words the schema lets each attribute of its condition hold.
std::map<std::string, std::size_t> conditions()
{
    pugi::xml_document schema, shared;
    REQUIRE(schema.load_file(SHAFTCUT_SOURCE_DIR "/config/job.xsd"));
    REQUIRE(shared.load_file(SHAFTCUT_SOURCE_DIR "/config/fit.xsd"));
    std::map<std::string, std::size_t> all;
    for (const auto& found : schema.select_nodes("/xs:schema/xs:complexType[@name='condition']/xs:attribute")) {
        const pugi::xml_node attribute = found.node();
        const std::string type = attribute.attribute("type").value();
        const std::string of_type = "/xs:schema/xs:simpleType[@name='" + type + "']//xs:enumeration";
        all[attribute.attribute("name").value()] =
            type.empty() ? attribute.select_nodes(".//xs:enumeration").size() : schema.select_nodes(of_type.c_str()).size() + shared.select_nodes(of_type.c_str()).size();
    }
    return all;
}

}  // namespace

TEST_CASE("measuring form: the front has a square for each word of the shaft's condition, on the line of what it is said of")
{
    const std::map<std::string, std::pair<std::string, std::vector<std::string>>> looks{
        {"guard", {"guard", {"complete", "missing", "broken"}}}, {"chains", {"chains", {"complete", "missing", "broken"}}}, {"locks", {"locks", {"spring back", "stiff", "broken"}}},
        {"crosses", {"crosses", {"free, no play", "worn"}}}, {"weld", {"repairs", {"none", "welded", "cracked"}}}, {"tubes", {"tubes", {"straight", "bent", "dented", "twisted"}}},
        {"phase", {"tube yokes' forks", {"in one plane", "turned"}}}, {"slides", {"slides, once cleaned", {"by hand", "does not"}}}, {"device", {"clutch", {"free", "stuck"}}}};
    const auto all = conditions();
    CHECK(all.size() == 9);
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Page page = plain_pages(paper)[front];
        for (const auto& [attribute, words] : all) {
            INFO(attribute);
            REQUIRE(looks.count(attribute) == 1);
            const auto& [name, said] = looks.at(attribute);
            CHECK(said.size() == words);
            CHECK(ticks_behind(page, name) == said);
        }
    }
}

TEST_CASE("measuring form: each half has its own boxes and squares for what is measured once it is parted")
{
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Page page = plain_pages(paper)[back];
        for (const char* name : {"guard, to its end", "lubrication hole", "to the stop", "stop depth", "tube, to its free end", "series of this half", "spacing of its crosses", "outer cross to groove"}) {
            INFO(name);
            CHECK(boxes_named(page, name).size() == 2);
        }
        for (const char* word : {"missing", "damaged, not used again", "not known", "coated tube", "stop at the free end", "guard on one chain"}) CHECK(ticks_of(page, word) == 2);
        CHECK(ticks_of(page, "none") == 1);
    }
}

// The two run from the same face: a stop depth from the free end, a shoulder from the inner cross; together they are the length.
TEST_CASE("measuring form: shoulder and stop depth stand on one line, in the place of each other")
{
    const Page page = plain_pages(Paper::a4)[back];
    const auto shoulders = boxes_named(page, "to the stop"), depths = boxes_named(page, "stop depth"), lengths = boxes_named(page, "tube, to its free end");
    REQUIRE((shoulders.size() == 2 && depths.size() == 2 && lengths.size() == 2));
    for (std::size_t i = 0; i < shoulders.size(); ++i) {
        CHECK(shoulders[i].y == Approx(depths[i].y));
        CHECK(shoulders[i].right() < depths[i].x);
        CHECK(lengths[i].y > depths[i].bottom());
    }
}

TEST_CASE("measuring form: whom and what it is for, where it was measured, by whom, and why a limit was loosened each have a box on the side of that step")
{
    const std::map<Side, std::map<std::string, std::size_t>> places{
        {front, {{"order", 1}, {"date", 1}, {"customer", 1}, {"telephone", 1}, {"number on", 1}, {"machine", 1}, {"tractor", 1}, {"hole and hitch", 1}, {"power", 1}, {"series", 1}, {"spacing", 1},
                 {"closing clearance", 1}, {"a limit loosened", 1}, {"why", 1}, {"by whom", 1}, {"T: bore", 1}, {"T: onto", 1}, {"M: bore", 1}, {"M: onto", 1}, {"from the", 2},
                 {"inner tube", 2}, {"outer tube", 2}, {"PTO speed", 1}, {"year", 1}}},
        {back, {{"tractor measured", 1}, {"hole and hitch", 1}, {"other tractor", 2}, {"found at", 4}, {"length", 4}, {"±", 6}, {"tractor, from the side", 1}, {"machine, from the side", 1},
                {"tractor, from above", 1}, {"machine, from above", 1}, {"measured by", 1}, {"on (date)", 1}, {"with", 1}}}};
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const std::vector<Page> pages = plain_pages(paper);
        for (const auto& [side, names] : places)
            for (const auto& [name, count] : names) {
                INFO((side == front ? "front, " : "back, ") << name);
                CHECK(boxes_named(pages[side], name).size() == count);
            }
        CHECK(ticks_behind(pages[front], "Does the machine stand where the shaft is cut?") == std::vector<std::string>{"yes", "no"});
        for (const char* word : {"working", "turning", "standing"}) CHECK(ticks_of(pages[back], word) == 2);
        for (const OnMachine machine : {OnMachine::trailed, OnMachine::mounted})
            for (const char* name : {"tractor measured", "hole and hitch", "measured by", "on (date)", "with"}) CHECK(boxes_named(plain_pages(paper, machine)[back], name).size() == 1);
    }
}
