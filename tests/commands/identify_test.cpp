// shaftcut identify as a program: its words, its documents, its exit status, its refusals.
#include <cmath>
#include <set>

#include "commands/identify_calls.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using namespace shaftcut::test::identifying_shafts;

namespace {

Json json_of(const std::string& measures) { return Json::parse(identify({"--formats", "json", "--output", "-", measures}).out); }

std::vector<std::string> keys_of(const Json& json)
{
    std::vector<std::string> keys;
    for (const auto& [key, value] : json.items()) keys.push_back(key);
    return keys;
}

}  // namespace

TEST_CASE("each sample to identify comes out as its first line says")
{
    std::set<std::string> verdicts;
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples/identify")) {
        INFO(entry.path().string());
        const std::string bytes = read_all(entry.path().string());
        std::smatch line;
        const std::string first = bytes.substr(0, bytes.find('\n'));
        REQUIRE(std::regex_match(first, line, std::regex("<!-- expect: (one|mixed|none|several) -->")));
        const Run ended = identify({"--formats", "json", "--output", "-", entry.path().string()});
        const Json json = Json::parse(ended.out);
        CHECK(json["verdict"] == line[1].str());
        CHECK(ended.exit == (line[1] == "several" ? 1 : 0));
        const double all = json["percent"]["one_series"].get<double>() + json["percent"]["mixed"].get<double>() + json["percent"]["none"].get<double>();
        CHECK(std::abs(all - 100) < 0.02);  // each is rounded to 0.01
        verdicts.insert(line[1]);
    }
    CHECK(verdicts.size() == 4);
}

TEST_CASE("a shaft of one series is said with what is off, what to measure to be surer, and what that does not say")
{
    const Folder folder;
    const Run ended = identify({"--output", folder.path(), "--formats", "json", one});
    CHECK(ended.exit == 0);
    CHECK(ended.err.empty());
    CHECK(ended.out.starts_with("bench-1: measures like Alder 2\n"));
    std::string text = std::regex_replace(ended.out, std::regex("\n +"), " ");
    CHECK(has(text, "Nearest other: none."));
    CHECK(has(text, "Farthest off: "));
    CHECK(has(text, "Lay old beside new before ordering parts. This does not say where its tubes stop: measure both stops before a cut."));
    CHECK(has(text, "> 95 %"));
    CHECK_FALSE(std::regex_search(text, std::regex(R"(\d\.\d+ ?%|sigma|bits|σ)")));
    for (std::size_t at = 0; at < ended.out.size(); at = ended.out.find('\n', at) + 1)
        if (const std::string line = ended.out.substr(at, ended.out.find('\n', at) - at); !has(line, "wrote")) CHECK(line.size() <= 82);
    CHECK(has(ended.out, "wrote       " + folder.file("bench-1-identify.json") + "\n"));
    // It is there already.
    CHECK(identify({"--output", folder.path(), "--formats", "json", one}).exit == 3);
    CHECK(identify({"--output", folder.path(), "--formats", "json", "--replace", one}).exit == 0);
}

TEST_CASE("a mixed shaft is said with its odd part, against what, and what that is like")
{
    const Folder folder;
    const Run ended = identify({"--output", folder.path(), "--formats", "json", mixed});
    CHECK(ended.exit == 0);
    const std::string text = std::regex_replace(ended.out, std::regex("\n +"), " ");
    CHECK(has(text, "bench-2: mixed, of more than one make"));
    CHECK(has(text, "Everything but the implement end's joint is like Larch 6: "));
    CHECK(has(text, "It is like Birch 1 or Alder 2, which share that joint within tolerance."));
    CHECK(has(text, "In a job each half states its own series."));
}

TEST_CASE("an undecided shaft is said with what to measure next, and ends the call with 1")
{
    const Folder folder;
    const Run ended = identify({"--output", folder.path(), "--formats", "json", undecided});
    CHECK(ended.exit == 1);
    CHECK(has(ended.out, "Look next at "));
    CHECK_FALSE(has(ended.out, "measures like"));
}

TEST_CASE("the figures of an identification have their names in their order")
{
    const Json json = json_of(one);
    CHECK(keys_of(json) == std::vector<std::string>{"shaft", "verdict", "percent", "series", "parts", "odd_part", "mixed", "fits", "next", "stop", "rests_on_writing", "not_told_apart", "says"});
    CHECK(keys_of(json["percent"]) == std::vector<std::string>{"one_series", "mixed", "none"});
    CHECK(keys_of(json["series"][0]) == std::vector<std::string>{"name", "percent", "percent_any_part"});
    CHECK(keys_of(json["parts"][2]) == std::vector<std::string>{"part", "none_percent", "series"});
    CHECK(keys_of(json["odd_part"]) == std::vector<std::string>{"tractor", "implement", "tubes"});
    CHECK(keys_of(json["fits"]["figures"][0]) == std::vector<std::string>{"part", "figure", "measured", "series", "off_mm", "off_sigma"});
    CHECK(keys_of(json["next"][0]) == std::vector<std::string>{"part", "measure", "bits", "expected_best_percent", "settles_percent", "takes", "minutes"});
    CHECK(keys_of(json_of(mixed)["mixed"]) == std::vector<std::string>{"odd", "others", "like", "none_percent", "figures", "others_like", "others_none_percent", "others_figures"});
    const auto& figures = json["fits"]["figures"];
    const auto span = std::find_if(figures.begin(), figures.end(), [](const Json& figure) { return figure["figure"] == "outer span"; });
    REQUIRE(span != figures.end());
    // Over two pieces of 6 mm.
    CHECK((*span)["measured"] == 69.8);
    CHECK((*span)["series"] == 70.0);
    CHECK((*span)["off_mm"] == -0.2);
}

