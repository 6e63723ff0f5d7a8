#include "shaftcut/words/text.hpp"

#include <algorithm>
#include <cctype>
#include <cstdint>
#include <numeric>

namespace shaftcut {
namespace {

constexpr char32_t ill_formed = 0xFFFD;

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

std::string quoted(std::string_view text)
{
    std::string out = "\"";
    for (std::size_t count = 0; !text.empty(); ++count) {
        if (count == 40) return out + "...\"";
        const std::string_view before = text;
        bool good = true;
        const char32_t point = take_code_point(text, good);
        const bool printable = good && point >= 0x20 && (point < 0x7F || point > 0x9F);
        if (printable) out += before.substr(0, before.size() - text.size());
        else out += '?';
    }
    return out + "\"";
}

bool is_utf8(std::string_view text)
{
    bool good = true;
    while (good && !text.empty()) take_code_point(text, good);
    return good;
}

bool has_control(std::string_view text)
{
    const auto byte = [&](std::size_t at) { return at < text.size() ? static_cast<unsigned char>(text[at]) : 0; };
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (byte(at) < 0x20 || byte(at) == 0x7F) return true;
        if (byte(at) == 0xC2 && byte(at + 1) < 0xA0) return true;
        if (byte(at) == 0xEF && byte(at + 1) == 0xBF && byte(at + 2) >= 0xBE) return true;
    }
    return false;
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
