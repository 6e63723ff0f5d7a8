#include "xml/xml_text.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

#include "text.hpp"

namespace shaftcut {
namespace {

bool xml_allows(char32_t point)
{
    if (point < 0x20) return point == '\t' || point == '\n' || point == '\r';
    if (point >= 0xD800 && point <= 0xDFFF) return false;
    return point != 0xFFFE && point != 0xFFFF && point <= 0x10FFFF;
}

// How many bytes at the front of `text` are one well-formed character; 0 where they are not.
std::size_t character_bytes(std::string_view text)
{
    if (static_cast<unsigned char>(text.front()) < 0x80) return 1;
    for (std::size_t length = 2; length <= 4 && length <= text.size(); ++length)
        if (is_utf8(text.substr(0, length))) return length;
    return 0;
}

// What stands between "&" and ";" as text; nothing where it means nothing.
std::optional<std::string> referred_to(std::string_view reference)
{
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 5> entities{
        {{"amp", "&"}, {"lt", "<"}, {"gt", ">"}, {"quot", "\""}, {"apos", "'"}}};
    for (const auto& [name, meaning] : entities)
        if (reference == name) return std::string(meaning);
    if (!reference.starts_with('#')) return std::nullopt;
    const bool hexadecimal = reference.starts_with("#x");
    reference.remove_prefix(hexadecimal ? 2 : 1);
    unsigned value = 0;
    const char* end = reference.data() + reference.size();
    const auto [read, error] = std::from_chars(reference.data(), end, value, hexadecimal ? 16 : 10);
    if (error != std::errc() || read != end || !xml_allows(value)) return std::nullopt;
    return utf8(value);
}

WrongValue bad_reference(std::string_view text)
{
    return {Unfit::reference, {"", std::string(text.substr(0, std::min<std::size_t>(text.find(';'), 20) + 1))}};
}

}  // namespace

void SpotFinder::step()
{
    const char c = text_[offset_++];
    const bool line_ends = c == '\n' || (c == '\r' && (offset_ == text_.size() || text_[offset_] != '\n'));
    if (line_ends) spot_ = {spot_.line + 1, 1};
    else if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) ++spot_.column;
}

Spot SpotFinder::at(std::size_t offset)
{
    if (offset < offset_) *this = SpotFinder(text_);
    while (offset_ < std::min(offset, text_.size())) step();
    return spot_;
}

std::optional<BadBytes> bad_bytes(std::string_view text)
{
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) return BadBytes{0, FormFault::utf16};
    for (std::size_t offset = 0; offset < text.size();) {
        const auto byte = static_cast<unsigned char>(text[offset]);
        if (byte == 0) return BadBytes{offset, FormFault::nul};
        const std::size_t length = character_bytes(text.substr(offset));
        if (length == 0) return BadBytes{offset, FormFault::xml_not_utf8};
        const std::string_view character = text.substr(offset, length);
        if ((byte < 0x20 || length == 3) && !xml_allows(code_points(character).front()))
            return BadBytes{offset, Hidden{HiddenIn::file, "", code_points(character).front()}};
        offset += length;
    }
    return std::nullopt;
}

std::variant<std::string, WrongValue> decoded(std::string_view text)
{
    std::string out;
    while (!text.empty()) {
        const std::size_t plain = std::min(text.find_first_of("&<"), text.size());
        out += text.substr(0, plain);
        text.remove_prefix(plain);
        if (text.empty()) break;
        if (text.front() == '<') return WrongValue{Unfit::tag_in_value, {}};
        const std::size_t end = text.find(';');
        const auto meaning = end == std::string_view::npos ? std::nullopt : referred_to(text.substr(1, end - 1));
        if (!meaning) return bad_reference(text);
        out += *meaning;
        text.remove_prefix(end + 1);
    }
    return out;
}

}  // namespace shaftcut
