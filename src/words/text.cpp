#include "text.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstdint>
#include <numeric>

namespace shaftcut {
namespace {

constexpr char32_t ill_formed = 0xFFFD;
constexpr char32_t soft_hyphen = 0xAD;
constexpr std::size_t most_quoted = 40;

struct CodeRange {
    char32_t first, last;
    bool holds(char32_t point) const { return point >= first && point <= last; }
};

constexpr std::array controls{CodeRange{0x00, 0x1F}, CodeRange{0x7F, 0x9F}};

// Noncharacters that end a plane are computed.
constexpr std::array invisible{CodeRange{0xAD, 0xAD},       CodeRange{0x34F, 0x34F},     CodeRange{0x61C, 0x61C},     CodeRange{0x115F, 0x1160},
                               CodeRange{0x17B4, 0x17B5},   CodeRange{0x180B, 0x180F},   CodeRange{0x200B, 0x200F},   CodeRange{0x2028, 0x202E},
                               CodeRange{0x2060, 0x206F},   CodeRange{0x3164, 0x3164},   CodeRange{0xFDD0, 0xFDEF},   CodeRange{0xFE00, 0xFE0F},
                               CodeRange{0xFEFF, 0xFEFF},   CodeRange{0xFFA0, 0xFFA0},   CodeRange{0xFFF0, 0xFFFB},   CodeRange{0x1BCA0, 0x1BCA3},
                               CodeRange{0x1D173, 0x1D17A}, CodeRange{0xE0000, 0xE0FFF}};

constexpr std::array blanks{CodeRange{0xA0, 0xA0},     CodeRange{0x1680, 0x1680}, CodeRange{0x2000, 0x200A},
                            CodeRange{0x202F, 0x202F}, CodeRange{0x205F, 0x205F}, CodeRange{0x3000, 0x3000}};

template <std::size_t count>
bool any_holds(const std::array<CodeRange, count>& ranges, char32_t point)
{
    return std::any_of(ranges.begin(), ranges.end(), [point](const CodeRange& range) { return range.holds(point); });
}

bool is_plain_ascii(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= 0x20 && c < 0x7F; });
}

std::size_t sequence_length(unsigned char lead)
{
    if (lead < 0x80) return 1;
    if (lead >= 0xC2 && lead <= 0xDF) return 2;
    if (lead >= 0xE0 && lead <= 0xEF) return 3;
    if (lead >= 0xF0 && lead <= 0xF4) return 4;
    return 0;
}

// Takes one code point off the front; `ill_formed` with one byte taken where the bytes are not UTF-8.
char32_t take_code_point(std::string_view& text, bool& good)
{
    const auto lead = static_cast<unsigned char>(text.front());
    const std::size_t length = sequence_length(lead);
    static constexpr unsigned char lead_bits[] = {0, 0x7F, 0x1F, 0x0F, 0x07};
    static constexpr char32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
    char32_t value = lead & lead_bits[length];
    bool valid = length != 0 && length <= text.size();
    for (std::size_t i = 1; valid && i < length; ++i) {
        const auto next = static_cast<unsigned char>(text[i]);
        valid = (next & 0xC0) == 0x80;
        value = (value << 6) | (next & 0x3F);
    }
    valid = valid && value >= least[length] && value <= 0x10FFFF && (value < 0xD800 || value > 0xDFFF);
    text.remove_prefix(valid ? length : 1);
    good = good && valid;
    return valid ? value : ill_formed;
}

std::size_t edits_between(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const bool same = std::tolower(static_cast<unsigned char>(a[i - 1])) == std::tolower(static_cast<unsigned char>(b[j - 1]));
            const std::size_t replaced = diagonal + (same ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({row[j] + 1, row[j - 1] + 1, replaced});
        }
    }
    return row.back();
}

}  // namespace

std::string printable(std::string_view text)
{
    std::string out;
    while (!text.empty()) {
        const std::string_view before = text;
        bool good = true;
        const char32_t point = take_code_point(text, good);
        if (good && !is_hidden(point)) out += before.substr(0, before.size() - text.size());
        else out += '?';
    }
    return out;
}

std::string quoted(std::string_view text)
{
    std::string_view rest = text;
    bool good = true;
    for (std::size_t count = 0; count < most_quoted && !rest.empty(); ++count) take_code_point(rest, good);
    return "\"" + printable(text.substr(0, text.size() - rest.size())) + (rest.empty() ? "\"" : "...\"");
}

bool is_utf8(std::string_view text)
{
    bool good = true;
    while (good && !text.empty()) take_code_point(text, good);
    return good;
}

bool is_hidden(char32_t point)
{
    return any_holds(controls, point) || any_holds(invisible, point) || (point & 0xFFFE) == 0xFFFE;
}

std::optional<char32_t> first_hidden(std::string_view text)
{
    if (is_plain_ascii(text)) return std::nullopt;
    const std::u32string points = code_points(text);
    const auto found = std::find_if(points.begin(), points.end(), is_hidden);
    return found == points.end() ? std::nullopt : std::optional(*found);
}

bool is_control(char32_t point) { return any_holds(controls, point); }

std::string code_of(char32_t point)
{
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string code;
    for (; point != 0 || code.size() < 4; point /= 16) code.insert(code.begin(), digits[point % 16]);
    return "U+" + code;
}

std::string with_plain_blanks(std::string_view text)
{
    if (is_plain_ascii(text)) return std::string(text);
    std::string plain;
    for (const char32_t point : code_points(text))
        if (point != soft_hyphen) plain += any_holds(blanks, point) ? std::string(" ") : utf8(point);
    return plain;
}

std::u32string code_points(std::string_view utf8)
{
    std::u32string points;
    bool good = true;
    while (!utf8.empty()) points += take_code_point(utf8, good);
    return points;
}

std::string utf8(char32_t point)
{
    const auto byte = [](char32_t bits) { return static_cast<char>(static_cast<unsigned char>(bits)); };
    const auto tail = [&](int shift) { return byte(0x80 | ((point >> shift) & 0x3F)); };
    if (point < 0x80) return {byte(point)};
    if (point < 0x800) return {byte(0xC0 | (point >> 6)), tail(0)};
    if (point < 0x10000) return {byte(0xE0 | (point >> 12)), tail(6), tail(0)};
    return {byte(0xF0 | (point >> 18)), tail(12), tail(6), tail(0)};
}

std::string nearest_name(std::string_view name, const std::vector<std::string>& known)
{
    if (name.size() > 100) return {};
    std::string best;
    std::size_t fewest = std::max<std::size_t>(2, name.size() / 3) + 1;
    for (const std::string& candidate : known) {
        const std::size_t edits = edits_between(name, candidate);
        if (edits < fewest) {
            fewest = edits;
            best = candidate;
        }
    }
    return best;
}

std::string listed(const std::vector<std::string>& names, std::string_view last)
{
    std::string out;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) out += i + 1 == names.size() ? " " + std::string(last) + " " : ", ";
        out += names[i];
    }
    return out;
}

}  // namespace shaftcut
