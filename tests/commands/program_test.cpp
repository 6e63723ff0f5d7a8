#include "commands/program.hpp"

#include <regex>

#include "support/catch.hpp"
#include "text.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {
bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }
}  // namespace

TEST_CASE("help lists every command, and every command explains itself")
{
    const Run help = run({"--help"});
    CHECK(help.exit == 0);
    for (const CommandRow& row : commands()) {
        CHECK(has(help.out, row.name));
        const Run own = run({row.name, "--help"});
        CHECK(own.exit == 0);
        CHECK(has(own.out, std::string("shaftcut ") + row.name));
        for (const char* option : {"--config", "--units", "--help", "--version"}) CHECK(has(own.out, option));
        const bool makes_documents = row.command != CommandName::catalogue;
        for (const char* option : {"--output", "--paper", "--replace"}) CHECK(has(own.out, option) == makes_documents);
        // The bench writes its card and serves everything else.
        CHECK(has(own.out, "--formats") == (makes_documents && row.command != CommandName::bench));
        CHECK(run({row.name, "--version"}).out == run({"--version"}).out);
    }
}

TEST_CASE("the version says what the program was built with")
{
    const std::string version = run({"--version"}).out;
    const std::regex form("shaftcut \\d+\\.\\d+\\.\\d+\nbuilt with \\S.* \\d+\\.\\d+\\.\\d+.*; Boost \\d+\\.\\d+\\.\\d+, pugixml 1\\.\\d+, cairo \\d+\\.\\d+\\.\\d+, "
                          "FreeType \\d+\\.\\d+\\.\\d+, libxlsxwriter \\d+\\.\\d+\\.\\d+, libqrencode \\d+\\.\\d+\\.\\d+, libsodium \\d+\\.\\d+\\.\\d+\n");
    INFO(version);
    CHECK(std::regex_match(version, form));
}

TEST_CASE("bad usage ends with 2 and says what would be right")
{
    CHECK(run({}).exit == 2);
    const Run near = run({"cuts"});
    CHECK(near.exit == 2);
    CHECK(has(near.err, "did you mean cut?"));
    CHECK(run({"cut"}).exit == 2);
    CHECK(has(run({"cut", "--formats", "pfd", "x.xml"}).err, "did you mean pdf?"));
    CHECK(has(run({"cut", "--units", "cm", "x.xml"}).err, "mm or in"));
    CHECK(has(run({"cut", "--paper", "a5", "x.xml"}).err, "a4 or letter"));
    CHECK(has(run({"cut", "--output", "-", "x.xml"}).err, "--formats json"));
    CHECK(has(run({"cut", "--outpt", "x", "x.xml"}).err, "there is no option --outpt; did you mean --output?"));
    CHECK(has(run({"cut", "--replce", "x.xml"}).err, "there is no option --replce; did you mean --replace?"));
    CHECK(has(run({"cut", "--surprise", "x.xml"}).err, "there is no option --surprise; --help lists them"));
    CHECK(has(run({"cut", "--units", "mm", "--units", "in", "x.xml"}).err, "--units is given more than once; give it once"));
    CHECK(has(run({"cut", "x.xml", "--units"}).err, "--units has no value; give it one"));
    CHECK(has(run({"cut", "--units", "", "x.xml"}).err, "--units is empty; give it a value or leave it out"));
    CHECK(has(run({"cut", "--replace=yes", "x.xml"}).err, "--replace takes no value; leave it out"));
    CHECK(has(run({"cut", "--units", " ", "x.xml"}).err, "it takes mm or in"));
    CHECK(run({"catalogue", "--paper", "a4"}).exit == 2);
    CHECK(run({"catalogue", "extra"}).exit == 2);
}

