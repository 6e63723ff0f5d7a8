// How a tablet is let in, and how it is not.
#include <nlohmann/json.hpp>

#include "bench/bench_house.hpp"
#include "commands/program.hpp"
#include "routes.hpp"
#include "secrets.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// A server of both doors, and what a tablet does.
struct BenchAndTablet {
    World world{};
    Bench bench{desk_in(world, true), house_in(world, true)};

    nlohmann::json pairing() { return nlohmann::json::parse(bench.respond(get("/pairing")).body); }
    std::string code() { return pairing()["code"]; }
    Reply pair(const std::string& code) { return bench.respond(post("/pair", "<pair code=\"" + code + "\"/>", Door::network)); }
    int ask(const std::string& cookie)
    {
        const Request request = get("/catalogue", Door::network);
        return bench.respond(cookie.empty() ? request : with(request, "cookie", cookie)).status;
    }
};

std::string token_cookie(const Reply& reply) { return reply.cookie.substr(0, reply.cookie.find(';')); }

}  // namespace

TEST_CASE("pairing: the PC's own page shows a code, with which a tablet is let in")
{
    BenchAndTablet workshop;
    CHECK(workshop.ask("") == 401);
    const auto shown = workshop.pairing();
    CHECK(shown["address"] == "http://192.168.1.20:8117/");
    CHECK(shown["seconds"] == 600);
    CHECK(shown["tablets"].empty());
    const Reply paired = workshop.pair(shown["code"]);
    CHECK(paired.status == 200);
    CHECK(paired.cookie == "shaftcut-bench=token1; Max-Age=15552000; Path=/; HttpOnly; SameSite=Strict");
    CHECK(header_of(paired, "set-cookie") == paired.cookie);
    CHECK(workshop.ask("shaftcut-bench=token1") == 200);
    CHECK(workshop.ask("other=1; shaftcut-bench=token1; more=2") == 200);
    const auto tablets = workshop.pairing()["tablets"];
    REQUIRE(tablets.size() == 1);
    CHECK(tablets[0] == nlohmann::json{{"number", 1}, {"paired", day_of(workshop.world.now)}, {"client", "192.168.1.31"}});
}

TEST_CASE("pairing: who is not paired gets the page and its files, the words of the pairing screen, and nothing else")
{
    BenchAndTablet workshop;
    const std::string job = read_all(sample("plain-cut"));
    CHECK(workshop.bench.respond(get("/", Door::network)).status == 200);
    std::size_t refused = 0;
    for (const Route& route : routes()) {
        if (route.path == "/pair") continue;
        INFO(route.path);
        const std::string path(route.path);
        const Reply posted = workshop.bench.respond(post(path, job, Door::network)), got = workshop.bench.respond(get(path, Door::network));
        // Nor is it told what other ways of asking there would be.
        CHECK(posted.status == (path == "/pairing" ? 404 : 401));
        CHECK(got.status == posted.status);
        if (posted.status == 401) CHECK(nlohmann::json::parse(posted.body)["words"]["pair-code"] == "Code");
        ++refused;
    }
    CHECK(refused == routes().size() - 1);
}

TEST_CASE("pairing: other cookies let nobody in")
{
    BenchAndTablet workshop;
    workshop.pair(workshop.code());
    for (const char* cookie : {"shaftcut-bench=token2", "shaftcut-bench=", "shaftcut-bench", "token1", "shaftcut-bench2=token1", "shaftcut-bench=token1x", "shaftcut-bench=token1; shaftcut-bench=token1",
                               "shaftcut-bench=token", "shaftcut-bench= token1"}) {
        INFO(cookie);
        CHECK(workshop.ask(cookie) == 401);
    }
    CHECK(workshop.bench.respond(with(with(get("/catalogue", Door::network), "cookie", "shaftcut-bench=token1"), "cookie", "a=b")).status == 401);
    // The hash that the file keeps is no token.
    CHECK(workshop.ask("shaftcut-bench=" + workshop.world.tablets.at(0).token_hash) == 401);
}

TEST_CASE("pairing: five tries, then no code holds until the PC asks for another")
{
    BenchAndTablet workshop;
    const std::string code = workshop.code();
    for (int i = 0; i < 4; ++i) CHECK(workshop.pair("00000000").status == 403);
    CHECK(workshop.code() == code);
    CHECK(workshop.pair(code).status == 200);

    const std::string second = workshop.code();
    CHECK(second != code);
    for (int i = 0; i < 5; ++i) CHECK(workshop.pair("00000000").status == 403);
    CHECK(workshop.pair(second).status == 403);
    const std::string third = workshop.code();
    CHECK(third != second);
    CHECK(workshop.pair(second).status == 403);
    CHECK(workshop.pair(third).status == 200);
}

