#include "guard.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

constexpr double minute = 60;

char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string in_small_letters(std::string_view text)
{
    std::string small_text(text);
    std::transform(small_text.begin(), small_text.end(), small_text.begin(), small);
    return small_text;
}

bool is_own_name(const Request& request, const ServerNames& names)
{
    const auto host = only_header(request, "host");
    const std::vector<std::string>& own = names.of(request.door);
    return host && std::find(own.begin(), own.end(), in_small_letters(*host)) != own.end();
}

// Any origin that comes must be the page's own; a POST must have one.
bool is_own_page(const Request& request)
{
    const auto origin = only_header(request, "origin"), host = only_header(request, "host");
    if (!has_header(request, "origin")) return request.method != Method::post;
    return origin && host && in_small_letters(*origin) == "http://" + in_small_letters(*host);
}

bool is_cross_site(const Request& request)
{
    const auto site = only_header(request, "sec-fetch-site");
    return has_header(request, "sec-fetch-site") && (!site || in_small_letters(*site) == "cross-site");
}

// Blanks and a character set may follow.
bool is_xml(const Request& request)
{
    const auto type = only_header(request, "content-type");
    if (!type) return false;
    std::string text = in_small_letters(*type);
    std::erase(text, ' ');
    return text == "application/xml" || text == "application/xml;charset=utf-8";
}

std::vector<std::string> with_port(const std::string& name, unsigned port)
{
    std::vector<std::string> names{name + ":" + std::to_string(port)};
    if (port == 80) names.push_back(name);
    return names;
}

}  // namespace

ServerNames server_names(const std::string& network, unsigned port)
{
    ServerNames names{with_port("127.0.0.1", port), {}};
    for (std::string& name : with_port("localhost", port)) names.here.push_back(std::move(name));
    if (network.empty()) return names;
    const bool is_version_6 = network.find(':') != std::string::npos;
    names.network = with_port(in_small_letters(is_version_6 ? "[" + network + "]" : network), port);
    return names;
}

std::optional<NoReply> refused_by_guard(const Request& request, const ServerNames& names)
{
    if (!is_own_name(request, names)) return NoReply::other_name;
    if (!is_own_page(request) || is_cross_site(request)) return NoReply::other_page;
    if (request.method == Method::post && !is_xml(request)) return NoReply::not_xml;
    return std::nullopt;
}

bool RateLimit::allows(const std::string& client, double seconds)
{
    if (counted_.size() >= most_clients && !counted_.contains(client)) forget(seconds);
    if (counted_.size() >= most_clients && !counted_.contains(client)) return false;
    Minute& own = counted_.try_emplace(client, Minute{seconds, 0}).first->second;
    if (seconds - own.began >= minute) own = {seconds, 0};
    if (own.requests >= most_requests_a_minute) return false;
    ++own.requests;
    return true;
}

void RateLimit::forget(double seconds)
{
    std::erase_if(counted_, [&](const auto& one) { return seconds - one.second.began >= minute; });
}

}  // namespace shaftcut
