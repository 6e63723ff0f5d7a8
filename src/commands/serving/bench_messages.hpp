// Requests and replies as HTTP writes them: what is taken of a client's bytes, and how a reply is sent.
//
// Where two readers of a request might differ on where it ends (RFC 9112, section 6.3), it is refused: a length said twice or as a list, chunks, a
// POST without a length. Checked in tests/commands/bench_messages_test.cpp.
#pragma once

#include <boost/beast/http.hpp>
#include <optional>
#include <string>

#include "reply.hpp"

namespace shaftcut {

using RequestParser = boost::beast::http::request_parser<boost::beast::http::string_body>;
using ResponseMessage = boost::beast::http::response<boost::beast::http::string_body>;

// A header of 8 KB, a body of 256 KB.
void limit(RequestParser& parser);

NoReply why_unreadable(const boost::system::error_code& error);

// Of a header that was read: why its body is not.
std::optional<NoReply> why_no_body(const RequestParser& parser);

// Takes the body out of the parser, which must be done.
Request request_of(RequestParser& parser, const std::string& client, Door door);

ResponseMessage response_of(Reply reply, bool keep_alive);

}  // namespace shaftcut
