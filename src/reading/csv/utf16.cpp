#include "csv/utf16.hpp"

#include "text.hpp"

namespace shaftcut {
namespace {

constexpr char32_t byte_order_mark = 0xFEFF;

bool is_high(char32_t unit) { return unit >= 0xD800 && unit < 0xDC00; }
bool is_low(char32_t unit) { return unit >= 0xDC00 && unit < 0xE000; }

char32_t unit_at(std::string_view bytes, std::size_t at, Utf16 order)
{
    const auto one = static_cast<unsigned char>(bytes[at]), other = static_cast<unsigned char>(bytes[at + 1]);
    return order == Utf16::little_endian ? static_cast<char32_t>(other << 8 | one) : static_cast<char32_t>(one << 8 | other);
}

// Of the first two characters.
bool nul_at(std::string_view bytes, std::size_t at) { return bytes[at] == '\0' && (bytes.size() < 4 || bytes[at + 2] == '\0'); }

}  // namespace

std::optional<Utf16> utf16_in(std::string_view bytes)
{
    if (bytes.size() < 2) return std::nullopt;
    if (bytes.starts_with("\xFF\xFE") || (bytes[0] != '\0' && nul_at(bytes, 1))) return Utf16::little_endian;
    if (bytes.starts_with("\xFE\xFF") || (nul_at(bytes, 0) && bytes[1] != '\0')) return Utf16::big_endian;
    return std::nullopt;
}

std::optional<std::string> utf8_of(std::string_view bytes, Utf16 order)
{
    if (bytes.size() % 2 != 0) return std::nullopt;
    std::string text;
    for (std::size_t at = 0; at < bytes.size(); at += 2) {
        char32_t point = unit_at(bytes, at, order);
        if (is_low(point)) return std::nullopt;
        if (is_high(point)) {
            at += 2;
            if (at >= bytes.size() || !is_low(unit_at(bytes, at, order))) return std::nullopt;
            point = 0x10000 + ((point - 0xD800) << 10) + (unit_at(bytes, at, order) - 0xDC00);
        }
        if (at > 1 || point != byte_order_mark) text += utf8(point);
    }
    return text;
}

}  // namespace shaftcut
