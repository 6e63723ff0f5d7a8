// shaftcut choose as a program: its words, its document, its exit status and its refusals.
#include <cmath>
#include <nlohmann/json.hpp>

#include "commands/program.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const std::string grooves = sample("choose/measured-grooves"), none = sample("choose/none-serves");

Run choose(const std::vector<std::string>& arguments)
{
    std::vector<std::string> all{"choose", "--config", config_folder};
    all.insert(all.end(), arguments.begin(), arguments.end());
    return run(all);
}

nlohmann::ordered_json json_of(const std::string& job) { return nlohmann::ordered_json::parse(choose({"--formats", "json", "--output", "-", job}).out); }

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::vector<std::string> keys_of(const nlohmann::ordered_json& json)
{
    std::vector<std::string> keys;
    for (const auto& [key, value] : json.items()) keys.push_back(key);
    return keys;
}

}  // namespace

TEST_CASE("each sample to choose for comes out as its first line says")
{
    int judged = 0;
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples/choose")) {
        INFO(entry.path().string());
        const std::string bytes = read_all(entry.path().string()), line = bytes.substr(0, bytes.find('\n'));
        const Run ended = choose({"--formats", "json", "--output", "-", entry.path().string()});
        const bool serves = line == "<!-- expect: serve -->";
        CHECK((serves || line == "<!-- expect: none -->"));
        CHECK(ended.exit == (serves ? 0 : 1));
        CHECK((nlohmann::json::parse(ended.out)["serving"] > 0) == serves);
        ++judged;
    }
    CHECK(judged >= 4);
}

TEST_CASE("choices are said with the best first, and written as figures")
{
    const Folder folder;
    const Run ended = choose({"--output", folder.path(), grooves});
    CHECK(ended.exit == 0);
    CHECK(ended.err.empty());
    CHECK(ended.out.starts_with("P-501: 22 OF 31 SERVE\n  for trailed forage wagon (invented)\n  as it is    Alder 2, closed length 705 mm from the outer cross;"));
    CHECK(has(ended.out, "  cut 8 mm    Hazel 3, closed length 650 mm from the inner cross;"));
    CHECK(has(ended.out, "  to order    "));
    CHECK(has(ended.out, "  no          Larch 6: overlap working (590 mm)\n"));
    CHECK(has(ended.out, "  wrote       " + folder.file("P-501-choices.json") + "\n"));
    CHECK(folder.count() == 1);
    for (std::size_t at = 0; at < ended.out.size(); at = ended.out.find('\n', at) + 1)
        if (const std::string line = ended.out.substr(at, ended.out.find('\n', at) - at); !has(line, "wrote")) CHECK(line.size() <= 80);
    const auto json = nlohmann::ordered_json::parse(read_all(folder.file("P-501-choices.json")));
    CHECK(keys_of(json) == std::vector<std::string>{"order", "serving", "currency", "prices_stated", "choices", "to_order", "without_lengths"});
    REQUIRE(json["choices"].size() == 31);
    CHECK(keys_of(json["choices"][0]) == std::vector<std::string>{"series", "closed_mm", "reference", "joints", "result", "cut_mm", "cuts_mm", "least_margin", "price", "reason", "checks"});
    // It is there already.
    CHECK(choose({"--output", folder.path(), grooves}).exit == 3);
    CHECK(choose({"--output", folder.path(), "--replace", grooves}).exit == 0);
}

