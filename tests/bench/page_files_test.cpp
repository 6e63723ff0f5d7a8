// The page's own files: as they are, or packed, and no other.
#include "page_files.hpp"

#include <algorithm>
#include <zlib.h>

#include "bench/bench_house.hpp"
#include "commands/program.hpp"
#include "reply.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// Of bytes packed by gzip; empty where they are not, or not `size` bytes.
std::string unpacked(const std::string& packed, std::size_t size)
{
    std::string bytes(size + 1, '\0'), in = packed;
    z_stream stream{};
    REQUIRE(inflateInit2(&stream, 16 + MAX_WBITS) == Z_OK);
    stream.next_in = reinterpret_cast<Bytef*>(in.data());
    stream.avail_in = static_cast<uInt>(in.size());
    stream.next_out = reinterpret_cast<Bytef*>(bytes.data());
    stream.avail_out = static_cast<uInt>(bytes.size());
    const int result = inflate(&stream, Z_FINISH);
    bytes.resize(stream.total_out);
    inflateEnd(&stream);
    return result == Z_STREAM_END ? bytes : std::string();
}

}  // namespace

TEST_CASE("bench: the page's files are served as they are, and no other")
{
    World world;
    Bench bench{desk_in(world), house_in(world, false)};
    REQUIRE(!page_files().empty());
    for (const PageFile& file : page_files()) {
        const std::string name(file.name), path = name == "bench.html" ? "/" : "/" + name;
        INFO(name);
        const Reply reply = bench.respond(get(path));
        CHECK(reply.status == 200);
        CHECK(reply.body == read_all(source_folder + "/src/bench/page/" + name));
        CHECK(reply.type.starts_with("text/"));
        CHECK(bench.respond(post(path, "")).status == 405);
    }
    for (const char* path : {"/../src/main.cpp", "/..%2f", "/page/bench.html", "//", "/bench.html/", "/config/series.xml", "/etc/passwd", "/%00", "/ "}) CHECK(bench.respond(get(path)).status == 404);
    for (const char* path : {"", "bench.html", "http://127.0.0.1:8117/", "*", "/?a=%", "/?a=%4", "/?a=%zz"}) CHECK(bench.respond(get(path)).status == 400);
    CHECK(bench.respond(get("/" + std::string(999, 'a'))).status == 404);
    CHECK(bench.respond(get("/" + std::string(1000, 'a'))).status == 400);
}

TEST_CASE("bench: the page's files come packed to who takes that, and the whole page so in less than 60 KB")
{
    World world;
    Bench bench{desk_in(world), house_in(world, false)};
    std::size_t all = 0;
    for (const PageFile& file : page_files()) {
        Request request = get("/" + std::string(file.name));
        request.headers.push_back({"accept-encoding", "deflate, gzip, br"});
        const Reply reply = bench.respond(request);
        const auto headers = headers_of(reply);
        INFO(file.name);
        CHECK(std::find(headers.begin(), headers.end(), Header{"content-encoding", "gzip"}) != headers.end());
        CHECK(unpacked(reply.body, file.bytes.size()) == file.bytes);
        all += reply.body.size();
    }
    CHECK(all < 60'000);
    for (const char* form : {"", "identity", "gzip;q=0", "xgzip", "gzipx"}) {
        Request request = get("/");
        request.headers.push_back({"accept-encoding", form});
        CHECK(!bench.respond(request).packed);
    }
    CHECK(!bench.respond(get("/")).packed);
}
