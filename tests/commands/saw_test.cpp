#include <nlohmann/json.hpp>

#include "commands/saw_lists.hpp"
#include "support/catch.hpp"
#include "text.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using nlohmann::json;

namespace {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::vector<std::string> lines_of(const std::string& text)
{
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

// The plan as JSON, of lists with these bytes.
json plan_of(const std::string& pieces, const std::string& stock, std::vector<std::string> more = {})
{
    const Folder folder;
    write_all(folder.file("p.csv"), pieces);
    write_all(folder.file("s.csv"), stock);
    more.insert(more.end(), {"--formats", "json", "--output", "-", "--stock", folder.file("s.csv")});
    std::vector<std::string> call{"saw", "--config", config_folder, folder.file("p.csv")};
    call.insert(call.end(), more.begin(), more.end());
    const Run one = run(call);
    INFO(one.err);
    REQUIRE(one.exit == 0);
    CHECK(one.out.find('\n') == one.out.size() - 1);
    return json::parse(one.out);
}

}  // namespace

TEST_CASE("saw: the plan as JSON, exactly the fields that scripts read")
{
    const json plan = plan_of("length,count,label\n1240,2,a\n980.5,1,b\n", "length\n6000\n");
    CHECK(plan.size() == 6);
    REQUIRE(plan["bars"].size() == 1);
    CHECK(plan["bars"][0] == json::parse(R"({"stock_mm": 6000, "count": 1, "pieces_mm": [1240.0, 1240.0, 980.5], "leftover_mm": 2530.5})"));
    CHECK(plan["bars_used"] == 1);
    CHECK(plan["cost"] == 6000);
    CHECK(plan["lower_bound"] == 6000);
    CHECK(plan["proven_optimal"] == true);
    CHECK(plan["seconds"].get<double>() >= 0);
}

TEST_CASE("saw: kerf and trims are the options', the kerf else the workshop's, lengths in the units of the call")
{
    const std::string pieces = "length,count,label\n1000,6,\n";
    CHECK(plan_of(pieces, "length\n6000\n")["bars_used"] == 2);  // 3 mm kerf
    CHECK(plan_of(pieces, "length\n6000\n", {"--kerf", "0"})["bars_used"] == 1);
    CHECK(plan_of(pieces, "length\n6000\n", {"--kerf", "0", "--trim-start", "0.001"})["bars_used"] == 2);
    CHECK(plan_of(pieces, "length\n6000.001\n", {"--kerf", "0", "--trim-end", "0.001"})["bars_used"] == 1);
    const json inches = plan_of("length,count\n10,2\n", "length\n20-1/8\n", {"--units", "in", "--kerf", "1/8"});
    CHECK(inches["bars_used"] == 1);
    CHECK(inches["bars"][0]["pieces_mm"][0] == 254.0);
    CHECK(inches["bars"][0]["stock_mm"] == 511.175);
    CHECK(inches["bars"][0]["leftover_mm"] == 0.0);
}

TEST_CASE("saw: a million pieces of one length")
{
    const json plan = plan_of("length,count\n742,1000000\n", "length\n6000\n");
    CHECK(plan["bars_used"] == 125'000);
    CHECK(plan["bars"].size() == 1);
    CHECK(plan["bars"][0]["count"] == 125'000);
    CHECK(plan["proven_optimal"] == true);
}

TEST_CASE("saw: without --stock the workshop's stock is used")
{
    const Folder folder;
    write_all(folder.file("frame.csv"), "length,count,label\n1240 mm,9,leg\n");
    const Run one = run(saw_in(folder, "frame.csv"));
    INFO(one.err);
    CHECK(one.exit == 0);
    for (const char* name : {"frame-saw-plan.pdf", "frame-saw-plan.xlsx", "frame-saw-plan.json"}) CHECK(std::filesystem::exists(folder.file(name)));
    CHECK(has(one.out, "frame: 3 BARS FOR 9 PIECES"));
    CHECK(has(one.out, "2 × 6000 mm and 1 × 3000 mm"));
    CHECK(has(one.out, "proven: no plan costs less"));
    for (const std::string& line : lines_of(one.out))
        if (line.rfind("  wrote", 0) != 0) CHECK(code_points(line).size() <= 80);
    CHECK(run(saw_in(folder, "frame.csv")).exit == 3);
    CHECK(run(saw_in(folder, "frame.csv", {"--replace", "--formats", "pdf,xlsx,png,svg", "--paper", "letter", "--units", "in"})).exit == 0);
    CHECK(folder.count() == 6);
}

TEST_CASE("saw: documents that exist are refused before the plan, unless --replace is given")
{
    const Folder folder;
    std::vector<std::string> options = write_long_lists(folder);
    options.insert(options.end(), {"--seconds", "2"});
    write_all(folder.file("long-saw-plan.xlsx"), "mine");
    std::ostringstream out, err;
    Console terminal{out, err, false, true};
    CHECK(run_program(saw_in(folder, "long.csv", options), terminal) == Outcome::unwritable);
    CHECK(has(err.str(), "long-saw-plan.xlsx exists already: --replace overwrites it"));
    CHECK_FALSE(has(err.str(), "s left"));  // said after one second of planning
    CHECK(out.str().empty());
    CHECK(read_all(folder.file("long-saw-plan.xlsx")) == "mine");
    CHECK(folder.count() == 3);
    options.insert(options.end(), {"--formats", "json"});
    CHECK(run(saw_in(folder, "long.csv", options)).exit == 0);
}

TEST_CASE("saw: a workshop without stock needs --stock")
{
    const Folder folder;
    write_all(folder.file("series.xml"), read_all(config_folder + "/series.xml"));
    write_all(folder.file("workshop.xml"),
              "<workshop units=\"mm\"><limits/><saw step=\"1\" kerf=\"3\" plus-minus=\"1\" least-cut=\"5\"/><measuring plus-minus=\"2\"/></workshop>");
    write_all(folder.file("p.csv"), "length,count\n1240,9\n");
    const Run none = run({"saw", "--config", folder.path(), "--output", folder.path(), folder.file("p.csv")});
    CHECK(none.exit == 2);
    CHECK(has(none.err, "holds no stock; give --stock FILE"));
    CHECK(folder.count() == 3);
}

TEST_CASE("saw: the faults of both files in one go, by line and column, and nothing written")
{
    const Folder folder;
    write_all(folder.file("p.csv"), "length,count,label\n0,1,a\n742,x,b\n");
    write_all(folder.file("s.csv"), "length,count,cost\n6000,,-1\n6 m,,\n");
    const Run both = run(saw_in(folder, "p.csv", {"--stock", folder.file("s.csv")}));
    CHECK(both.exit == 2);
    const auto lines = lines_of(both.err);
    REQUIRE(lines.size() == 4);
    CHECK(has(lines[0], "p.csv:2:1: "));
    CHECK(has(lines[1], "p.csv:3:5: "));
    CHECK(has(lines[2], "s.csv:2:7: "));
    CHECK(has(lines[3], "s.csv:3:1: "));
    CHECK(folder.count() == 2);
    CHECK(run(saw_in(folder, "missing.csv", {"--stock", folder.file("s.csv")})).exit == 3);
}

TEST_CASE("saw: what cannot be cut is refused with exact figures, and nothing is written")
{
    const Folder folder;
    write_all(folder.file("s.csv"), "length,count,cost\n6000,1,\n3000,1,\n");
    const auto refused = [&](const std::string& pieces, const std::vector<std::string>& more = {}) {
        write_all(folder.file("p.csv"), pieces);
        std::vector<std::string> all{"--stock", folder.file("s.csv")};
        all.insert(all.end(), more.begin(), more.end());
        const Run one = run(saw_in(folder, "p.csv", all));
        CHECK(one.exit == 1);
        CHECK(folder.count() == 2);
        CHECK(one.out.empty());
        return one.err;
    };
    const auto longer = lines_of(refused("length,count\n5990.001,1\n100,1\n6500,2\n", {"--trim-start", "10"}));
    REQUIRE(longer.size() == 2);
    CHECK(has(longer[0], "p.csv:2:1: 5990.001 mm is longer than every bar; the longest bar holds 5990 mm between its trims"));
    CHECK(has(longer[1], "p.csv:4:1: 6500 mm is longer than every bar"));
    CHECK(has(refused("length,count\n2000,5\n"), "the stock is too short by 1009 mm, cuts and trims counted"));
    CHECK(has(refused("length,count\n1600,5\n"), "the stock is too small for all pieces"));
}

TEST_CASE("saw: a list that holds no piece is a fault of the list")
{
    const Folder folder;
    write_all(folder.file("p.csv"), "length,count,label\n,,\n");
    const Run empty = run(saw_in(folder, "p.csv"));
    CHECK(empty.exit == 2);
    CHECK(has(empty.err, "p.csv:1:1: the list holds no piece to cut; write one a line under its header"));
    CHECK(folder.count() == 1);
}

TEST_CASE("saw: documents are named after the list, whatever it is called, as long as it is text")
{
    const Folder folder;
    const std::string list = "length,count,label\n100,1,=1+1\n";
    for (const std::string& name : {std::string("a&b <c>"), std::string(200, 'n'), std::string("x.tar"), std::string("Rohre für Łąka")}) {
        write_all(folder.file(name + ".csv"), list);
        const Run one = run(saw_in(folder, name + ".csv"));
        INFO(name << one.err);
        CHECK(one.exit == 0);
        CHECK(has(one.out, name + ": 1 BAR FOR 1 PIECE\n"));
        for (const char* end : {"-saw-plan.pdf", "-saw-plan.xlsx", "-saw-plan.json"}) CHECK(std::filesystem::exists(folder.file(name + end)));
    }
    write_all(folder.file("\xFF.csv"), list);
    const Run no_text = run(saw_in(folder, "\xFF.csv"));
    CHECK(no_text.exit == 2);
    CHECK(has(no_text.err, "is not UTF-8 text"));
    // A terminal would obey the first, no workbook and no drawing can hold the second.
    for (const char* name : {"\x1B[31m.csv", "\xEF\xBF\xBF.csv", "a\nb.csv"}) {
        write_all(folder.file(name), list);
        const Run control = run(saw_in(folder, name));
        CHECK(control.exit == 2);
        CHECK(has(control.err, "the name of the file of pieces holds the "));
        CHECK_FALSE(has(control.err, "\x1B"));
    }
}

TEST_CASE("saw: bad usage says what would be right")
{
    CHECK(has(run({"saw"}).err, "give one file of pieces"));
    CHECK(has(run({"saw", "a.csv", "b.csv"}).err, "takes one file of pieces"));
    CHECK(has(run({"saw", "--kerf", "3 cm", "a.csv"}).err, "--kerf \"3 cm\" has an unknown unit"));
    CHECK(has(run({"saw", "--trim-start", "x", "a.csv"}).err, "--trim-start \"x\" is not a length"));
    CHECK(has(run({"saw", "--trim-end", "-1", "a.csv"}).err, "--trim-end"));
    CHECK(has(run({"saw", "--seconds", "soon", "a.csv"}).err, "--seconds \"soon\" is not a number"));
    for (const char* option : {"--stock", "--kerf", "--trim-start", "--trim-end", "--seconds"}) CHECK(has(run({"saw", "--help"}).out, option));
    CHECK(run({"saw", "--kerf", "3 cm", "a.csv"}).exit == 2);
}

TEST_CASE("saw: more different bars than paper can hold are refused but for JSON")
{
    const Folder folder;
    std::string pieces = "length,count,label\n";
    for (int i = 0; i <= 20'000; ++i) pieces += fmt::format("5999,1,{}\n", i);
    write_all(folder.file("many.csv"), pieces);
    const Run paper = run(saw_in(folder, "many.csv"));
    CHECK(paper.exit == 1);
    CHECK(has(paper.err, "20001 pieces"));
    CHECK(folder.count() == 1);
    CHECK(run(saw_in(folder, "many.csv", {"--formats", "json"})).exit == 0);
}

TEST_CASE("saw: the time allowed is kept, progress is said past one second on a terminal only, and taken off again")
{
    const Folder folder;
    const auto options_with = [stock = write_long_lists(folder)](const char* seconds) {
        std::vector<std::string> options{"--formats", "json", "--replace", "--seconds", seconds};
        options.insert(options.end(), stock.begin(), stock.end());
        return options;
    };
    std::ostringstream out, err;
    Console terminal{out, err, false, true};
    CHECK(run_program(saw_in(folder, "long.csv", options_with("3")), terminal) == Outcome::answered);
    const json plan = json::parse(read_all(folder.file("long-saw-plan.json")));
    CHECK(plan["seconds"].get<double>() >= 2.9);
    CHECK(plan["cost"].get<double>() > plan["lower_bound"].get<double>());
    CHECK(has(out.str(), "The time allowed was up"));
    CHECK(has(err.str(), " s left, Ctrl-C takes the best plan so far: cost "));
    CHECK(err.str().back() == '\r');
    const Run at_once = run(saw_in(folder, "long.csv", options_with("0")));
    CHECK(at_once.exit == 0);
    CHECK(at_once.err.empty());
}