TEST_CASE("the figures of a choice: of one that serves its cut and its checks, of another its reason and what fails")
{
    const auto json = json_of(grooves);
    CHECK(json["order"] == "P-501");
    CHECK(json["currency"] == "EUR");
    CHECK(json["prices_stated"] == "without-tax");
    for (const auto& choice : json["choices"]) {
        if (choice["series"] == "Alder 2" && choice["closed_mm"] == 705.0) CHECK(choice["price"] == "196.00");
        if (choice["series"] == "Rowan 5") CHECK(choice["price"].is_null());
    }
    CHECK(json["serving"] == 22);
    CHECK(json["without_lengths"] == nlohmann::ordered_json::parse(R"(["Birch 1", "Juniper 8"])"));
    const auto& as_is = json["choices"][0];
    CHECK(as_is["series"] == "Alder 2");
    CHECK(as_is["closed_mm"] == 705.0);
    CHECK(as_is["reference"] == "outer-cross");
    CHECK(as_is["joints"] == nlohmann::ordered_json::parse(R"({"tractor":"wide-angle","implement":"standard"})"));
    CHECK(as_is["result"] == "as-is");
    CHECK(as_is["cut_mm"] == 0.0);
    CHECK(as_is["reason"].is_null());
    CHECK(as_is["checks"].size() == 17);  // all but the condition, which nobody looked at
    const auto& cut = json["choices"][2];
    CHECK(cut["result"] == "cut");
    CHECK(cut["cut_mm"] == 8.0);
    CHECK(cut["cuts_mm"] == nlohmann::ordered_json::parse(R"({"inner_tube":8.0,"outer_tube":8.0,"inner_guard":8.0,"outer_guard":8.0})"));
    const auto& no = json["choices"][22];
    CHECK(no["result"] == "no");
    CHECK(no["cut_mm"].is_null());
    CHECK(no["cuts_mm"].is_null());
    CHECK(no["least_margin"] < 0.0);
    CHECK(has(no["reason"], "overlap is asked"));
    CHECK(no["checks"][0]["id"] == "overlap-working");
    for (const auto& check : no["checks"]) CHECK(check["result"] == "fail");
    REQUIRE(!json["to_order"].empty());
    CHECK(keys_of(json["to_order"][0]) == std::vector<std::string>{"series", "closed_mm", "reference", "joints", "open", "least_margin", "checks"});
}

TEST_CASE("where none serves the call ends with 1 and says what lacks least")
{
    const Run ended = choose({"--formats", "json", "--output", "-", none});
    CHECK(ended.exit == 1);
    CHECK(ended.err.starts_with("P-503: NONE OF 31 SERVES\n"));
    CHECK(has(ended.err, "  nearest     "));
    CHECK(has(ended.err, "  to order    no series could be made to serve\n"));
    const auto json = nlohmann::ordered_json::parse(ended.out);
    CHECK(json["serving"] == 0);
    CHECK(json["to_order"].empty());
    for (const auto& choice : json["choices"]) CHECK(choice["reason"].is_string());
}

TEST_CASE("several jobs are chosen for in one call, a document each, and no order twice")
{
    const Folder folder;
    const Run ended = choose({"--output", folder.path(), grooves, none});
    CHECK(ended.exit == 1);
    CHECK(folder.count() == 2);
    const Run again = choose({"--formats", "json", "--output", "-", grooves, grooves});
    CHECK(again.exit == 2);
    CHECK(has(again.err, "order \"P-501\" is also the order of"));
}

TEST_CASE("--units says lengths in inches, and the saw's step is one of inches")
{
    const Run ended = choose({"--units", "in", "--formats", "json", "--output", "-", grooves});
    CHECK(has(ended.err, "closed length 27-3/4 in (705 mm) from the outer cross"));
    const auto cut = nlohmann::ordered_json::parse(ended.out)["choices"][2]["cut_mm"].get<double>();
    CHECK(std::abs(cut / (25.4 / 16) - std::round(cut / (25.4 / 16))) < 0.001);
}

TEST_CASE("choose writes JSON only and takes one job at least; what is wrong with a job is said with its place")
{
    CHECK(has(choose({"--formats", "pdf", grooves}).err, "choose writes JSON only"));
    CHECK(choose({"--formats", "pdf", grooves}).exit == 2);
    CHECK(choose({}).exit == 2);
    CHECK(choose({"/nowhere.xml"}).exit == 3);
    const Run cut_job = choose({"--formats", "json", "--output", "-", sample("plain-cut"), grooves});
    CHECK(cut_job.exit == 2);
    CHECK(has(cut_job.err, "plain-cut.xml:8:5: closed belongs to a shaft that is there, and this one is still to be chosen"));
    CHECK(nlohmann::ordered_json::parse(cut_job.out)["order"] == "P-501");
}
