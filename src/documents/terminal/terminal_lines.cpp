#include "terminal/terminal_lines.hpp"

#include <fmt/format.h>

#include "checks/check_sentences.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t columns = 80, name_columns = 11;

std::size_t width(const std::string& text) { return code_points(text).size(); }

}  // namespace

std::string wrapped(const std::string& head, const std::string& text)
{
    const std::string indent(width(head) + 1, ' ');
    std::string out = head + " ";
    std::size_t used = indent.size();
    bool first = true;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at);
        at = end + 1;
        if (!first && used + 1 + width(word) > columns) {
            out += "\n" + indent;
            used = indent.size();
            first = true;
        }
        out += (first ? "" : " ") + word;
        used += (first ? 0 : 1) + width(word);
        first = false;
    }
    return out + "\n";
}

std::string filled(const std::string& text, std::size_t wide) { return fmt::format("{:<{}}", text, wide); }
std::string padded(const std::string& name, std::size_t wide) { return "  " + filled(name, wide); }

std::string named_line(terminal::LineName name, const std::string& text, const Wording& w) { return wrapped(padded(say(name, w), name_columns), text); }

std::string check_line(const Check& check, Colour colour, const Wording& w)
{
    const char* code = check.result == CheckResult::fail ? "1;31" : check.result == CheckResult::warn ? "1;33" : "2";
    const std::string head = padded(terminal::result_name(check.result, w), name_columns);
    const std::string text = wrapped(head, terminal::check_text(check, say(check, w), w));
    return painted(text.substr(0, head.size()), code, colour) + text.substr(head.size());
}

std::string colour_on(const char* code, Colour colour) { return colour == Colour::ansi ? fmt::format("\x1b[{}m", code) : std::string(); }
std::string colour_off(Colour colour) { return colour == Colour::ansi ? "\x1b[0m" : ""; }

std::string painted(const std::string& text, const char* code, Colour colour) { return colour_on(code, colour) + text + colour_off(colour); }

}  // namespace shaftcut
