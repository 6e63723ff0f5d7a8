// What somebody answers on the terminal, a line each.
#pragma once

#include <optional>
#include <string>

#include "call/command.hpp"

namespace shaftcut {

// Says the question, without a line's end, and takes the next line, blanks around it dropped. Nothing where no more answers come, or a line of more
// than 1,000 bytes. One that is no text, or holds what nobody sees, is asked for again.
std::optional<std::string> answer_to(const std::string& question, Console& console);

// Says that the answers ended before the questions. Bad input.
Outcome answers_ended(Console& console);

}  // namespace shaftcut
