#include "call/answers.hpp"

#include <istream>
#include <ostream>

#include "commands/question_words.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_answer = 1000;

// Bounded: nobody types so much, and a file without line ends must not fill the memory.
std::optional<std::string> next_line(std::istream* in)
{
    std::string line;
    for (char c = 0; in && in->get(c);) {
        if (c == '\n') return line;
        if (line.size() == most_answer) return std::nullopt;
        line += c;
    }
    return line.empty() ? std::nullopt : std::optional(line);
}

std::string trimmed(const std::string& text)
{
    const std::size_t first = text.find_first_not_of(" \t\r");
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

}  // namespace

std::optional<std::string> answer_to(const std::string& question, Console& console)
{
    while (true) {
        console.out << question << std::flush;
        const auto line = next_line(console.in);
        if (!line) return std::nullopt;
        const std::string answer = trimmed(*line);
        if (is_utf8(answer) && !first_hidden(answer)) return answer;
        console.out << no_text(console.wording) << "\n";
    }
}

Outcome answers_ended(Console& console)
{
    console.out << "\n";
    console.err << "shaftcut: " << no_more_answers(console.wording) << "\n";
    return Outcome::bad_input;
}

}  // namespace shaftcut
