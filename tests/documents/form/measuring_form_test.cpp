#include <fstream>
#include <map>
#include <pugixml.hpp>
#include <set>

#include "catalogue_reader.hpp"
#include "data/machine_words.hpp"
#include "documents/page/page_checks.hpp"
#include "load.hpp"
#include "page/font.hpp"
#include "shaftcut/reading/source/source.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "support/papers.hpp"
#include "text.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const std::string config = std::string(SHAFTCUT_SOURCE_DIR) + "/config/";

Catalogue demo_catalogue()
{
    auto loaded = load(config + "series.xml");
    return *read_catalogue(std::get<Source>(loaded)).value;
}

MeasuringForm form_of(std::optional<Series> series, Units units)
{
    MeasuringForm form;
    form.series = std::move(series);
    for (const Connection& connection : demo_catalogue().connections) form.connections.push_back(connection.name);
    form.units = units;
    form.plus_minus = Length::millimetres(2);
    return form;
}

// As long as the catalogue's rules allow, and with everything that may be left out left out.
Series hard_series()
{
    Series series;
    series.name = std::string(60, 'W');
    series.shape = Shape::triangular;
    series.wide_angle = WideAngleJoint{Length::millimetres(12345), {}};
    return series;
}

std::vector<MeasuringForm> forms()
{
    std::vector<MeasuringForm> all;
    for (const Units units : {Units::mm, Units::in}) {
        all.push_back(form_of(std::nullopt, units));
        for (const Series& series : demo_catalogue().series) all.push_back(form_of(series, units));
        all.push_back(form_of(hard_series(), units));
        Series standard_only = hard_series();
        standard_only.wide_angle.reset();
        standard_only.name = "⌀ Ольха 7";
        all.push_back(form_of(standard_only, units));
        Series both_references = hard_series();
        both_references.shape = Shape::square;
        both_references.name = "Square 1";
        all.push_back(form_of(both_references, units));
        all.push_back(form_of(std::nullopt, units));
        all.back().connections.assign(40, std::string(60, 'M'));
        all.back().plus_minus = Length::millimetres(99999);
    }
    return all;
}

template <class Look>
void on_every_sheet(const Look& look)
{
    for (const MeasuringForm& form : forms())
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> pages = measuring_form_of(form, paper);
            REQUIRE(pages.size() == 5);
            for (std::size_t i = 0; i < pages.size(); ++i) {
                INFO((form.series ? form.series->name : "no series") << ", " << unit_word(form.units) << (paper == Paper::a4 ? ", A4" : ", Letter") << ", sheet " << i + 1);
                look(pages[i]);
            }
        }
}

bool has_word(const std::vector<Page>& pages, const std::string& word)
{
    const auto is_of_a_word = [](char byte) { return std::isalnum(static_cast<unsigned char>(byte)) || byte == '-'; };
    for (const Page& page : pages)
        for (const Text& text : texts_of(page))
            for (std::size_t at = text.text.find(word); at != std::string::npos; at = text.text.find(word, at + 1)) {
                const bool starts = at == 0 || !is_of_a_word(text.text[at - 1]), end = at + word.size() == text.text.size() || !is_of_a_word(text.text[at + word.size()]);
                if (starts && end) return true;
            }
    return false;
}

// The nodes of job.xsd that hold something a form asks for: every element's name, attribute's name and word to choose.
std::set<std::string> words_of_schema(const std::string& file, const std::set<std::string>& types)
{
    pugi::xml_document schema;
    REQUIRE(schema.load_file((config + file).c_str()));
    std::set<std::string> words;
    for (const auto& type : schema.select_nodes("/xs:schema/*[@name]")) {
        if (!types.count(type.node().attribute("name").value())) continue;
        for (const auto& named : type.node().select_nodes(".//xs:element[@name] | .//xs:attribute[@name]")) words.insert(named.node().attribute("name").value());
        for (const auto& word : type.node().select_nodes(".//xs:enumeration")) words.insert(word.node().attribute("value").value());
    }
    return words;
}

}  // namespace

TEST_CASE("measuring form: every text can be read, and nothing drawn leaves the margins")
{
    on_every_sheet([](const Page& page) {
        check_texts(page);
        check_lines(page, 9.4);
    });
}

TEST_CASE("measuring form: no line and no other box runs through a box to write in")
{
    on_every_sheet([](const Page& page) {
        for (const Rect& box : boxes_of(page)) {
            INFO(box.x << ", " << box.y << ": " << box.width << " x " << box.height);
            if (box.width < 20 || box.height < 8 || box.height > 11) continue;  // not to write in
            const Rect core{box.x + 0.3, box.y + 0.3, box.width - 0.6, box.height - 0.6};
            for (const Mark& mark : page.marks)
                if (const auto* path = std::get_if<Path>(&mark.what); path && !is_tick(*path))
                    for (std::size_t i = 0; i + 1 < path->points.size(); ++i) CHECK_FALSE(crosses(path->points[i], path->points[i + 1], core));
        }
    });
}

