#include "pairing.hpp"

#include <algorithm>

#include "secrets.hpp"

namespace shaftcut {
namespace {

constexpr std::string_view cookie_name = "shaftcut-bench";

// Each "name=value" of a Cookie header.
std::vector<std::string_view> values_of(std::string_view cookies, std::string_view name)
{
    std::vector<std::string_view> values;
    for (std::size_t at = 0; at < cookies.size();) {
        const std::size_t end = std::min(cookies.find(';', at), cookies.size());
        std::string_view one = cookies.substr(at, end - at);
        one.remove_prefix(std::min(one.find_first_not_of(' '), one.size()));
        if (one.size() > name.size() && one.starts_with(name) && one[name.size()] == '=') values.push_back(one.substr(name.size() + 1));
        at = end + 1;
    }
    return values;
}

std::string cookie_of(const std::string& token)
{
    std::string cookie = std::string(cookie_name) + "=" + token;
    for (const std::string& attribute : {"Max-Age=" + std::to_string(paired_for_seconds), std::string("Path=/"), std::string("HttpOnly"), std::string("SameSite=Strict")}) cookie += "; " + attribute;
    return cookie;
}

}  // namespace

bool Pairing::holds() const { return !code_.empty() && tries_ < code_tries && means_.seconds() - made_ < code_holds_seconds; }

Pairing::Code Pairing::code()
{
    if (!holds()) {
        code_ = means_.code();
        made_ = means_.seconds();
        tries_ = 0;
    }
    return {code_, static_cast<int>(code_holds_seconds - (means_.seconds() - made_))};
}

std::variant<std::string, Pairing::NotLetIn> Pairing::pair(std::string_view code, const std::string& client)
{
    if (!holds()) return NotLetIn::wrong_code;
    ++tries_;
    if (!same_secret(code, code_)) return NotLetIn::wrong_code;
    const std::string token = means_.token();
    if (!means_.keep(sha256(token), means_.now(), client)) return NotLetIn::not_kept;
    code_.clear();
    return cookie_of(token);
}

bool Pairing::is_paired(const Request& request) const
{
    const auto cookies = only_header(request, "cookie");
    if (!cookies) return false;
    const auto tokens = values_of(*cookies, cookie_name);
    return tokens.size() == 1 && tablet_of(means_.tablets(), tokens.front(), means_.now()).has_value();
}

std::string code_in(std::string_view body)
{
    static const std::string before = std::string("<pair") + ' ' + "code=\"", after = "\"/>";
    if (!body.starts_with(before) || !body.ends_with(after) || body.size() != before.size() + 8 + after.size()) return {};
    const std::string code(body.substr(before.size(), 8));
    return code.find_first_not_of("0123456789") == std::string::npos ? code : "";
}

}  // namespace shaftcut