TEST_CASE("pairing: a code holds for one tablet and ten minutes, and none does that nobody saw")
{
    BenchAndTablet workshop;
    CHECK(workshop.pair("10000001").status == 403);  // the first that there would be
    const std::string code = workshop.code();
    CHECK(workshop.pair(code).status == 200);
    CHECK(workshop.pair(code).status == 403);
    const std::string late = workshop.code();
    workshop.world.seconds += 599;
    CHECK(workshop.code() == late);
    CHECK(workshop.pairing()["seconds"] == 1);
    workshop.world.seconds += 1;
    CHECK(workshop.pair(late).status == 403);
    CHECK(workshop.code() != late);
}

TEST_CASE("pairing: a paired tablet stays so over a restart, for 180 days, until it is revoked")
{
    BenchAndTablet workshop;
    const std::string first = token_cookie(workshop.pair(workshop.code())), second = token_cookie(workshop.pair(workshop.code()));
    Bench again(desk_in(workshop.world, true), house_in(workshop.world, true));
    const auto ask_again = [&](const std::string& cookie) { return again.respond(with(get("/catalogue", Door::network), "cookie", cookie)).status; };
    CHECK(ask_again(first) == 200);
    workshop.world.tablets.erase(workshop.world.tablets.begin());
    CHECK(ask_again(first) == 401);
    CHECK(ask_again(second) == 200);
    workshop.world.now += paired_for_seconds - 1;
    CHECK(ask_again(second) == 200);
    workshop.world.now += 1;
    CHECK(ask_again(second) == 401);
}

TEST_CASE("pairing: a tablet that cannot be kept is not let in, and its code still holds")
{
    BenchAndTablet workshop;
    const std::string code = workshop.code();
    workshop.world.writable = false;
    CHECK(workshop.pair(code).status == 500);
    workshop.world.writable = true;
    CHECK(workshop.pair(code).status == 200);
}

TEST_CASE("pairing: a server of this machine alone has none")
{
    World world;
    Bench bench(desk_in(world), house_in(world, false));
    CHECK(bench.respond(get("/pairing")).status == 404);
    CHECK(bench.respond(post("/pair", "<pair code=\"10000001\"/>")).status == 404);
    CHECK(nlohmann::json::parse(bench.respond(get("/catalogue")).body)["pairing"] == false);
}

TEST_CASE("pairing: the PC's own page is told that tablets can be paired, a tablet's is not")
{
    BenchAndTablet workshop;
    const std::string cookie = token_cookie(workshop.pair(workshop.code()));
    CHECK(nlohmann::json::parse(workshop.bench.respond(get("/catalogue")).body)["pairing"] == true);
    CHECK(nlohmann::json::parse(workshop.bench.respond(with(get("/catalogue", Door::network), "cookie", cookie)).body)["pairing"] == false);
}

TEST_CASE("pairing: a code is eight digits in one form")
{
    CHECK(code_in("<pair code=\"12345678\"/>") == "12345678");
    for (const char* body : {"", "<pair code=\"1234567\"/>", "<pair code=\"123456789\"/>", "<pair code=\"1234567a\"/>", "<pair code='12345678'/>", "<pair code=\"12345678\"/>\n", "12345678", "<pair code=\"\"/>", "<pair code=\"/>"})
        CHECK(code_in(body).empty());
}

TEST_CASE("tablets: what is written reads back, and what does not lets nobody in")
{
    const std::string hash = sha256("token");
    const std::vector<Tablet> tablets{{1, hash, 1'795'000'000, "192.168.1.31"}, {7, sha256("other"), 0, "fd00::1"}};
    CHECK(read_tablets(tablets_text(tablets)) == tablets);
    CHECK(read_tablets("").empty());
    CHECK(read_tablets("another file\n1 " + hash + " 5 a\n").empty());
    const std::string begin = "shaftcut-bench-tablets-1\n";
    for (const std::string& line : {"1 " + hash + " 5", "0 " + hash + " 5 a", "1 " + hash.substr(1) + " 5 a", "1 X" + hash.substr(1) + " 5 a", "1 " + hash + " -5 a", "1 " + hash + " 5 a b", "x " + hash + " 5 a"})
        CHECK(read_tablets(begin + line + "\n").empty());
    CHECK(tablet_of(tablets, "token", 1'795'000'001)->number == 1);
    CHECK_FALSE(tablet_of(tablets, "other", 1'795'000'001));
    CHECK(with_tablet(tablets, hash, 1'795'000'001, "a").back().number == 8);
    CHECK(with_tablet(tablets, hash, 1'795'000'001, "a").size() == 2);
    CHECK(day_of(1'795'000'000) == "2026-11-18");
}