TEST_CASE("measuring form: what a job file holds is on it by its own name")
{
    const auto attributes = words_of_schema("job.xsd", {"job", "for", "shaft", "closed", "end", "job-end", "half", "fit", "condition", "completeness", "yes-no", "measured-by", "job-limits"});
    CHECK(attributes.size() > 90);
    CHECK(attributes.count("lubrication-hole") == 1);
    const auto shared = words_of_schema("common.xsd", {"side", "tube", "joint", "reference", "shape"});
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const std::vector<Page> pages = measuring_form_of(form_of(std::nullopt, Units::mm), paper);
        for (const auto* words : {&attributes, &shared})
            for (const std::string& word : *words) {
                // Elements that only group what is on the form.
                if (word == "job" || word == "limits" || word == "for") continue;
                INFO(word);
                CHECK(has_word(pages, word));
            }
    }
}

TEST_CASE("measuring form: the machine's sheets have a drawn dimension and a box for each of the job format's own words, and nothing else")
{
    for (const auto& [sheet, elements] : {std::pair(3U, std::set<std::string>{"trailed", "trailed-range"}), {4U, {"mounted", "mounted-range"}}}) {
        std::set<std::string> attributes = words_of_schema("job.xsd", elements);
        CHECK(attributes.size() >= 14);
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const Page page = measuring_form_of(form_of(std::nullopt, Units::mm), paper)[sheet];
            std::map<std::string, int> times;
            for (const Text& text : texts_of(page)) ++times[text.text];
            for (const std::string& word : attributes) {
                INFO(word);
                CHECK(has_word({page}, word));
                const bool movement = word == "turn" || word == "pitch" || word == "roll" || word == "lowest" || word == "highest";
                const bool drawn_too = !movement && word != "plus-minus" && !from_word<Range>(word);
                if (drawn_too) CHECK(times[word] == 2);
                if (movement) CHECK(times[word] >= 3);
            }
        }
    }
}

TEST_CASE("measuring form: the words of a machine are the job format's attributes")
{
    const auto words = [](const auto& all) { return std::set<std::string>(all.begin(), all.end()); };
    const auto without = [](std::set<std::string> from) {
        for (const char* other : {"plus-minus", "working", "turning", "standing"}) from.erase(other);
        return from;
    };
    CHECK(words(Words<TrailedDimension>::all) == without(words_of_schema("job.xsd", {"trailed"})));
    CHECK(words(Words<MountedDimension>::all) == without(words_of_schema("job.xsd", {"mounted"})));
    CHECK(words(Words<TrailedMovement>::all) == without(words_of_schema("job.xsd", {"trailed-range"})));
    CHECK(words(Words<MountedMovement>::all) == without(words_of_schema("job.xsd", {"mounted-range"})));
}

TEST_CASE("measuring form: a series states what needs no measuring, and leaves the reference to whoever measures")
{
    for (const Series& series : demo_catalogue().series) {
        INFO(series.name);
        const std::vector<Page> pages = measuring_form_of(form_of(series, Units::in), Paper::a4);
        CHECK(contains(pages, series.name));
        // The closed length's on sheet 1 and the fit's on sheet 2, as a job file takes both.
        for (const Reference reference : {Reference::outer_cross, Reference::inner_cross})
            for (const std::size_t sheet : {0U, 1U}) CHECK(has_word({pages[sheet]}, to_word(reference)) == series.wide_angle.has_value());
        if (series.wide_angle) CHECK(contains(pages, figure_with_millimetres(series.wide_angle->spacing, Units::in)));
        else CHECK(has_word(pages, "its one cross"));
    }
}

TEST_CASE("measuring form: units are those asked for")
{
    for (const Units units : {Units::mm, Units::in}) {
        const std::vector<Page> pages = measuring_form_of(form_of(std::nullopt, units), Paper::a4);
        CHECK(has_word(pages, std::string("units ") + unit_word(units)));
        // The halves' lengths, and those at the machine.
        for (const auto& [sheet, lengths] : {std::pair(1U, 16), {2U, 8}}) {
            CHECK(count_of({pages[sheet]}, unit_word(units)) == lengths);
            CHECK(count_of({pages[sheet]}, unit_word(units == Units::mm ? Units::in : Units::mm)) == 0);
        }
    }
}

TEST_CASE("measuring form: its file is named by the series, and the same form has the same bytes")
{
    MeasuringForm form = form_of(std::nullopt, Units::mm);
    CHECK(measuring_form_name(form) == "measuring-form");
    form.series = Series{};
    form.series->name = "Alder 2";
    CHECK(measuring_form_name(form) == "measuring-form-Alder-2");
    form.series->name = "../Ольха\\*";
    CHECK(measuring_form_name(form) == "measuring-form-..-Ольха--");
    CHECK(measuring_form_pdf(form, Paper::a4, font_files(), Wording(form.units)) == measuring_form_pdf(form, Paper::a4, font_files(), Wording(form.units)));
}
