// The bench page's server, from a client's bytes to the reply's headers, without a socket.
#include <algorithm>
#include <set>

#include "bench.hpp"
#include "serving/bench_server.hpp"
#include "fuzz/targets.hpp"
#include "support/engine.hpp"

namespace shaftcut::fuzz {
namespace {

// A server of both doors whose clock stands still at minute after minute, so that nobody has asked too often.
struct FuzzedServer {
    double seconds = 0;
    Bench bench;

    FuzzedServer() : bench(desk(), house()) {}

    static Desk desk()
    {
        Desk desk{test::demo_engine(), {}};
        desk.network = true;
        desk.print = [](const Document&) { return true; };
        return desk;
    }
    House house()
    {
        House house{server_names("192.168.1.20", 8117), [this] { return seconds += 100; }};
        const std::string hash = "0000000000000000000000000000000000000000000000000000000000000000";
        house.pairing.emplace(PairingMeans{[this] { return seconds; }, [] { return std::int64_t{0}; }, [] { return std::string("12345678"); }, [] { return std::string("token"); },
                                           [hash] { return std::vector<Tablet>{{1, hash, 0, "a"}}; }, [](const std::string&, std::int64_t, const std::string&) { return true; }});
        return house;
    }
};

FuzzedServer& server()
{
    static FuzzedServer fuzzed;
    return fuzzed;
}

std::string wrong_with(const Reply& reply)
{
    static const std::set<int> known{200, 400, 401, 403, 404, 405, 411, 413, 422, 429, 431, 500};
    if (known.count(reply.status) == 0) return "a status that is none of this server's: " + std::to_string(reply.status);
    // No paper can be drawn without fonts; nothing else may fail.
    if (reply.status == 500 && reply.body.find("font") == std::string::npos) return "an answer failed: " + reply.body;
    bool has_policy = false;
    for (const Header& header : headers_of(reply)) {
        if ((header.name + header.value).find_first_of(std::string("\r\n\0", 3)) != std::string::npos) return "a header with a line's end: " + header.name;
        has_policy = has_policy || header.name == "content-security-policy";
    }
    return has_policy ? "" : "a reply without the policy";
}

// Nothing but the page comes in through the network's door without a token.
std::string wrong_from_network(Request request)
{
    request.door = Door::network;
    const bool posts = request.method == Method::post;
    const Reply reply = server().bench.respond(std::move(request));
    if (reply.status == 200 && reply.type == "application/json" && reply.body != "{\"paired\":true}") return "somebody was let in";
    if (reply.status == 200 && posts && reply.cookie.empty()) return "somebody was answered";
    return wrong_with(reply);
}

}  // namespace

std::string try_bench(std::string_view bytes)
{
    auto read = read_request(bytes);
    if (std::holds_alternative<NoReply>(read)) return wrong_with(server().bench.refusal(NoReply::broken));
    Request request = std::move(std::get<Request>(read));
    if (std::string wrong = wrong_from_network(request); !wrong.empty()) return wrong;
    return wrong_with(server().bench.respond(std::move(request)));
}

// The first line is method, target and headers, each after a blank; the rest the body. What HTTP would refuse comes this far.
std::string try_bench_request(std::string_view bytes)
{
    const std::size_t line = std::min(bytes.find('\n'), bytes.size());
    Request request{Method::post, "", {{"host", "127.0.0.1:8117"}, {"origin", "http://127.0.0.1:8117"}, {"content-type", "application/xml"}}, std::string(bytes.substr(std::min(line + 1, bytes.size()))),
                    "127.0.0.1", Door::here};
    const std::string_view first = bytes.substr(0, line);
    const std::size_t blank = std::min(first.find(' '), first.size());
    request.target = first.substr(0, blank);
    if (blank < first.size()) request.headers.push_back({"cookie", std::string(first.substr(blank + 1))});
    if (request.target.starts_with("/pairing") || request.target == "/" || request.target == "/catalogue") request.method = Method::get;
    Request of_network = request;
    of_network.headers[0].value = "192.168.1.20:8117";
    of_network.headers[1].value = "http://192.168.1.20:8117";
    if (std::string wrong = wrong_from_network(std::move(of_network)); !wrong.empty()) return wrong;
    return wrong_with(server().bench.respond(std::move(request)));
}

}  // namespace shaftcut::fuzz
