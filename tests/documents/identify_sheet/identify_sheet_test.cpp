// The sheet of a shaft whose series is asked for: one page on every paper, in every unit, whatever was measured; no figure of chance beyond whole per cents.
#include <filesystem>
#include <regex>

#include "documents/page/page_checks.hpp"
#include "identify_sheet/identify_sheet.hpp"
#include "files/load.hpp"
#include "measures_reader.hpp"
#include "catalogue_reader.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "support/lengthened.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const std::string source_folder = SHAFTCUT_SOURCE_DIR;

Catalogue catalogue() { return *read_catalogue(std::get<Source>(load(source_folder + "/config/series.xml"))).value; }

IdentifiedShaft shaft_of(const std::string& bytes, Units units, const Catalogue& from = catalogue()) { return identified(*read_measures({"f", bytes}).value, from, "Hillside Workshop (invented)", units); }

struct Case {
    std::string name, bytes;
};

// Each sample; a shaft with every figure that can be read; one with none.
std::vector<Case> cases()
{
    std::vector<Case> all{{"nothing", "<measures shaft=\"x\" units=\"mm\"/>"},
                          {"everything", "<measures shaft=\"" + std::string(40, 'W') + "\" date=\"2026-11-24\" units=\"mm\">"}};
    std::string cross = "<cap diameter=\"22.05\" measured-in=\"bore\"/><span length=\"53.95\"/><cap pair=\"second\" diameter=\"22.15\"/><span pair=\"second\" length=\"53.85\"/></cross>";
    for (const char* side : {"tractor", "implement"})
        all[1].bytes += std::string("<end side=\"") + side + "\" joint=\"wide-angle\"><cross at=\"inner\" circlip=\"inside\" nipple=\"cap\">" + cross + "<cross at=\"outer\">" + cross + "<spacing length=\"123.45\"/></end>";
    all[1].bytes += "<tubes shape=\"triangular\"><tube tube=\"inner\"><width length=\"45.15\"/><wall length=\"3.95\"/></tube><tube tube=\"outer\"><width length=\"54.05\"/><wall length=\"4.05\"/></tube></tubes>"
                    "<guard writing=\"Larch 6\"/><closed length=\"1234.5\"/></measures>";
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples/identify")) all.push_back({entry.path().filename().string(), std::get<Source>(load(entry.path().string())).bytes});
    return all;
}

std::string text_of(const Page& page)
{
    std::string text;
    for (const Text& one : texts_of(page)) text += one.text + "\n";
    return text;
}

Page page_of(const IdentifiedShaft& shaft, Paper paper, const Wording& w)
{
    const std::vector<Page> pages = draw_identify_sheet(shaft, paper, font_files(), w);
    REQUIRE(pages.size() == 1);
    return pages.front();
}

std::string sample(const char* name) { return std::get<Source>(load(source_folder + "/samples/identify/" + name + ".xml")).bytes; }

}  // namespace

TEST_CASE("identify sheet: every text can be read, and nothing leaves the page, on every paper, in either unit and in a longer language")
{
    for (const Case& one : cases())
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const Units units : {Units::mm, Units::in})
                for (const bool longer : {false, true}) {
                    INFO(one.name << (paper == Paper::a4 ? ", A4, " : ", Letter, ") << unit_word(units) << (longer ? ", lengthened" : ""));
                    const Page page = page_of(shaft_of(one.bytes, units), paper, longer ? lengthened_wording(units) : Wording(units));
                    check_texts(page);
                    check_lines(page, 9.4);
                }
}

TEST_CASE("identify sheet: no chance finer than a whole per cent, no spread and no bits stand on it")
{
    for (const Case& one : cases()) {
        INFO(one.name);
        const std::string text = text_of(page_of(shaft_of(one.bytes, Units::mm), Paper::a4, Wording(Units::mm)));
        CHECK_FALSE(std::regex_search(text, std::regex(R"(\d\.\d+ ?%|[^> ] ?9[5-9] %|100 %|\bbits?\b|σ|sigma)")));
    }
}

TEST_CASE("identify sheet: each figure stands beside its series' with what it is off, the odd part's beside the others' series")
{
    const auto texts = [](const Page& page) { return text_of(page); };
    const std::string of_one = texts(page_of(shaft_of(sample("one-series"), Units::mm), Paper::a4, Wording(Units::mm)));
    for (const char* part : {"MEASURES LIKE Alder 2", "Measured against Alder 2", "69.8\n", "−0.2\n", "64.6\n", "+0.6\n", "like Alder 2 (> 95 %)"}) {
        INFO(part);
        CHECK(of_one.find(part) != std::string::npos);
    }
    const std::string of_mixed = texts(page_of(shaft_of(sample("mixed"), Units::mm), Paper::a4, Wording(Units::mm)));
    for (const char* part : {"MIXED: OF MORE THAN ONE MAKE", "Measured against Larch 6", "21.93\n27\n−5.07\n"}) {
        INFO(part);
        CHECK(of_mixed.find(part) != std::string::npos);
    }
}

TEST_CASE("identify sheet: of a mixed shaft every part's figures are the named series', not those of the likeliest whole one")
{
    IdentifiedShaft shaft = shaft_of(sample("mixed"), Units::mm);
    REQUIRE(shaft.found.mixed);
    REQUIRE(shaft.found.mixed->others_series == "Larch 6");
    shaft.found.fits.series = "Alder 2";
    for (ComparedFigure& figure : shaft.found.fits.figures) figure.series = Length::from_mm(99.99);
    const std::string text = text_of(page_of(shaft, Paper::a4, Wording(Units::mm)));
    CHECK(text.find("Measured against Larch 6") != std::string::npos);
    CHECK(text.find("99.99") == std::string::npos);
    // Both ends' caps, and the inner tube's width, against those of Larch 6.
    for (const char* row : {"26.95\n27\n", "21.93\n27\n", "53.8\n54\n"}) {
        INFO(row);
        CHECK(text.find(row) != std::string::npos);
    }
}

TEST_CASE("identify sheet: what to measure next has a box for its reading and the tool drawn; before an order or a cut it says what it does not know")
{
    const Page page = page_of(shaft_of(sample("undecided"), Units::mm), Paper::a4, Wording(Units::mm));
    const std::string text = text_of(page);
    CHECK(text.find("Measure next\n") != std::string::npos);
    CHECK(text.find("reading\n") != std::string::npos);
    CHECK(text.find("measure both stops before a cut") != std::string::npos);
}

TEST_CASE("identify sheet: in inches the figures are thousandths")
{
    const std::string text = text_of(page_of(shaft_of(sample("one-series"), Units::in), Paper::a4, Wording(Units::in)));
    CHECK(text.find("all figures in inches") != std::string::npos);
    CHECK(text.find("2.748\n2.756\n−0.008\n") != std::string::npos);  // 69.8 mm against 70 mm
}
