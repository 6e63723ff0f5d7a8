// The page that asks for what tells a shaft's series: it holds what a file of measures may hold, in words, with each tool drawn.
#include <map>
#include <pugixml.hpp>
#include <set>

#include "documents/page/page_checks.hpp"
#include "support/catch.hpp"
#include "support/lengthened.hpp"
#include "support/papers.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

MeasuringForm form_of(Units units)
{
    MeasuringForm form;
    form.units = units;
    form.to_identify = true;
    return form;
}

Page page_of(Units units, Paper paper)
{
    const std::vector<Page> pages = measuring_form_of(form_of(units), paper);
    REQUIRE(pages.size() == 1);
    return pages.front();
}

template <class Look>
void on_every_page(const Look& look)
{
    for (const Units units : {Units::mm, Units::in})
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            INFO(unit_word(units) << (paper == Paper::a4 ? ", A4" : ", Letter"));
            look(page_of(units, paper), units);
        }
}

// What may be stated of each element, and every word to choose; of elements that only group others nothing.
std::set<std::string> words_of_schema()
{
    pugi::xml_document schema;
    REQUIRE(schema.load_file(SHAFTCUT_SOURCE_DIR "/config/identify.xsd"));
    std::set<std::string> words;
    for (const auto& named : schema.select_nodes("//xs:attribute[@name]")) words.insert(named.node().attribute("name").value());
    for (const auto& named : schema.select_nodes("//xs:element[@name]")) words.insert(named.node().attribute("name").value());
    for (const auto& word : schema.select_nodes("//xs:enumeration")) words.insert(word.node().attribute("value").value());
    return words;
}

const std::map<std::string, std::string> words_of_form{
    {"end", "Tractor end"}, {"side", "Machine end"}, {"joint", "wide-angle, two crosses"}, {"cross", "only or inner cross"}, {"at", "outer cross"}, {"inner", "only or inner cross"}, {"outer", "outer cross"},
    {"cap", "on the cap"}, {"diameter", "cap or bore ⌀"}, {"measured-in", "in the bore"}, {"bore", "in the bore"}, {"pair", "other pair ⌀"}, {"first", "cap or bore ⌀"}, {"second", "other pair, span"},
    {"span", "span, as read"}, {"spacers", "spacer pieces, both"}, {"spacing", "spacing"}, {"length", "closed length"}, {"plus-minus", "±"}, {"circlip", "circlips"}, {"nipple", "nipple"}, {"tubes", "Tubes"},
    {"shape", "triangle"}, {"tube", "it is the"}, {"width", "width"}, {"wall", "wall"}, {"guard", "what stands on the guard, as written"}, {"writing", "what stands on the guard, as written"},
    {"closed", "closed length"}, {"reference", "from the outer cross"}, {"date", "date"}};

std::size_t count(const Page& page, const std::string& words)
{
    std::size_t found = 0;
    for (const Text& text : texts_of(page)) found += text.text == words ? 1 : 0;
    return found;
}

}  // namespace

TEST_CASE("identify form: every text can be read, nothing leaves the page, and no line runs through a box to write in")
{
    on_every_page([](const Page& page, Units) {
        check_texts(page);
        check_lines(page, 9.4);
        for (const Rect& box : boxes_of(page)) {
            if (box.width < 15 || box.height < 8 || box.height > 9.5) continue;
            INFO(box.x << ", " << box.y << ": " << box.width << " x " << box.height);
            const Rect core{box.x + 0.3, box.y + 0.3, box.width - 0.6, box.height - 0.6};
            for (const Mark& mark : page.marks)
                if (const auto* path = std::get_if<Path>(&mark.what))
                    for (std::size_t i = 0; i + 1 < path->points.size(); ++i) CHECK_FALSE(crosses(path->points[i], path->points[i + 1], core));
        }
    });
}

TEST_CASE("identify form: what a file of measures may hold is on it in words")
{
    const std::set<std::string> words = words_of_schema();
    CHECK(words.size() >= 30);
    on_every_page([&](const Page& page, Units) {
        for (const std::string& word : words) {
            INFO(word);
            REQUIRE(words_of_form.count(word) == 1);
            CHECK(contains({page}, words_of_form.at(word)));
        }
    });
}

TEST_CASE("identify form: both ends have two crosses, each with its boxes and looks, and each of two tubes its own")
{
    on_every_page([](const Page& page, Units units) {
        for (const char* of_cross : {"cap or bore ⌀", "other pair ⌀", "span, as read", "other pair, span", "in the bore", "on the cap", "in bores", "in caps", "in body", "in cap"}) {
            INFO(of_cross);
            CHECK(count(page, of_cross) == 4);
        }
        for (const char* of_two : {"spacing", "width", "wall", "not known", "standard, one cross", "wide-angle, two crosses"}) CHECK(count(page, of_two) == 2);
        // Of a cross seven boxes, of a spacing three, of a tube six; the spacers, the closed length and its ±.
        CHECK(count(page, unit_word(units)) == 4 * 7 + 2 * 3 + 2 * 6 + 1 + 2);
        CHECK(count(page, unit_word(units == Units::mm ? Units::in : Units::mm)) == 0);
    });
}

// Of each shape its width is taken as the catalogue's is.
TEST_CASE("identify form: each shape has its square and says where its width is taken")
{
    on_every_page([](const Page& page, Units) {
        for (const char* words : {"lemon", "star", "triangle", "square", "splined", "across the width", "between opposite points", "across the flats", "over the outside"}) {
            INFO(words);
            CHECK(count(page, words) == 1);
        }
    });
}

TEST_CASE("identify form: its file has its own name, and the same form has the same bytes")
{
    CHECK(measuring_form_name(form_of(Units::mm)) == "identify-form");
    CHECK(measuring_form_pdf(form_of(Units::in), Paper::letter, font_files(), Wording(Units::in)) == measuring_form_pdf(form_of(Units::in), Paper::letter, font_files(), Wording(Units::in)));
}
