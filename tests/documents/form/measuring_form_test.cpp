#include <fstream>
#include <map>
#include <pugixml.hpp>
#include <set>
#include <utility>

#include "catalogue_reader.hpp"
#include "data/machine_words.hpp"
#include "documents/page/page_checks.hpp"
#include "files/load.hpp"
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

// With every figure that is expected beside a box, as long as they come.
Series long_list()
{
    Series series = hard_series();
    series.wide_angle_reference = Reference::outer_cross;
    for (const Tube tube : both_tubes) {
        SeriesHalf& half = series.halves[tube];
        half.shoulder = Length::micrometres(12'345'600);
        half.width = half.wall = Length::micrometres(123'400);
    }
    for (int i = 0; i < 12; ++i) series.closed_lengths.push_back(Length::millimetres(1010 + 100 * i));
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
        all.back().plus_minus = Length::millimetres(99999);
        all.push_back(form_of(long_list(), units));
        for (const OnMachine machine : {OnMachine::trailed, OnMachine::mounted}) {
            all.push_back(form_of(hard_series(), units));
            all.back().machine = machine;
        }
    }
    return all;
}

template <class Look>
void on_every_sheet(const Look& look)
{
    for (const MeasuringForm& form : forms())
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::vector<Page> pages = measuring_form_of(form, paper);
            REQUIRE(pages.size() == 2);
            for (std::size_t i = 0; i < pages.size(); ++i) {
                INFO((form.series ? form.series->name : "no series") << ", " << unit_word(form.units) << (paper == Paper::a4 ? ", A4" : ", Letter") << (i == 0 ? ", front" : ", back"));
                look(pages[i]);
            }
        }
}

// Of the back of every kind, and the front.
std::vector<Page> all_pages(Paper paper, Units units = Units::mm)
{
    std::vector<Page> pages;
    for (const OnMachine machine : {OnMachine::lengths, OnMachine::trailed, OnMachine::mounted}) {
        MeasuringForm form = form_of(std::nullopt, units);
        form.machine = machine;
        for (const Page& page : measuring_form_of(form, paper)) pages.push_back(page);
    }
    return pages;
}

// The nodes of a schema that hold something a form asks for: every element's name, attribute's name and word to choose.
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

