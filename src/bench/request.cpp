#include "request.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

constexpr std::size_t most_target_bytes = 1000;

int hexadecimal(char c)
{
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    return c >= 'A' && c <= 'F' ? c - 'A' + 10 : -1;
}

// "5%25" is "5%", and a plus is a blank, as a page's URLSearchParams writes them.
std::optional<std::string> decoded(std::string_view text)
{
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '%') {
            plain += text[i] == '+' ? ' ' : text[i];
            continue;
        }
        const int high = i + 2 < text.size() ? hexadecimal(text[i + 1]) : -1, low = high < 0 ? -1 : hexadecimal(text[i + 2]);
        if (low < 0) return std::nullopt;
        plain += static_cast<char>(high * 16 + low);
        i += 2;
    }
    return plain;
}

bool add_field(std::string_view text, Target& target)
{
    const std::size_t equals = std::min(text.find('='), text.size());
    auto name = decoded(text.substr(0, equals)), value = decoded(text.substr(std::min(equals + 1, text.size())));
    if (!name || !value) return false;
    target.query.emplace_back(std::move(*name), std::move(*value));
    return true;
}

}  // namespace

std::optional<std::string_view> only_header(const Request& request, std::string_view name)
{
    std::optional<std::string_view> found;
    for (const Header& header : request.headers) {
        if (header.name != name) continue;
        if (found) return std::nullopt;
        found = header.value;
    }
    return found;
}

bool has_header(const Request& request, std::string_view name)
{
    return std::any_of(request.headers.begin(), request.headers.end(), [&](const Header& header) { return header.name == name; });
}

bool takes_packed(const Request& request)
{
    const std::string_view forms = only_header(request, "accept-encoding").value_or("");
    const std::size_t at = forms.find("gzip");
    if (at == std::string_view::npos) return false;
    const std::size_t end = at + std::string_view("gzip").size();
    return (at == 0 || forms[at - 1] == ' ' || forms[at - 1] == ',') && (end == forms.size() || forms[end] == ',');
}

std::optional<Target> parse_target(std::string_view target)
{
    if (target.empty() || target.front() != '/' || target.size() > most_target_bytes) return std::nullopt;
    const std::size_t mark = std::min(target.find('?'), target.size());
    Target parsed{std::string(target.substr(0, mark)), {}};
    for (std::size_t at = mark + 1; at < target.size();) {
        const std::size_t end = std::min(target.find('&', at), target.size());
        if (!add_field(target.substr(at, end - at), parsed)) return std::nullopt;
        at = end + 1;
    }
    return parsed;
}

std::string field(const Target& target, std::string_view name)
{
    const auto found = std::find_if(target.query.begin(), target.query.end(), [&](const auto& one) { return one.first == name; });
    return found == target.query.end() ? "" : found->second;
}

std::vector<std::string> fields(const Target& target, std::string_view name)
{
    std::vector<std::string> values;
    for (const auto& [own, value] : target.query)
        if (own == name) values.push_back(value);
    return values;
}

}  // namespace shaftcut
