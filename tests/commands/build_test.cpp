// shaftcut build as a whole: a list in, documents and status out.
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "catalogue_reader.hpp"
#include "commands/build_calls.hpp"
#include "files/load.hpp"
#include "lists/orders_reader.hpp"
#include "shaftcut/trade/checks/checks.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using nlohmann::json;

namespace {

std::map<std::string, int> counts_of(const json& parts)
{
    std::map<std::string, int> counts;
    for (const json& part : parts) counts[part["name"].get<std::string>()] += part["count"].get<int>();
    return counts;
}

const std::vector<std::string> with_rack{"--stock", source_folder + "/samples/rack.csv"};

json sample_batch()
{
    std::vector<std::string> more = with_rack;
    more.insert(more.end(), {"--formats", "json", "--output", "-"});
    return json::parse(run(call_for(sample_list, more)).out);
}

}  // namespace

TEST_CASE("build: the batch as JSON, the fields that scripts read first")
{
    const json batch = batch_of("A-1" + sound);
    const json& order = batch["orders"].at(0);
    CHECK(order["order"] == "A-1");
    CHECK(order["verdict"] == "build");
    CHECK(order["reasons"] == json::array());
    // 830 − 106 − 62 and 830 − 128 − 58; the guards 10 shorter than the halves, from seats of 46 and 44.
    CHECK(order["blanks_mm"] == json::parse(R"({"inner_tube": 662.0, "outer_tube": 644.0, "inner_guard": 668.0, "outer_guard": 648.0})"));
    CHECK(order["half_mm"] == json::parse(R"({"inner_half": 724.0, "outer_half": 702.0, "inner_guard_half": 714.0, "outer_guard_half": 692.0})"));
    CHECK(order["closed_mm"] == 830.0);
    CHECK(counts_of(order["parts"]).at("cross 22 x 54") == 4);
    CHECK(order["checks"].size() == Words<CheckId>::all.size());
    CHECK(order["checks"][0]["id"] == "consistency");
    CHECK(batch["saw"].size() == 4);
    CHECK(batch["saw"][0]["stock"] == "lemon tube 43 x 3.4");
    CHECK(batch["saw"][0]["bars"][0]["pieces_mm"] == json::parse("[662.0, 662.0]"));
    CHECK(batch["saw"][0]["proven_optimal"] == true);
}

TEST_CASE("build: a refused order has no lengths and no parts, and the call ends with 1")
{
    const json batch = batch_of("A-1,1,Alder 2,primary,540,implement,standard,1-3/8-6,exposed-collar,standard,1-3/8-6,clamp-bolt,830,,\n", 1);
    const json& order = batch["orders"].at(0);
    CHECK(order["verdict"] == "refused");
    for (const char* field : {"blanks_mm", "half_mm", "closed_mm", "use_mm", "tubes_kg"}) CHECK(order[field].is_null());
    CHECK(order["parts"].empty());
    CHECK(order["operations"].empty());
    CHECK_FALSE(order["reasons"].empty());
    CHECK(batch["saw"].empty());
}

TEST_CASE("build: an existing document is kept without --replace")
{
    const Folder folder;
    write_all(folder.file("list.csv"), header + "A-1" + sound);
    write_all(folder.file("list.json"), "mine");
    CHECK(run(call_for(folder.file("list.csv"), {"--output", folder.path()})).exit == 3);
    CHECK(read_all(folder.file("list.json")) == "mine");
    CHECK_FALSE(std::filesystem::exists(folder.file("list-saw-plan.pdf")));
    CHECK(run(call_for(folder.file("list.csv"), {"--output", folder.path(), "--replace"})).exit == 0);
    CHECK(read_all(folder.file("list-saw-plan.pdf")).rfind("%PDF", 0) == 0);
}

TEST_CASE("build: the sample is twenty orders over four series, of which one cannot be built")
{
    const json batch = sample_batch();
    REQUIRE(batch["orders"].size() == 20);
    std::set<std::string> series;
    const auto catalogue = read_catalogue(std::get<Source>(load(config_folder + "/series.xml"))).value.value();
    for (const BuildOrder& order : read_orders_csv(std::get<Source>(load(sample_list)), catalogue, Units::mm).orders) series.insert(*order.shaft.series);
    CHECK(series.size() == 4);
    std::vector<std::string> refused, held;
    for (const json& order : batch["orders"]) {
        if (order["verdict"] == "refused") refused.push_back(order["order"]);
        if (order["verdict"] == "held") held.push_back(order["order"]);
    }
    CHECK(refused == std::vector<std::string>{"B-2015"});
    CHECK(held == std::vector<std::string>{"B-2017", "B-2018"});
    for (const json& plan : batch["saw"]) CHECK(plan["refusal"].is_null());
}

TEST_CASE("build: every piece of every order is in the saw plans, as often as it is ordered")
{
    const json batch = sample_batch();
    std::map<double, std::int64_t> wanted, planned;
    for (const json& order : batch["orders"]) {
        if (order["blanks_mm"].is_null()) continue;
        for (const char* piece : {"inner_tube", "outer_tube"}) wanted[order["blanks_mm"][piece].get<double>()] += order["count"].get<int>();
    }
    std::int64_t bars = 0;
    for (const json& plan : batch["saw"]) {
        if (has(plan["stock"].get<std::string>(), "guard")) continue;
        for (const json& bar : plan["bars"]) {
            for (const json& piece : bar["pieces_mm"]) planned[piece.get<double>()] += bar["count"].get<int>();
            bars += bar["count"].get<int>();
        }
    }
    CHECK(planned == wanted);
    CHECK(bars > 10);
}