// What the form says for a word of a job file; "" for an element that only groups what is on the form.
const std::map<std::string, std::string>& words_of_form()
{
    static const std::map<std::string, std::string> words{
        {"job", ""}, {"for", ""}, {"limits", ""}, {"end", ""}, {"half", ""}, {"fit", ""}, {"side", ""}, {"tube", ""}, {"measured-by", "measured by"},
        {"order", "order"}, {"date", "date"}, {"units", "all lengths in millimetres"}, {"customer", "customer"}, {"phone", "telephone"}, {"machine", "machine"},
        {"machine-here", "Does the machine stand where the shaft is cut?"}, {"tractor", "tractor"}, {"hitch", "hole and hitch"}, {"power", "power at the PTO"},
        {"other-tractor", "other tractor, not measured"}, {"other-tractors", "Other tractors that drive this machine"}, {"none", "none"}, {"name", "other tractor, not measured"},
        {"with", "with (tape, rod, angle gauge)"}, {"why", "why"}, {"by", "by whom"}, {"yes", "yes"}, {"no", "no"}, {"shaft", "Shaft"}, {"closed", "Closed length"},
        {"condition", "As it came in"}, {"number", "number on the shaft"}, {"series", "series (not known: leave empty)"}, {"shape", "Section of the tubes"},
        {"spacing", "spacing of a wide-angle joint"}, {"role", "from tractor to machine"}, {"primary", "from tractor to machine"}, {"secondary", "elsewhere on the machine"},
        {"speed", "PTO speed"}, {"inner-tube", "Inner tube at the end of"}, {"built", "year built"}, {"length", "length"}, {"reference", "from the outer cross"}, {"plus-minus", "±"},
        {"joint", "joint"}, {"connection", "T: bore of the yoke"}, {"onto", "T: onto this stub"}, {"lock", "Lock: what holds the yoke on its stub."}, {"device", "device"},
        {"cross-to-groove", "outer cross to groove"}, {"guard", "guard, to its end"}, {"damaged", "damaged, not used again"}, {"shoulder", "to the stop"}, {"stop-depth", "stop depth"},
        {"lubrication-hole", "lubrication hole"}, {"features", "coated tube"}, {"coated", "coated tube"}, {"end-stop", "stop at the free end"}, {"one-chain-guard", "guard on one chain"},
        {"trailed", "On the machine: trailed"}, {"mounted", "On the machine: mounted"}, {"shortest", "shortest"}, {"longest", "longest turning"}, {"angle", "Joint angles"},
        {"between", "Measured between"}, {"crosses", "outer crosses"}, {"grooves", "the stubs' grooves"}, {"at", "found at"}, {"when", "longest standing"}, {"working", "longest working"},
        {"turning", "longest turning"}, {"standing", "longest standing"}, {"side-view", "tractor, from the side"}, {"plan", "tractor, from above"},
        {"chains", "chains"}, {"tubes", "tubes"}, {"locks", "locks"}, {"weld", "repairs"}, {"phase", "tube yokes' forks"}, {"slides", "slides, once cleaned"},
        {"complete", "complete"}, {"missing", "missing"}, {"good", "free, no play"}, {"worn", "worn"}, {"straight", "straight"}, {"bent", "bent"}, {"dented", "dented"}, {"twisted", "twisted"},
        {"stiff", "stiff"}, {"welded", "welded"}, {"cracked", "cracked"}, {"free", "free"}, {"stuck", "stuck"}, {"in-plane", "in one plane"}, {"turned", "turned"},
        {"tractor-end", "tractor"}, {"implement", "machine"}, {"inner", "Half with the inner tube"}, {"outer", "Half with the outer tube"},
        {"standard", "standard, one cross"}, {"wide-angle", "wide-angle, two crosses"}, {"outer-cross", "from the outer cross"}, {"inner-cross", "from the inner cross"},
        {"lemon", "lemon"}, {"star", "star"}, {"triangular", "triangle"}, {"square", "square"}, {"splined", "splined"}, {"other", "other"},
        {"exposed-collar", "collar to pull, bare"}, {"covered-collar", "collar to pull, covered"}, {"exposed-push-pin", "pin to press, stands out"}, {"shrouded-push-pin", "pin to press, sunk in"},
        {"clamp-bolt", "bolt across the groove"}, {"tapered-clamp", "cone bolt, drawn tight"}, {"flange", "bolted face to face"}, {"unknown", "cannot be told"},
        {"slip-clutch", "slip clutch"}, {"overrunning-clutch", "overrunning clutch"}, {"shear-bolt", "shear bolt"}};
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
            if (box.width < 15 || box.height < 8 || box.height > 11) continue;  // not to write in
            const Rect core{box.x + 0.3, box.y + 0.3, box.width - 0.6, box.height - 0.6};
            for (const Mark& mark : page.marks)
                if (const auto* path = std::get_if<Path>(&mark.what); path && !is_tick(*path))
                    for (std::size_t i = 0; i + 1 < path->points.size(); ++i) CHECK_FALSE(crosses(path->points[i], path->points[i + 1], core));
        }
    });
}

TEST_CASE("measuring form: what a job file holds is on it in words")
{
    std::set<std::string> attributes = words_of_schema("job.xsd", {"job", "shaft", "closed", "end", "job-end", "half", "condition", "completeness"});
    attributes.erase("cut-to");    // by an earlier sheet: nobody measures it
    attributes.erase("measures");  // on a form of its own (identify_form_test)
    attributes.merge(words_of_schema("fit.xsd", {"for", "fit", "yes-no", "measured-by", "job-limits"}));
    CHECK(attributes.size() > 90);
    const auto shared = words_of_schema("common.xsd", {"side", "tube", "joint", "reference", "shape", "lock", "device"});
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const std::vector<Page> pages = all_pages(paper);
        for (const std::set<std::string>* words : {&std::as_const(attributes), &shared})
            for (const std::string& word : *words) {
                INFO(word);
                REQUIRE(words_of_form().count(word) == 1);
                CHECK(contains(pages, words_of_form().at(word)));
            }
    }
}

TEST_CASE("measuring form: no attribute's name stands on it")
{
    for (const Page& page : all_pages(Paper::a4))
        for (const Text& text : texts_of(page))
            for (const char* name : {"plus-minus", "inner-tube", "machine-here", "stop-depth", "lubrication-hole", "cross-to-groove", "other-tractor", "outer-cross", "pto-height", "side-view"}) {
                INFO(text.text);
                CHECK(text.text.find(name) == std::string::npos);
            }
}

