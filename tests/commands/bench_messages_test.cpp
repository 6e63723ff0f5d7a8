// What HTTP's bytes become.
#include "serving/bench_server.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

namespace {

const std::string begin = "POST /answer?units=mm HTTP/1.1\r\nHOST: 127.0.0.1:8117\r\nX-Thing:  a b \r\n";

}  // namespace

TEST_CASE("bench messages: method, target, headers in small letters, and the body")
{
    const auto read = read_request(begin + "Content-Length: 6\r\n\r\n<job/>");
    const auto* request = std::get_if<Request>(&read);
    REQUIRE(request);
    CHECK(request->method == Method::post);
    CHECK(request->target == "/answer?units=mm");
    CHECK(request->headers == std::vector<Header>{{"host", "127.0.0.1:8117"}, {"x-thing", "a b"}, {"content-length", "6"}});
    CHECK(request->body == "<job/>");
    CHECK(std::get<Request>(read_request("GET / HTTP/1.1\r\n\r\n")).method == Method::get);
    CHECK(std::get<Request>(read_request("DELETE / HTTP/1.1\r\n\r\n")).method == Method::other);
}

TEST_CASE("bench messages: why a request is refused")
{
    const auto refused = [](const std::string& bytes) { return std::get<NoReply>(read_request(bytes)); };
    CHECK(refused(begin + "Content-Length: 6\r\n\r\n<job") == NoReply::too_slow);
    CHECK(refused(begin) == NoReply::too_slow);
    CHECK(refused("") == NoReply::too_slow);
    CHECK(refused(begin + "\r\n") == NoReply::no_length);
    CHECK(refused(begin + "Transfer-Encoding: chunked\r\n\r\n") == NoReply::no_length);
    CHECK(refused("GET / HTTP/1.1\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n") == NoReply::no_length);
    CHECK(refused(begin + "Content-Length: 6\r\nContent-Length: 6\r\n\r\n<job/>") == NoReply::broken);
    CHECK(refused(begin + "Content-Length: 6,6\r\n\r\n<job/>") == NoReply::broken);
    CHECK(refused(begin + "Content-Length: 262145\r\n\r\n") == NoReply::too_long);
    CHECK(refused(begin + "A: " + std::string(9000, 'a') + "\r\n\r\n") == NoReply::long_header);
    CHECK(refused("no request\r\n\r\n") == NoReply::broken);
}