// Every length of the file in the other unit, exactly: a tenth of a millimetre is no whole thousandth of an inch.
TEST_CASE("measured in inches the answer is the same, figure by figure")
{
    const Folder folder;
    for (const std::string& path : {one, mixed, undecided}) {
        const std::string bytes = read_all(path);
        std::string in_inches;
        const std::regex length(R"re((length|diameter|spacers|plus-minus)="([0-9.]+)")re");
        auto from = bytes.cbegin();
        for (auto at = std::sregex_iterator(bytes.begin(), bytes.end(), length); at != std::sregex_iterator(); ++at) {
            in_inches.append(from, (*at)[0].first);
            in_inches += (*at)[1].str() + "=\"" + std::to_string(std::stod((*at)[2]) / 25.4) + "\"";
            from = (*at)[0].second;
        }
        in_inches.append(from, bytes.cend());
        write_all(folder.file("in.xml"), with_replaced(in_inches, "units=\"mm\"", "units=\"in\""));
        // But for the words, which are in the file's unit.
        Json inches = json_of(folder.file("in.xml")), millimetres = json_of(path);
        CHECK(inches["says"]["verdict"] == millimetres["says"]["verdict"]);
        for (Json* one : {&inches, &millimetres}) one->erase("says");
        CHECK(inches == millimetres);
    }
}

TEST_CASE("a page is written on either paper and in either unit")
{
    const Folder folder;
    for (const char* paper : {"a4", "letter"})
        for (const char* units : {"mm", "in"}) {
            CHECK(identify({"--output", folder.path(), "--replace", "--formats", "pdf,png,svg", "--paper", paper, "--units", units, one}).exit == 0);
            CHECK(read_all(folder.file("bench-1-identify.pdf")).starts_with("%PDF"));
        }
}

TEST_CASE("what is wrong with the call of identify, or with its files")
{
    const Folder folder;
    CHECK(identify({}).exit == 2);
    CHECK(identify({"--formats", "xlsx", one}).exit == 2);
    CHECK(identify({"--job", "--formats", "json", "--output", "-", one}).exit == 2);
    CHECK(identify({folder.file("none.xml")}).exit == 3);
    // Another shaft of the same name, and the others are still answered.
    const Run twice = identify({"--formats", "json", "--output", folder.path(), one, one, mixed});
    CHECK(twice.exit == 2);
    CHECK(has(twice.err, "one-series.xml:1:1: the shaft of "));
    CHECK(std::filesystem::exists(folder.file("bench-2-identify.json")));
    write_all(folder.file("bad.xml"), "<measures shaft=\"x\"><end side=\"left\"/></measures>");
    const Run bad = identify({folder.file("bad.xml")});
    CHECK(bad.exit == 2);
    CHECK(has(bad.err, "bad.xml:1:1: measures has no units"));
    CHECK(has(bad.err, "bad.xml:1:26: side \"left\" is not known"));
}

TEST_CASE("a figure that no shaft has is asked about, and counts as it stands")
{
    const Folder folder;
    write_all(folder.file("inch.xml"), "<measures shaft=\"x\" units=\"mm\"><end side=\"tractor\"><cross><cap diameter=\"0.866\"/></cross></end></measures>");
    const Run ended = identify({"--formats", "json", "--output", folder.path(), folder.file("inch.xml")});
    CHECK(ended.exit == 1);
    CHECK(has(ended.err, "inch.xml:1:64: "));
    CHECK(has(ended.err, "is it in millimetres?"));
}

TEST_CASE("an empty catalogue cannot tell a shaft, and says so")
{
    const Folder folder;
    write_all(folder.file("series.xml"), "<catalogue units=\"mm\"/>");
    // Nor any that the workshop sells.
    write_all(folder.file("workshop.xml"), std::regex_replace(read_all(config_folder + "/workshop.xml"), std::regex("<item series=[^>]*>"), ""));
    const Run ended = run({"identify", "--config", folder.path(), one});
    CHECK(ended.exit == 2);
    CHECK(has(ended.err, "the catalogue holds no series"));
}

TEST_CASE("the form that asks for what tells a series takes neither series nor machine")
{
    const Folder folder;
    CHECK(run({"form", "--config", config_folder, "--identify", "--output", folder.path()}).exit == 0);
    CHECK(read_all(folder.file("identify-form.pdf")).starts_with("%PDF"));
    CHECK(run({"form", "--config", config_folder, "--identify", "--series", "Alder 2"}).exit == 2);
    CHECK(run({"form", "--config", config_folder, "--identify", "--machine", "trailed"}).exit == 2);
}
