#include "reply.hpp"

#include <algorithm>

#include "text.hpp"

namespace shaftcut {
namespace {

int status_of(NoReply why)
{
    switch (why) {
    case NoReply::broken:
    case NoReply::unknown_field:
    case NoReply::not_to_print: return 400;
    case NoReply::not_paired: return 401;
    case NoReply::other_name:
    case NoReply::other_page:
    case NoReply::not_xml:
    case NoReply::wrong_code: return 403;
    case NoReply::no_such_place:
    case NoReply::no_printer: return 404;
    case NoReply::wrong_method: return 405;
    case NoReply::too_slow: return 408;
    case NoReply::no_length: return 411;
    case NoReply::too_long: return 413;
    case NoReply::too_often: return 429;
    case NoReply::long_header: return 431;
    case NoReply::busy: return 503;
    case NoReply::fault:
    case NoReply::not_printed: break;
    }
    return 500;
}

bool may_stand_in_name(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '_'; }

bool is_safe_name(const std::string& name) { return !name.empty() && name.front() != '.' && name.size() <= 100 && std::all_of(name.begin(), name.end(), may_stand_in_name); }

// Scripts, styles and requests are this server's own; nothing else is loaded, and no other page may show this one in itself. The sources: OWASP's cheat
// sheet on content security policy. Origin comes with a POST of this page only where it may name itself to its own server.
constexpr const char* policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

}  // namespace

std::vector<Header> headers_of(const Reply& reply)
{
    std::vector<Header> headers{{"content-security-policy", policy}, {"x-content-type-options", "nosniff"}, {"referrer-policy", "same-origin"},
                                {"cross-origin-opener-policy", "same-origin"}, {"cross-origin-resource-policy", "same-origin"}, {"cache-control", "no-store"}};
    if (!reply.type.empty()) headers.push_back({"content-type", reply.type});
    if (is_safe_name(reply.file_name)) headers.push_back({"content-disposition", "attachment; filename=\"" + reply.file_name + "\""});
    if (!reply.cookie.empty()) headers.push_back({"set-cookie", reply.cookie});
    if (!reply.allow.empty()) headers.push_back({"allow", reply.allow});
    if (reply.packed) headers.push_back({"content-encoding", "gzip"});
    return headers;
}

Reply json_reply(std::string json, int status) { return {status, "application/json", std::move(json)}; }

Reply no_reply(NoReply why, const Wording& w) { return json_reply(says_json(say(why, w)), status_of(why)); }

std::string json_text(std::string_view text)
{
    static constexpr char digits[] = "0123456789abcdef";
    std::string json = "\"";
    for (const char32_t point : code_points(text)) {
        if (point == U'"' || point == U'\\') json += '\\';
        if (point >= 0x20) json += utf8(point);
        else json += std::string("\\u00") + digits[point / 16] + digits[point % 16];
    }
    return json + '"';
}

std::string says_json(std::string_view text) { return "{\"says\":" + json_text(text) + "}"; }

}  // namespace shaftcut
