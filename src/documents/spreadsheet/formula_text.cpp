#include "spreadsheet/formula_text.hpp"

#include <string_view>

namespace shaftcut {
namespace {

// Control characters: no text for people holds them.
constexpr char opens = '\x02', closes = '\x03';
constexpr std::size_t longest_part = 255;

bool begins_character(char byte) { return (static_cast<unsigned char>(byte) & 0xC0) != 0x80; }

std::string in_quotes(std::string_view text)
{
    std::string part = "\"";
    std::size_t characters = 0;
    for (const char byte : text) {
        if (begins_character(byte) && characters++ == longest_part) {
            part += "\"&\"";
            characters = 1;
        }
        part += byte == '"' ? "\"\"" : std::string(1, byte);
    }
    return part + "\"";
}

}  // namespace

std::string text_in_formula(const std::string& text)
{
    std::string formula;
    const auto add = [&](const std::string& part) { formula += (formula.empty() ? "" : "&") + part; };
    std::string_view rest = text;
    while (!rest.empty()) {
        const std::size_t from = rest.find(opens);
        if (from > 0) add(in_quotes(rest.substr(0, from)));
        if (from == std::string_view::npos) break;
        const std::size_t to = rest.find(closes, from);
        add(std::string(rest.substr(from + 1, to - from - 1)));
        rest.remove_prefix(to + 1);
    }
    return formula.empty() ? "\"\"" : formula;
}

std::string expression_in_text(const std::string& expression) { return opens + expression + closes; }

}  // namespace shaftcut
