#include "serving/bench_messages.hpp"

#include <algorithm>

#include "serving/bench_server.hpp"

namespace shaftcut {
namespace {

namespace net = boost::asio;
namespace http = boost::beast::http;
using boost::system::error_code;

constexpr std::uint32_t most_header_bytes = 8 * 1024;
constexpr std::uint64_t most_body_bytes = 256 * 1024;

Method method_of(http::verb verb)
{
    if (verb == http::verb::get) return Method::get;
    return verb == http::verb::post ? Method::post : Method::other;
}

}  // namespace

void limit(RequestParser& parser)
{
    parser.header_limit(most_header_bytes);
    parser.body_limit(most_body_bytes);
}

NoReply why_unreadable(const error_code& error)
{
    if (error == http::error::header_limit || error == http::error::buffer_overflow) return NoReply::long_header;
    return error == http::error::body_limit ? NoReply::too_long : NoReply::broken;
}

// What the length of a body may not be: said twice, by a list, or by chunks, on which two readers may differ.
std::optional<NoReply> why_no_body(const RequestParser& parser)
{
    const auto& header = parser.get();
    if (header.count(http::field::transfer_encoding) > 0) return NoReply::no_length;
    if (header.count(http::field::content_length) > 1) return NoReply::broken;
    const auto length = header[http::field::content_length];
    if (length.find_first_not_of("0123456789") != boost::string_view::npos) return NoReply::broken;
    return header.method() == http::verb::post && length.empty() ? std::optional(NoReply::no_length) : std::nullopt;
}

Request request_of(RequestParser& parser, const std::string& client, Door door)
{
    auto& message = parser.get();
    Request request{method_of(message.method()), std::string(message.target()), {}, std::move(message.body()), client, door};
    for (const auto& header : message) {
        std::string name(header.name_string());
        std::transform(name.begin(), name.end(), name.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
        request.headers.push_back({std::move(name), std::string(header.value())});
    }
    return request;
}

ResponseMessage response_of(Reply reply, bool keep_alive)
{
    ResponseMessage response(http::int_to_status(static_cast<unsigned>(reply.status)), 11);
    for (const Header& header : headers_of(reply)) response.set(header.name, header.value);
    response.body() = std::move(reply.body);
    response.keep_alive(keep_alive);
    response.prepare_payload();
    return response;
}

std::variant<Request, NoReply> read_request(std::string_view bytes)
{
    RequestParser parser;
    limit(parser);
    error_code error;
    std::size_t taken = parser.put(net::buffer(bytes.data(), bytes.size()), error);
    if (!error && !parser.is_header_done()) return NoReply::too_slow;
    if (!error)
        if (const auto refused = why_no_body(parser)) return *refused;
    parser.eager(true);
    while (!error && !parser.is_done() && taken < bytes.size()) taken += parser.put(net::buffer(bytes.data() + taken, bytes.size() - taken), error);
    if (error && error != http::error::need_more) return why_unreadable(error);
    if (!parser.is_done()) return NoReply::too_slow;
    return request_of(parser, "127.0.0.1", Door::here);
}

}  // namespace shaftcut
