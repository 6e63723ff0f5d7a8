// shaftcut after-cut as a program: its answers, its document and its refusals.
#include <nlohmann/json.hpp>
#include <regex>

#include "commands/program.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "support/catch.hpp"
#include "text.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const std::string job = sample("wide-angle-outer-cross"), good = sample("after-cut/wide-angle-outer-cross");

Run after_cut(const std::vector<std::string>& arguments)
{
    std::vector<std::string> all{"after-cut", "--config", config_folder};
    all.insert(all.end(), arguments.begin(), arguments.end());
    return run(all);
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::string replaced(std::string text, const std::string& what, const std::string& by)
{
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), by);
}

// The answer to the sample with something changed, as JSON on standard output.
struct Changed {
    Run run;
    nlohmann::ordered_json json;
};
Changed changed(const std::string& what, const std::string& by, const std::string& of_job = job)
{
    const Folder folder;
    write_all(folder.file("measured.xml"), replaced(read_all(good), what, by));
    Changed found{after_cut({"--formats", "json", "--output", "-", of_job, folder.file("measured.xml")}), {}};
    if (!found.run.out.empty()) found.json = nlohmann::ordered_json::parse(found.run.out);
    return found;
}

std::vector<std::string> keys_of(const nlohmann::ordered_json& json)
{
    std::vector<std::string> keys;
    for (const auto& [key, value] : json.items()) keys.push_back(key);
    return keys;
}

}  // namespace

TEST_CASE("each sample of what was measured comes out as its first line says")
{
    static const std::regex first_line("<!-- expect: ([a-z-]+) -->");
    int judged = 0;
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples/after-cut")) {
        INFO(entry.path().string());
        const std::string bytes = read_all(entry.path().string()), line = bytes.substr(0, bytes.find('\n'));
        std::smatch match;
        REQUIRE(std::regex_match(line, match, first_line));
        const Run ended = after_cut({"--formats", "json", "--output", "-", sample(entry.path().stem().string()), entry.path().string()});
        REQUIRE(!ended.out.empty());
        CHECK(nlohmann::json::parse(ended.out)["verdict"] == match[1].str());
        CHECK(ended.exit == (match[1] == "right" || match[1] == "saw-more" ? 0 : 1));
        ++judged;
    }
    CHECK(judged >= 2);
}

TEST_CASE("what was measured after the cut is answered by words and by figures")
{
    const Folder folder;
    const Run ended = after_cut({"--output", folder.path(), job, good});
    CHECK(ended.exit == 0);
    CHECK(ended.err.empty());
    CHECK(ended.out.starts_with("K-1042: RIGHT\n"));
    CHECK(has(ended.out, "  right       The inner tube is right: 599 mm, expected 596 mm ± 5 mm.\n"));
    CHECK(has(ended.out, "  wrote       " + folder.file("K-1042-after-cut.json") + "\n"));
    CHECK(folder.count() == 1);
    const auto json = nlohmann::ordered_json::parse(read_all(folder.file("K-1042-after-cut.json")));
    CHECK(keys_of(json) == std::vector<std::string>{"order", "shaft", "verdict", "parts", "telescoping_mm", "overlap_mm", "checks"});
    CHECK(json["order"] == "K-1042");
    CHECK(json["shaft"].is_null());
    REQUIRE(json["parts"].size() == 4);
    CHECK(keys_of(json["parts"][0]) == std::vector<std::string>{"part", "result", "measured_mm", "expected_mm", "plus_minus_mm", "saw_more_mm", "short_mm"});
    CHECK(json["parts"][0] == nlohmann::ordered_json::parse(
                                  R"({"part":"inner_tube","result":"right","measured_mm":599.0,"expected_mm":596.0,"plus_minus_mm":5.0,"saw_more_mm":0.0,"short_mm":0.0})"));
    CHECK(json["telescoping_mm"]["closed_before"] == 796.0);
    CHECK(json["telescoping_mm"]["closed_after"] == 702.0);
    CHECK(json["telescoping_mm"]["longest_turning"] == 850.0);
    CHECK(json["overlap_mm"]["longest_turning"] == 320.0);
    CHECK(json["checks"].size() == Words<CheckId>::all.size());
    // It is there already.
    CHECK(after_cut({"--output", folder.path(), job, good}).exit == 3);
    CHECK(after_cut({"--output", folder.path(), "--replace", job, good}).exit == 0);
}

TEST_CASE("too long, too short and not measured each say what to do, and end the call by that")
{
    const Changed more = changed("length=\"599\"", "length=\"604\"");
    CHECK(more.run.exit == 0);
    CHECK(more.json["verdict"] == "saw-more");
    CHECK(more.json["parts"][0]["saw_more_mm"] == 8.0);
    CHECK(has(more.run.err, "  saw more    Saw 8 mm more off the inner tube.\n"));
    const Changed less = changed("length=\"599\"", "length=\"300\"");
    CHECK(less.run.exit == 1);
    CHECK(less.json["verdict"] == "too-short");
    CHECK(less.json["parts"][0]["short_mm"] > 0.0);
    CHECK(less.run.err.starts_with("K-1042: DO NOT USE\n"));
    const Changed unread = changed("length=\"599\" ", "");
    CHECK(unread.run.exit == 1);
    CHECK(unread.json["verdict"] == "measure");
    CHECK(unread.json["parts"][0]["measured_mm"].is_null());
    CHECK(unread.json["parts"][0]["saw_more_mm"].is_null());
    CHECK(has(unread.run.err, "  measure     Measure the inner tube.\n"));
    const Changed late = changed("length=\"766\"", "length=\"790\"");
    CHECK(late.run.exit == 1);
    CHECK(has(late.run.err, "  note        It closes 19 mm longer than its halves explain"));
}

TEST_CASE("--units says what was measured in inches with millimetres beside")
{
    const Run ended = after_cut({"--units", "in", "--formats", "json", "--output", "-", job, good});
    CHECK(ended.exit == 0);
    CHECK(has(ended.err, "23-9/16 in (599 mm)"));
}

TEST_CASE("another order, a refused job and faults of both files are bad input")
{
    const Changed other = changed("K-1042", "K-1043");
    CHECK(other.run.exit == 2);
    CHECK(has(other.run.err, "measured.xml:3:11: order \"K-1043\", but the job is order \"K-1042\"; name the job and what was measured of one order, in this order"));
    CHECK(other.json.is_null());
    const std::string refused = sample("refused-overlap");
    std::smatch order;
    const std::string text = read_all(refused);
    REQUIRE(std::regex_search(text, order, std::regex("order=\"([^\"]+)\"")));
    const Changed uncut = changed("K-1042", order[1], refused);
    CHECK(uncut.run.exit == 2);
    CHECK(has(uncut.run.err, "the answer to this job is DO NOT CUT"));
    const Changed both = changed("length=\"599\"", "length=\"x\"", good);
    CHECK(both.run.exit == 2);
    CHECK(has(both.run.err, "the file holds \"measured\"; this file holds job"));
    CHECK(has(both.run.err, "length \"x\""));
}

TEST_CASE("after-cut takes two files and writes JSON only")
{
    CHECK(after_cut({job}).exit == 2);
    CHECK(has(after_cut({job, good, good}).err, "takes two files, not 3"));
    CHECK(has(after_cut({"--formats", "pdf", job, good}).err, "after-cut writes JSON only"));
    CHECK(after_cut({job, "/nowhere.xml"}).exit == 3);
    const Folder folder;
    CHECK(after_cut({"--output", folder.file("a/b"), job, good}).exit == 0);
}
