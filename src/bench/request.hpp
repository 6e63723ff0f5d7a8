// A request of the bench page as bytes have become it, and nothing of how it came.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace shaftcut {

enum class Method { get, post, other };

// Through which of the server's two doors: that of the machine itself (127.0.0.1), or that of the workshop's network.
enum class Door { here, network };

// `name` in small letters.
struct Header {
    std::string name, value;
    bool operator==(const Header&) const = default;
};

// `target`: as it came, "/answer?units=mm". `client`: the address that it came from, without a port.
struct Request {
    Method method = Method::get;
    std::string target;
    std::vector<Header> headers;
    std::string body;
    std::string client;
    Door door = Door::here;
};

// The value of a header of which there is one; nothing where there is none or more than one.
std::optional<std::string_view> only_header(const Request& request, std::string_view name);
bool has_header(const Request& request, std::string_view name);
// Whether the client says that it takes a body packed by gzip, and sets no weight to that.
bool takes_packed(const Request& request);

// `target` taken apart: "/answer" and {"units", "mm"}, each name and value decoded.
struct Target {
    std::string path;
    std::vector<std::pair<std::string, std::string>> query;
};

// Nothing where the target is no path of this server: not begun by "/", more than 1,000 bytes, or a broken escape.
std::optional<Target> parse_target(std::string_view target);

// The value of a field; empty where there is none.
std::string field(const Target& target, std::string_view name);
// Every value of a field that may stand more than once.
std::vector<std::string> fields(const Target& target, std::string_view name);

}  // namespace shaftcut
