// The command of the bench page: its arguments, its card, its printer.
#include <sys/stat.h>
#include <unistd.h>

#include "bench/bench_house.hpp"
#include "commands/program.hpp"
#include "documents/page/print_checks.hpp"
#include "files/other_programs.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("bench: an argument that cannot be is named, with what would be right")
{
    const std::vector<std::pair<std::vector<std::string>, const char*>> cases{
        {{"--port", "65536"}, "--port \"65536\" is no port"},
        {{"--port", "x"}, "--port \"x\" is no port"},
        {{"--lan", "0.0.0.0"}, "--lan \"0.0.0.0\" is no address"},
        {{"--lan", "127.0.0.1"}, "--lan \"127.0.0.1\" is no address"},
        {{"--lan", "::"}, "--lan \"::\" is no address"},
        {{"--lan", "workshop.example"}, "--lan \"workshop.example\" is no address"},
        {{"--lan", "192.168.1.20 "}, "is no address"},
        {{"--lan", "192.168.001.20"}, "is no address"},
        {{"--lan", "224.0.0.1"}, "is no address"},
        {{"--printer", "-o"}, "--printer \"-o\" is no name"},
        {{"--printer", "a b"}, "--printer \"a b\" is no name"},
        {{"--revoke", "0"}, "--revoke \"0\" is no tablet's number"},
        {{"--card"}, "give --lan with the address"},
        {{"--card", "--lan", "192.168.1.20", "--port", "0"}, "a card holds for one port"},
        {{"--pair", "--tablets"}, "are calls of their own"},
        {{"--tablets", "--revoke", "1"}, "are calls of their own"},
        {{"job.xml"}, "\"job.xml\" is not expected; bench takes options only"},
    };
    for (const auto& [words, fault] : cases) {
        std::vector<std::string> arguments{"bench"};
        arguments.insert(arguments.end(), words.begin(), words.end());
        const Run ended = run(arguments);
        INFO(fault << "\n" << ended.err);
        CHECK(ended.exit == 2);
        CHECK(ended.err.find(fault) != std::string::npos);
    }
}

TEST_CASE("bench: where nobody serves there is no code to show")
{
    const Run ended = run({"bench", "--pair", "--port", "1"});
    CHECK(ended.exit == 3);
    CHECK(ended.err.find("no bench is served on this machine at port 1;") != std::string::npos);
}

TEST_CASE("bench: the card leads to the address, by its code and in letters")
{
    for (const char* paper : {"a4", "letter"})
        for (const auto& [address, name] : {std::pair("192.168.1.20", "http://192.168.1.20:8117/"), std::pair("fd00:1234:5678:9abc:def0:1234:5678:9abc", "http://[fd00:1234:5678:9abc:def0:1234:5678:9abc]:8117/")}) {
            const Folder folder;
            CHECK(run({"bench", "--card", "--lan", address, "--output", folder.path(), "--paper", paper}).out == "wrote " + folder.file("bench-card.pdf") + "\n");
            CHECK(output_of("pdftotext -layout " + folder.file("bench-card.pdf") + " -").find(name) != std::string::npos);
            output_of("pdftoppm -r 50 -gray -singlefile " + folder.file("bench-card.pdf") + " " + folder.file("card"));
            CHECK(output_of("zbarimg -q --raw --nodbus " + folder.file("card.pgm")) == std::string(name) + "\n");
            CHECK(run({"bench", "--card", "--lan", address, "--output", folder.path()}).exit == 3);
            CHECK(run({"bench", "--card", "--lan", address, "--output", folder.path(), "--replace"}).exit == 0);
        }
}

TEST_CASE("bench: a document goes to lp as it is, and what lp says counts")
{
    const Folder folder;
    const auto write_lp = [&](const std::string& lines) {
        write_all(folder.file("lp"), "#!/bin/sh\n" + lines);
        ::chmod(folder.file("lp").c_str(), 0700);
    };
    const std::string path = std::getenv("PATH");
    ::setenv("PATH", (folder.path() + ":" + path).c_str(), 1);
    write_lp("printf '%s|' \"$@\" > '" + folder.file("words") + "'; cat > '" + folder.file("bytes") + "'\n");
    const Document document{"K-1-cut-sheet.pdf", std::string(300'000, 'x') + '\0' + "end"};
    CHECK(print_document("Saw_2", document));
    CHECK(read_all(folder.file("words")) == "-s|-d|Saw_2|-t|K-1-cut-sheet.pdf|-|");
    CHECK(read_all(folder.file("bytes")) == document.bytes);
    // What the bench holds open, such as its sockets, stays its own.
    const int held = ::dup2(STDERR_FILENO, 57);
    REQUIRE(held == 57);
    write_lp("[ ! -e /proc/$$/fd/57 ]\n");
    CHECK(print_document("Saw_2", document));
    ::close(held);
    write_lp("exit 1\n");
    CHECK_FALSE(print_document("Saw_2", document));
    ::setenv("PATH", folder.file("nowhere").c_str(), 1);
    CHECK_FALSE(print_document("Saw_2", document));
    ::setenv("PATH", path.c_str(), 1);
}
