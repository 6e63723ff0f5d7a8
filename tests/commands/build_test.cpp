// shaftcut build as a whole: a list in, documents and status out.
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "commands/program.hpp"
#include "shaftcut/reading/catalogue_reader.hpp"
#include "shaftcut/reading/orders_reader.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using nlohmann::json;

namespace {

const std::string header = "order,count,series,role,speed,inner_tube,tractor_joint,tractor_connection,tractor_lock,implement_joint,implement_connection,implement_lock,closed,shortest,longest_turning\n";
const std::string sound = ",2,Alder 2,primary,540,implement,standard,1-3/8-6,shrouded-push-pin,standard,1-3/8-6,clamp-bolt,830,,\n";

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::vector<std::string> call_for(const std::string& list, std::vector<std::string> more = {})
{
    more.insert(more.begin(), {"build", "--config", config_folder, list});
    return more;
}

// The batch as JSON of a list with these lines under the header.
json batch_of(const std::string& lines, int exit = 0, std::vector<std::string> more = {})
{
    const Folder folder;
    write_all(folder.file("list.csv"), header + lines);
    more.insert(more.end(), {"--formats", "json", "--output", "-"});
    const Run one = run(call_for(folder.file("list.csv"), more));
    INFO(one.err);
    REQUIRE(one.exit == exit);
    CHECK(one.out.find('\n') == one.out.size() - 1);
    return json::parse(one.out);
}

std::map<std::string, int> counts_of(const json& parts)
{
    std::map<std::string, int> counts;
    for (const json& part : parts) counts[part["name"].get<std::string>()] += part["count"].get<int>();
    return counts;
}

const std::string sample_list = source_folder + "/samples/orders.csv";
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
    CHECK(order["checks"].size() == 16);
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

TEST_CASE("build: with faults in the list the good orders are still built, and the call ends with 2")
{
    const Folder folder;
    write_all(folder.file("list.csv"), header + "A-1" + sound + "A-2,0,Alder 3,primary\nA-1" + sound + "A-4" + sound);
    const Run one = run(call_for(folder.file("list.csv"), {"--output", folder.path()}));
    CHECK(one.exit == 2);
    CHECK(has(one.err, "list.csv:3:1: the line has 4 fields"));
    CHECK(has(one.err, "list.csv:4:1: order \"A-1\" stands in line 2 too"));
    const json batch = json::parse(read_all(folder.file("list.json")));
    REQUIRE(batch["orders"].size() == 2);
    CHECK(batch["orders"][1]["order"] == "A-4");
    CHECK(has(one.out, "list: 4 shafts of 2 orders"));
}

TEST_CASE("build: a list of which nothing can be read writes nothing")
{
    const Folder folder;
    write_all(folder.file("list.csv"), "order\n");
    write_all(folder.file("list.xml"), "<orders>");
    write_all(folder.file("list.txt"), header);
    for (const char* name : {"list.csv", "list.xml", "list.txt"}) {
        const Run one = run(call_for(folder.file(name), {"--output", folder.path()}));
        CHECK(one.exit == 2);
        CHECK_FALSE(one.err.empty());
    }
    CHECK(run(call_for(folder.file("none.csv"))).exit == 3);
    CHECK(run({"build"}).exit == 2);
    CHECK(run(call_for(folder.file("list.csv"), {folder.file("list.xml")})).exit == 2);
    CHECK(run(call_for(folder.file("list.csv"), {"--formats", "png"})).exit == 2);
    CHECK(folder.count() == 3);
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
    std::vector<std::string> refused;
    for (const json& order : batch["orders"])
        if (order["verdict"] == "refused") refused.push_back(order["order"]);
    CHECK(refused == std::vector<std::string>{"B-2015"});
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

TEST_CASE("build: a tube for which the stock's longest bar is too short is refused, without its length, and the longest shaft is named")
{
    const Folder folder;
    write_all(folder.file("rack.csv"), "profile,length,count\nlemon tube 43 x 3.4,600,\n");
    const std::vector<std::string> stock{"--stock", folder.file("rack.csv")};
    const json order = batch_of("A-1" + sound, 1, stock)["orders"][0];
    CHECK(order["verdict"] == "refused");
    CHECK(order["blanks_mm"].is_null());
    CHECK(order["reasons"] == json::parse(R"(["The inner tube would be longer than the longest bar that is known for lemon tube 43 x 3.4, 600 mm."])"));
    // 662 is 62 too long.
    CHECK(has(order["ways_out"].dump(), "a closed length of 768 mm between crosses at most"));
    const auto closed_to = [](const std::string& length) { return std::string(sound).replace(sound.find(",830,"), 5, "," + length + ","); };
    CHECK(batch_of("A-1" + closed_to("768"), 0, stock)["orders"][0]["blanks_mm"]["inner_tube"] == 600.0);
    CHECK(batch_of("A-1" + closed_to("769"), 1, stock)["orders"][0]["verdict"] == "refused");
}

TEST_CASE("build: the sample's millimetres read as inches are refused, and the reasons ask whether they are")
{
    const Run one = run(call_for(sample_list, {"--units", "in", "--formats", "json", "--output", "-"}));
    CHECK(one.exit == 1);
    const json batch = json::parse(one.out);
    REQUIRE(batch["orders"].size() == 20);
    for (const json& order : batch["orders"]) {
        INFO(order.dump());
        const bool own_units = order["order"] == "B-2010";  // its lengths say "in"
        CHECK(order["verdict"] == (own_units ? "build" : "refused"));
        if (own_units) continue;
        CHECK(order["blanks_mm"].is_null());
        CHECK(has(order["reasons"].dump(), "longer than the longest bar that is known for"));
        CHECK(has(order["reasons"].dump(), "Were millimetres read as inches?"));
    }
    CHECK(has(batch["orders"][0]["reasons"].dump(), "The closed length was read as 830 in; 830 mm would be made of these bars."));
    CHECK(has(one.err, "why         Were millimetres read as inches?"));
}

TEST_CASE("build and saw: the help says that --units are also those of lengths that name none")
{
    for (const char* command : {"build", "saw"}) {
        std::istringstream words(run({command, "--help"}).out);
        std::string help;
        for (std::string word; words >> word;) help += word + " ";
        CHECK(has(help, "lists that name none"));
    }
}

TEST_CASE("build: every fault of the stock file is named, and nothing is written")
{
    const Folder folder;
    write_all(folder.file("rack.csv"), "profile,length\n,600\nx,0\n");
    const Run one = run(call_for(sample_list, {"--output", folder.path(), "--stock", folder.file("rack.csv")}));
    CHECK(one.exit == 2);
    CHECK(has(one.err, "rack.csv:2:1: \"\" is no profile's name"));
    CHECK(has(one.err, "rack.csv:3:3: \"0\" is no length to cut"));
    CHECK(folder.count() == 1);
}

TEST_CASE("build: a list whose name holds a control character is refused")
{
    const Folder folder;
    write_all(folder.file("a\x1B[31m.csv"), header + "A-1" + sound);
    const Run one = run(call_for(folder.file("a\x1B[31m.csv"), {"--output", folder.path()}));
    CHECK(one.exit == 2);
    CHECK(has(one.err, "the name of the file of orders holds a control character"));
    CHECK(folder.count() == 1);
}

TEST_CASE("build: the faults of the list and of the stock file in one go, and nothing written")
{
    const Folder folder;
    write_all(folder.file("rack.csv"), "profile,length\nx,0\n");
    write_all(folder.file("list.csv"), header + "A-1" + sound + "A 2" + sound);
    const Run one = run(call_for(folder.file("list.csv"), {"--output", folder.path(), "--stock", folder.file("rack.csv")}));
    CHECK(one.exit == 2);
    CHECK(has(one.err, "list.csv:3:1: order \"A 2\" cannot name files"));
    CHECK(has(one.err, "rack.csv:2:3: \"0\" is no length to cut"));
    CHECK(folder.count() == 2);
    const Run missing = run(call_for(folder.file("no.csv"), {"--output", folder.path(), "--stock", folder.file("rack.csv")}));
    CHECK(missing.exit == 3);
    CHECK(has(missing.err, "no.csv cannot be read"));
    CHECK(has(missing.err, "rack.csv:2:3"));
}

TEST_CASE("build: --replace leaves no saw plan and no labels of pieces that an earlier list gave and this one refuses")
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
    CHECK(has(again.out, "removed     " + folder.file("list-labels.pdf")));
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
