// Lines of text for a terminal of 80 columns. Private to the documents.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"

namespace shaftcut {

// Words set in lines of at most 80 columns, the first after `head` and a space, the others indented as far.
std::string wrapped(const std::string& head, const std::string& text);

// "  warn        guard-setback: ...", its first word in the colour of the result.
std::string check_line(const Check& check, Colour colour);

// The text in this colour code where colour is wanted.
std::string painted(const std::string& text, const char* code, Colour colour);

}  // namespace shaftcut