TEST_CASE("measuring form: a machine's back has a letter drawn and a box for each of the job format's dimensions")
{
    const auto check = [](OnMachine machine, std::size_t dimensions, const std::set<std::string>& not_drawn) {
        MeasuringForm form = form_of(std::nullopt, Units::mm);
        form.machine = machine;
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const Page back = measuring_form_of(form, paper)[1];
            std::map<char, int> boxes, letters;
            for (const Text& text : texts_of(back)) {
                if (text.text.size() > 2 && text.text[1] == ' ' && std::isupper(static_cast<unsigned char>(text.text[0]))) ++boxes[text.text[0]];
                if (text.text.size() == 1) ++letters[text.text[0]];
                if (text.text == "L … M") ++letters['L'], ++letters['M'];
            }
            CHECK(boxes.size() == dimensions);
            for (const auto& [letter, times] : boxes) {
                INFO(letter);
                CHECK(letters[letter] == (not_drawn.count(std::string(1, letter)) ? 0 : 1));
            }
        }
    };
    check(OnMachine::trailed, words_of_schema("fit.xsd", {"trailed"}).size() - 4 + Words<TrailedMovement>::all.size(), {"J"});
    check(OnMachine::mounted, words_of_schema("fit.xsd", {"mounted"}).size() - 4 + Words<MountedMovement>::all.size(), {});
}

TEST_CASE("measuring form: the words of a machine are the job format's attributes")
{
    const auto words = [](const auto& all) { return std::set<std::string>(all.begin(), all.end()); };
    const auto without = [](std::set<std::string> from) {
        for (const char* other : {"plus-minus", "working", "turning", "standing"}) from.erase(other);
        return from;
    };
    CHECK(words(Words<TrailedDimension>::all) == without(words_of_schema("fit.xsd", {"trailed"})));
    CHECK(words(Words<MountedDimension>::all) == without(words_of_schema("fit.xsd", {"mounted"})));
    CHECK(words(Words<TrailedMovement>::all) == without(words_of_schema("fit.xsd", {"trailed-range"})));
    CHECK(words(Words<MountedMovement>::all) == without(words_of_schema("fit.xsd", {"mounted-range"})));
}

TEST_CASE("measuring form: a series states what needs no measuring and what its boxes should come to, and leaves the cross to whoever measures")
{
    for (const Series& series : demo_catalogue().series) {
        INFO(series.name);
        const std::vector<Page> pages = measuring_form_of(form_of(series, Units::in), Paper::a4);
        CHECK(contains(pages, series.name));
        for (const char* cross : {"from the outer cross", "from the inner cross"}) CHECK((find(pages[0], cross) != nullptr) == series.wide_angle.has_value());
        for (const char* crosses : {"outer crosses", "inner crosses"}) CHECK((find(pages[1], crosses) != nullptr) == series.wide_angle.has_value());
        if (series.wide_angle) CHECK(contains(pages, figure_with_millimetres(series.wide_angle->spacing, Units::in)));
        else CHECK(find(pages[0], "from the cross"));
        for (const Tube tube : both_tubes)
            if (const auto& shoulder = series.halves[tube].shoulder) CHECK(contains({pages[1]}, "as made " + figure_with_unit(*shoulder, Units::in)));
        for (const Length length : series.closed_lengths) CHECK(contains({pages[0]}, figure_with_unit(length, Units::in)));
    }
}

TEST_CASE("measuring form: units are those asked for")
{
    for (const Units units : {Units::mm, Units::in}) {
        const std::vector<Page> pages = measuring_form_of(form_of(std::nullopt, units), Paper::a4);
        CHECK(contains({pages[0]}, units == Units::mm ? "all lengths in millimetres" : "all lengths in inches"));
        // Each half's seven boxes and the four lengths on the machine with their ±.
        CHECK(count_of({pages[1]}, unit_word(units)) == 2 * 8 + 8);
        for (const Page& page : pages) CHECK(count_of({page}, unit_word(units == Units::mm ? Units::in : Units::mm)) == 0);
    }
}

TEST_CASE("measuring form: its file is named by the series, and the same form has the same bytes")
{
    MeasuringForm form = form_of(std::nullopt, Units::mm);
    CHECK(measuring_form_name(form) == "measuring-form");
    form.series = Series{};
    form.series->name = "Alder 2";
    CHECK(measuring_form_name(form) == "measuring-form-Alder-2");
    form.machine = OnMachine::trailed;
    CHECK(measuring_form_name(form) == "measuring-form-Alder-2-trailed");
    form.machine = OnMachine::lengths;
    form.series->name = "../Ольха\\*";
    CHECK(measuring_form_name(form) == "measuring-form-..-Ольха--");
    CHECK(measuring_form_pdf(form, Paper::a4, font_files(), Wording(form.units)) == measuring_form_pdf(form, Paper::a4, font_files(), Wording(form.units)));
}
