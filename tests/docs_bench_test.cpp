// The page on the bench page's server against the program.
#include <regex>
#include <set>

#include "commands/program.hpp"
#include "guard.hpp"
#include "pairing.hpp"
#include "routes.hpp"
#include "support/catch.hpp"
#include "support/markdown.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("the table of requests to the bench page is the server's")
{
    std::set<std::string> described, served;
    for (const TableRow& row : read_markdown("docs/bench.md").rows_under("What is asked of the server")) {
        REQUIRE(row.cells.size() == 2);
        const std::string method = row.cells[0].substr(1, row.cells[0].find(' ') - 1);
        for (const std::string& span : code_spans(row.cells[0])) {
            const std::size_t path = span.find('/');
            if (path == std::string::npos || span.starts_with("<")) continue;
            described.insert(method + " " + span.substr(path, span.find('?') - path));
        }
    }
    for (const Route& route : routes()) served.insert((route.method == Method::get ? "GET " : "POST ") + std::string(route.path));
    CHECK(described == served);
}

TEST_CASE("what the page says of pairing and of too many requests is so")
{
    const std::string page = read_all(source_folder + "/docs/bench.md");
    CHECK(page.find("| " + std::to_string(most_requests_a_minute) + " a minute | 429") != std::string::npos);
    CHECK(page.find("stays paired for " + std::to_string(paired_for_seconds / (24 * 60 * 60)) + " days") != std::string::npos);
    CHECK(code_holds_seconds == 10 * 60);
    CHECK(code_tries == 5);
    CHECK(page.find("A code holds for ten minutes, for one tablet and for five tries") != std::string::npos);
}

TEST_CASE("the unit of the bench page gives it options that it takes")
{
    const std::string page = read_all(source_folder + "/docs/bench.md"), help = run({"bench", "--help"}).out, unit = read_all(source_folder + "/config/shaftcut-bench.service.in");
    CHECK(unit.find("shaftcut bench $SHAFTCUT_BENCH_OPTIONS") != std::string::npos);
    CHECK(page.find("SHAFTCUT_BENCH_OPTIONS=--lan") != std::string::npos);
    const std::regex option("--(lan|printer|port|open|pair|card|tablets|revoke)\\b");
    int named = 0;
    for (auto at = std::sregex_iterator(page.begin(), page.end(), option); at != std::sregex_iterator(); ++at, ++named) CHECK(help.find(at->str()) != std::string::npos);
    CHECK(named > 5);
}