TEST_CASE("build: bars of a profile from the stock file are used instead of the workshop's, others stay")
{
    const Folder folder;
    write_all(folder.file("rack.csv"), "profile,length,count,cost\nlemon tube 43 x 3.4,670,2,0\n");
    const json batch = batch_of("A-1" + sound, 0, {"--stock", folder.file("rack.csv")});
    CHECK(batch["saw"][0]["bars"][0]["stock_mm"] == 670);
    CHECK(batch["saw"][0]["bars"][0]["count"] == 2);
    CHECK(batch["saw"][0]["cost"] == 0);
    // Other bars are cheapest by their length, in millimetres.
    CHECK(batch["saw"][2]["stock"] == "lemon tube 51 x 3.2");
    CHECK(batch["saw"][2]["bars"][0]["stock_mm"] == 3000);
}

TEST_CASE("build: pieces that the bars' trims leave no room for have no plan, the orders are built all the same, and the call ends with 1")
{
    const Folder folder;
    write_all(folder.file("rack.csv"), "profile,length,count\nlemon tube 43 x 3.4,665,\n");
    const json batch = batch_of("A-1" + sound, 1, {"--stock", folder.file("rack.csv"), "--trim-start", "5"});
    CHECK(batch["orders"][0]["verdict"] == "build");
    CHECK(batch["saw"][0]["bars"].is_null());
    CHECK(has(batch["saw"][0]["refusal"], "A-1 inner tube"));
}

TEST_CASE("build: --replace leaves no saw plan and no labels, under their names, of pieces that an earlier list gave and this one refuses")
{
    const Folder folder;
    const std::string list = folder.file("list.csv");
    const auto build = [&](const std::string& line, std::vector<std::string> more) {
        write_all(list, header + line);
        more.insert(more.end(), {"--output", folder.path(), "--seconds", "0"});
        return run(call_for(list, more));
    };
    CHECK(build("A-1" + sound, {}).exit == 0);
    CHECK(std::filesystem::exists(folder.file("list-saw-plan.pdf")));
    CHECK(std::filesystem::exists(folder.file("list-labels.pdf")));
    std::string refused = "A-1" + sound;
    refused.replace(refused.find("shrouded-push-pin"), 17, "exposed-collar");
    // Without --replace nothing is touched.
    CHECK(build(refused, {}).exit == 3);
    CHECK(std::filesystem::exists(folder.file("list-saw-plan.pdf")));
    const Run again = build(refused, {"--replace"});
    CHECK(again.exit == 1);
    CHECK_FALSE(std::filesystem::exists(folder.file("list-saw-plan.pdf")));
    CHECK_FALSE(std::filesystem::exists(folder.file("list-labels.pdf")));
    CHECK(has(again.out, "  superseded  " + folder.file("list-labels.pdf") + ": now list-labels.superseded.pdf\n"));
    CHECK(std::filesystem::exists(folder.file("list-saw-plan.superseded.pdf")));
    CHECK(std::filesystem::exists(folder.file("list-labels.superseded.pdf")));
    CHECK(std::filesystem::exists(folder.file("list-batch.xlsx")));
}

TEST_CASE("build: profiles without bars are named")
{
    const Folder folder;
    write_all(folder.file("list.csv"), header + "A-1,1,Larch 6,primary,540,implement,standard,1-3/8-6,shrouded-push-pin,standard,1-3/8-6,clamp-bolt,830,,\n");
    const Run one = run(call_for(folder.file("list.csv"), {"--formats", "json", "--output", folder.path()}));
    CHECK(one.exit == 0);
    CHECK(has(one.out, "no saw plan guard tube 112: the workshop states no bars for it"));
    CHECK_FALSE(has(one.out, "no saw plan lemon"));
}

TEST_CASE("build: kerf and trims are the options'")
{
    const Folder folder;
    write_all(folder.file("rack.csv"), "profile,length\nlemon tube 43 x 3.4,1327\n");
    const std::vector<std::string> stock{"--stock", folder.file("rack.csv")};
    const auto bars_used = [&](std::vector<std::string> more) {
        more.insert(more.end(), stock.begin(), stock.end());
        return batch_of("A-1" + sound, 0, more)["saw"][0]["bars_used"].get<int>();
    };
    CHECK(bars_used({}) == 1);  // 662 + 3 + 662
    CHECK(bars_used({"--kerf", "4"}) == 2);
    CHECK(bars_used({"--trim-start", "0.001"}) == 2);
}

TEST_CASE("build: in inches the documents' step is a sixteenth, and a CSV list's lengths are inches")
{
    const json batch = batch_of("A-1,1,Alder 2,primary,540,implement,standard,1-3/8-6,shrouded-push-pin,standard,1-3/8-6,clamp-bolt,33,,\n", 0, {"--units", "in"});
    // 838.2 − 106 is 732.2; to a sixteenth of an inch below: 461/16 in.
    CHECK(batch["orders"][0]["half_mm"]["inner_half"] == Approx(461 * 25.4 / 16).margin(0.001));
    CHECK(batch["orders"][0]["closed_mm"].get<double>() <= 838.2);
    CHECK(batch["orders"][0]["closed_mm"].get<double>() > 838.2 - 1.5875);
}

TEST_CASE("build: an XML list with a machine's geometry")
{
    const Run one = run({"build", "--config", config_folder, "--formats", "json", "--output", "-", source_folder + "/tests/reading/good/orders_geometry.xml"});
    INFO(one.err);
    const json batch = json::parse(one.out);
    REQUIRE(batch["orders"].size() == 2);
    CHECK(batch["orders"][0]["checks"][10]["result"] == "pass");
}
