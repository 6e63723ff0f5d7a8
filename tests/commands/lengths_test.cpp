// shaftcut lengths as a program: its documents, its answers and its refusals.
#include <nlohmann/json.hpp>

#include "commands/program.hpp"
#include "support/catch.hpp"
#include "text.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

Run lengths(const std::vector<std::string>& arguments)
{
    std::vector<std::string> all{"lengths", "--config", config_folder};
    all.insert(all.end(), arguments.begin(), arguments.end());
    return run(all);
}

nlohmann::json json_of(const std::string& name)
{
    const Run ended = lengths({"--formats", "json", "--output", "-", sample(name)});
    CHECK(ended.exit == 0);
    return nlohmann::json::parse(ended.out);
}

std::string replaced(std::string text, const std::string& what, const std::string& by)
{
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), by);
}

}  // namespace

TEST_CASE("lengths gives every extreme and its posture under the same names")
{
    const auto lifted = json_of("mounted-lift"), turned = json_of("trailed-wide-angle");
    for (const auto& json : {lifted, turned}) {
        CHECK(json.size() == 5);
        for (const char* name : {"shortest", "longest_working", "longest_turning", "longest_standing"}) {
            CHECK(json["telescoping_mm"][name].is_number());
            CHECK(json["at"][name].is_object());
        }
        for (const char* end : {"tractor", "implement"})
            for (const char* range : {"working", "turning", "standing"}) {
                CHECK(json["joint_angle_deg"][end][range].is_number());
                CHECK(json["at"][end][range].is_object());
            }
    }
    const double at = lifted["at"]["shortest"]["height_mm"];
    CHECK(at > 210);
    CHECK(at < 890);
    CHECK(turned["at"]["shortest"]["turn_deg"] == 60.0);
}

TEST_CASE("lengths gives every dimension that the job stated, by its word and with the tolerance that holds")
{
    const auto machine = json_of("mounted-lift")["machines"].at(0);
    CHECK(machine["machine"] == "mounted");
    CHECK(machine["tractor"].is_null());
    CHECK(machine["dimensions"].size() == 11);
    CHECK(machine["dimensions"][1] == nlohmann::json{{"name", "lower-pivot-behind"}, {"value", -220.0}, {"plus_minus", 2.0}, {"unit", "mm"}});
    CHECK(machine["dimensions"][10] == nlohmann::json{{"name", "input-tilt"}, {"value", 0.0}, {"plus_minus", nullptr}, {"unit", "deg"}});
    CHECK(machine["standing"][1] == nlohmann::json{{"name", "highest"}, {"value", 980.0}, {"plus_minus", 2.0}, {"unit", "mm"}});
    CHECK(json_of("trailed-wide-angle")["machines"].at(0)["turning"][0] == nlohmann::json{{"name", "turn"}, {"value", 45.0}, {"plus_minus", nullptr}, {"unit", "deg"}});
}

TEST_CASE("lengths agrees with what cut uses")
{
    for (const char* name : {"mounted-lift", "trailed-wide-angle"}) {
        const auto cut = nlohmann::json::parse(run({"cut", "--config", config_folder, "--formats", "json", "--output", "-", sample(name)}).out);
        const auto found = json_of(name);
        for (const auto& [field, value] : found["telescoping_mm"].items()) CHECK(cut["telescoping_mm"][field] == value);
        CHECK(cut["joint_angle_deg"] == found["joint_angle_deg"]);
    }
}

TEST_CASE("lengths writes a sheet and figures, and says so in 80 columns")
{
    const Folder folder;
    const Run ended = lengths({"--output", folder.path(), sample("mounted-lift")});
    CHECK(ended.exit == 0);
    CHECK(folder.count() == 2);
    CHECK(std::filesystem::exists(folder.file("P-301-lengths.pdf")));
    CHECK(std::filesystem::exists(folder.file("P-301-lengths.json")));
    std::istringstream lines(ended.out);
    for (std::string line; std::getline(lines, line);)
        if (line.find("wrote") == std::string::npos) CHECK(code_points(line).size() <= 80);
    CHECK(lengths({"--output", folder.path(), sample("mounted-lift")}).exit == 3);
    CHECK(lengths({"--formats", "png,svg", "--output", folder.path(), sample("mounted-lift")}).exit == 0);
}

TEST_CASE("lengths refuses a workbook, a job without a machine, and a joint that folds")
{
    const Folder folder;
    const Run book = lengths({"--formats", "pdf,xlsx", "--output", folder.path(), sample("mounted-lift")});
    CHECK(book.exit == 2);
    CHECK(book.err.find("lengths has no workbook") != std::string::npos);
    const Run measured = lengths({"--output", folder.path(), sample("plain-cut")});
    CHECK(measured.exit == 2);
    CHECK(measured.err.find(":14:3: no fit holds a machine's geometry; ") != std::string::npos);
    write_all(folder.file("folded.xml"), replaced(read_all(sample("trailed-wide-angle")), "<standing turn=\"60\"", "<standing turn=\"120\""));
    CHECK(lengths({"--formats", "json", "--output", folder.path(), folder.file("folded.xml")}).exit == 1);
}
