// What another site's page, a guesser and a flood may not do.
#include "bench/bench_house.hpp"
#include "commands/program.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// By a server of both doors.
int status_of(Request request)
{
    World world;
    Bench bench(desk_in(world, true), house_in(world, true));
    return bench.respond(std::move(request)).status;
}

const std::string& job()
{
    static const std::string bytes = read_all(sample("plain-cut"));
    return bytes;
}

}  // namespace

TEST_CASE("bench guard: this server's own page is answered")
{
    CHECK(status_of(get("/")) == 200);
    CHECK(status_of(post("/answer", job())) == 200);
    CHECK(status_of(with(without(get("/"), "host"), "host", "localhost:8117")) == 200);
    CHECK(status_of(with(without(get("/"), "host"), "host", "LocalHost:8117")) == 200);
    CHECK(status_of(with(get("/"), "sec-fetch-site", "none")) == 200);
    CHECK(status_of(with(post("/answer", job()), "sec-fetch-site", "same-origin")) == 200);
    CHECK(status_of(with(without(post("/answer", job()), "content-type"), "content-type", "application/xml; charset=UTF-8")) == 200);
}

TEST_CASE("bench guard: a name that leads here but is not this server's is refused")
{
    for (const char* name : {"evil.example:8117", "127.0.0.1", "127.0.0.1:8118", "127.0.0.1:8117.evil.example", "192.168.1.20:8117", "", "127.0.0.1:8117 "}) {
        INFO(name);
        CHECK(status_of(with(without(get("/"), "host"), "host", name)) == 403);
    }
    CHECK(status_of(without(get("/"), "host")) == 403);
    CHECK(status_of(with(get("/"), "host", here)) == 403);
    // Through the network's door the machine's own names are another's.
    CHECK(status_of(with(without(get("/", Door::network), "host"), "host", here)) == 403);
}

TEST_CASE("bench guard: without a network's door nothing is answered through it")
{
    World world;
    Bench bench(desk_in(world), house_in(world, false));
    CHECK(bench.respond(get("/", Door::network)).status == 403);
}

TEST_CASE("bench guard: what another page sends is refused")
{
    for (const char* origin : {"http://evil.example", "https://127.0.0.1:8117", "http://127.0.0.1", "http://localhost:8117", "http://127.0.0.1:8118", "null", ""}) {
        INFO(origin);
        CHECK(status_of(with(without(post("/answer", job()), "origin"), "origin", origin)) == 403);
        CHECK(status_of(with(get("/"), "origin", origin)) == 403);
    }
    CHECK(status_of(without(post("/answer", job()), "origin")) == 403);
    CHECK(status_of(with(post("/answer", job()), "origin", std::string("http://") + here)) == 403);
    for (const char* site : {"cross-site", "Cross-Site"}) {
        INFO(site);
        CHECK(status_of(with(get("/"), "sec-fetch-site", site)) == 403);
        CHECK(status_of(with(post("/answer", job()), "sec-fetch-site", site)) == 403);
    }
    CHECK(status_of(with(with(get("/"), "sec-fetch-site", "none"), "sec-fetch-site", "cross-site")) == 403);
}

TEST_CASE("bench guard: what a form can send without asking first is no job")
{
    for (const char* type : {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data", "application/xml, text/plain", "text/xml", ""}) {
        INFO(type);
        CHECK(status_of(with(without(post("/answer", job()), "content-type"), "content-type", type)) == 403);
    }
    CHECK(status_of(without(post("/answer", job()), "content-type")) == 403);
    CHECK(status_of(with(post("/answer", job()), "content-type", "application/xml")) == 403);
}

TEST_CASE("bench guard: a port 80 is left out by browsers, and IPv6 stands in brackets")
{
    CHECK(server_names("192.168.1.20", 80).network == std::vector<std::string>{"192.168.1.20:80", "192.168.1.20"});
    CHECK(server_names("FD00::20", 8117).network == std::vector<std::string>{"[fd00::20]:8117"});
    CHECK(server_names("", 8117).network.empty());
}

TEST_CASE("bench guard: 600 requests a minute of each client, whatever they ask")
{
    World world;
    Bench bench(desk_in(world, true), house_in(world, true));
    const Request bad = with(get("/"), "origin", "http://evil.example");
    for (int i = 0; i < 300; ++i) CHECK(bench.respond(bad).status == 403);
    for (int i = 0; i < 300; ++i) CHECK(bench.respond(get("/")).status == 200);
    CHECK(bench.respond(get("/")).status == 429);
    CHECK(bench.respond(get("/", Door::network)).status == 200);  // another client
    world.seconds += 59.9;
    CHECK(bench.respond(get("/")).status == 429);
    world.seconds += 0.1;
    CHECK(bench.respond(get("/")).status == 200);
}

TEST_CASE("bench guard: however many clients there are, few are remembered")
{
    RateLimit limit;
    for (int i = 0; i < 10'000; ++i) limit.allows("10.0." + std::to_string(i / 256) + "." + std::to_string(i % 256), 0);
    CHECK(limit.clients() == 4096);
    CHECK(limit.allows("10.0.0.1", 1));
    CHECK_FALSE(limit.allows("192.168.1.1", 1));
    CHECK(limit.allows("192.168.1.1", 60));
    CHECK(limit.clients() == 1);
}

TEST_CASE("bench: every reply holds a browser to the policy, and bears no client's text in a header")
{
    World world;
    Bench bench(desk_in(world, true, true), house_in(world, true));
    const std::string text = "evil\r\nset-cookie: a=b";
    const std::vector<Request> asked{get("/"), get("/catalogue"), get("/nothing"), get("/" + text), post("/answer", job()), post("/answer", text), post("/answer?units=" + text, job()),
                                     post("/cut-sheet", job()), with(get("/"), "origin", text), get("/", Door::network), get("/catalogue", Door::network),
                                     with(get("/catalogue", Door::network), "cookie", text), post("/pair", text, Door::network), post("/print?what=" + text, job())};
    for (const Request& request : asked) {
        const Reply reply = bench.respond(request);
        INFO(request.target << " " << reply.status);
        CHECK(header_of(reply, "content-security-policy") == "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
        CHECK(header_of(reply, "x-content-type-options") == "nosniff");
        CHECK(header_of(reply, "cache-control") == "no-store");
        CHECK(header_of(reply, "cross-origin-resource-policy") == "same-origin");
        CHECK(header_of(reply, "access-control-allow-origin").empty());
        for (const Header& header : headers_of(reply)) CHECK((header.name + header.value).find_first_of("\r\n") == std::string::npos);
        for (const Header& header : headers_of(reply)) CHECK(header.value.find("evil") == std::string::npos);
    }
}

TEST_CASE("bench: a file's name is one that every disk takes, or none")
{
    Reply reply{200, "application/pdf", ""};
    for (const char* name : {"a b.pdf", "a\"b.pdf", "a\r\nb.pdf", "../a.pdf", ".pdf", "ä.pdf", ""}) {
        INFO(name);
        reply.file_name = name;
        CHECK(header_of(reply, "content-disposition").empty());
    }
    reply.file_name = "K-1042_a.b-cut-sheet.pdf";
    CHECK(header_of(reply, "content-disposition") == "attachment; filename=\"K-1042_a.b-cut-sheet.pdf\"");
}