TEST_CASE("JSON to standard output is one document a line, in the order of the arguments")
{
    const Run two = run({"cut", "--config", config_folder, "--formats", "json", "--output", "-", sample("two-tractors"), sample("plain-cut")});
    CHECK(two.exit == 0);
    for (const char* words : {"P-113", "P-101", "CUT"}) CHECK(has(two.err, words));
    CHECK(two.out.rfind("{\"order\":\"P-113\"", 0) == 0);
    const std::size_t line = two.out.find('\n');
    REQUIRE(line != std::string::npos);
    CHECK(two.out.compare(line + 1, 16, "{\"order\":\"P-101\"") == 0);
    CHECK(two.out.find('\n', line + 1) == two.out.size() - 1);
}

TEST_CASE("documents are named by their order and never overwritten unasked")
{
    const Folder folder;
    const std::vector<std::string> call{"cut", "--config", config_folder, "--output", folder.path(), sample("plain-cut")};
    CHECK(run(call).exit == 0);
    for (const char* name : {"P-101-cut-sheet.pdf", "P-101-work-order.xlsx", "P-101.json"}) CHECK(std::filesystem::exists(folder.file(name)));
    write_all(folder.file("P-101.json"), "somebody wrote here");
    const Run again = run(call);
    CHECK(again.exit == 3);
    CHECK(has(again.err, "exists already"));
    CHECK(read_all(folder.file("P-101.json")) == "somebody wrote here");
    std::vector<std::string> replacing = call;
    replacing.emplace_back("--replace");
    CHECK(run(replacing).exit == 0);
    CHECK(has(read_all(folder.file("P-101.json")), "\"P-101\""));
    CHECK(folder.count() == 3);
}

TEST_CASE("the greatest outcome counts, and the other jobs of the call are still done")
{
    const Folder folder;
    const auto cut = [&](std::vector<std::string> jobs) {
        std::vector<std::string> call{"cut", "--config", config_folder, "--output", folder.path(), "--formats", "json", "--replace"};
        call.insert(call.end(), jobs.begin(), jobs.end());
        return run(call);
    };
    CHECK(cut({sample("plain-cut"), sample("refused-overlap")}).exit == 1);
    write_all(folder.file("bad.xml"), "<job/>");
    CHECK(cut({folder.file("bad.xml"), sample("two-tractors")}).exit == 2);
    CHECK(std::filesystem::exists(folder.file("P-113.json")));
    CHECK(cut({folder.file("missing.xml"), sample("inches")}).exit == 3);
    CHECK(std::filesystem::exists(folder.file("P-105.json")));
    const Run twice = cut({sample("plain-cut"), sample("plain-cut")});
    CHECK(twice.exit == 2);
    CHECK(has(twice.err, "is also the order of"));
    std::string small = read_all(sample("plain-cut"));
    write_all(folder.file("small.xml"), small.replace(small.find("P-101"), 1, "p"));
    const Run capitals = cut({sample("plain-cut"), folder.file("small.xml")});
    CHECK(capitals.exit == 2);
    CHECK(has(capitals.err, "small.xml:"));
    CHECK(has(capitals.err, "order \"p-101\" is also the order of"));
    CHECK_FALSE(std::filesystem::exists(folder.file("p-101.json")));
}

TEST_CASE("the terminal's lines keep to 80 columns")
{
    const Folder folder;
    for (const auto& entry : std::filesystem::directory_iterator(source_folder + "/samples")) {
        if (entry.path().extension() != ".xml") continue;
        const Run one = run({"cut", "--config", config_folder, "--output", folder.path(), "--formats", "json", entry.path().string()});
        std::istringstream lines(one.out);
        for (std::string line; std::getline(lines, line);)
            if (line.rfind("  wrote", 0) != 0) CHECK(code_points(line).size() <= 80);
        CHECK_FALSE(has(one.out, "\x1b"));
    }
}

TEST_CASE("the catalogue is listed")
{
    const Run list = run({"catalogue", "--config", config_folder});
    CHECK(list.exit == 0);
    CHECK(has(list.out, "Alder 2 (lemon)"));
    CHECK(run({"catalogue", "--config", "/nowhere"}).exit == 3);
}
