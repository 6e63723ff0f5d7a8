// shaftcut build: lists and stock files that it cannot take, or takes only in part.
#include <set>
#include <sstream>

#include "commands/build_calls.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using nlohmann::json;

TEST_CASE("build: with faults in the list the good orders are still built, and the call ends with 2")
{
    const Folder folder;
    write_all(folder.file("list.csv"), header + "A-1" + sound + "A-2,0,Alder 3,primary\nA-1" + sound + "A-4" + sound + "2026/7" + sound);
    const Run one = run(call_for(folder.file("list.csv"), {"--output", folder.path()}));
    CHECK(one.exit == 2);
    CHECK(has(one.err, "list.csv:3:1: the line has 4 fields"));
    CHECK(has(one.err, "list.csv:4:1: order \"A-1\" stands in line 2 too"));
    const json batch = json::parse(read_all(folder.file("list.json")));
    REQUIRE(batch["orders"].size() == 2);
    CHECK(batch["orders"][1]["order"] == "2026/7");
    CHECK(std::filesystem::exists(folder.file("2026-7-assembly.pdf")));
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

TEST_CASE("build: the sample's millimetres read as inches are faults that ask whether they are")
{
    const Run one = run(call_for(sample_list, {"--units", "in", "--formats", "json", "--output", "-"}));
    CHECK(one.exit == 2);
    const json batch = json::parse(one.out);
    REQUIRE(batch["orders"].size() == 1);
    CHECK(batch["orders"][0]["order"] == "B-2010");  // its lengths say "in"
    CHECK(batch["orders"][0]["verdict"] == "build");
    CHECK(has(one.err, "closed \"830\" is 21082 mm, and a closed length is 200 mm to 3500 mm; is the unit right? A 25.4th of that, 830 mm, could be one"));
    for (int line = 2; line <= 21; ++line) {
        INFO(line);
        CHECK((has(one.err, ".csv:" + std::to_string(line) + ":") == !std::set{10, 11, 21}.contains(line)));  // 10 and 21 state the lengths of 2 and 8 again
    }
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
    CHECK(has(one.err, "the name of the file of orders holds the control character U+001B"));
    CHECK(folder.count() == 1);
}

TEST_CASE("build: the faults of the list and of the stock file in one go, and nothing written")
{
    const Folder folder;
    write_all(folder.file("rack.csv"), "profile,length\nx,0\n");
    write_all(folder.file("list.csv"), header + "A-1" + sound + std::string(200, 'A') + sound);
    const Run one = run(call_for(folder.file("list.csv"), {"--output", folder.path(), "--stock", folder.file("rack.csv")}));
    CHECK(one.exit == 2);
    CHECK(has(one.err, "list.csv:3:1: order "));
    CHECK(has(one.err, "rack.csv:2:3: \"0\" is no length to cut"));
    CHECK(folder.count() == 2);
    const Run missing = run(call_for(folder.file("no.csv"), {"--output", folder.path(), "--stock", folder.file("rack.csv")}));
    CHECK(missing.exit == 3);
    CHECK(has(missing.err, "no.csv cannot be read"));
    CHECK(has(missing.err, "rack.csv:2:3"));
}
