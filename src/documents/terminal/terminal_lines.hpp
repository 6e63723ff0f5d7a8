// Lines of text for a terminal of 80 columns. Private to the documents.
#pragma once

#include <string>

#include "shaftcut/documents/terminal/terminal.hpp"
#include "wording.hpp"
#include "terminal/terminal_words.hpp"

namespace shaftcut {

// Words set in lines of at most 80 columns, the first after `head` and a space, the others indented as far.
std::string wrapped(const std::string& head, const std::string& text);

// The text with blanks behind it, `wide` columns in all, and that two blanks further in.
std::string filled(const std::string& text, std::size_t wide);
std::string padded(const std::string& name, std::size_t wide);

// "  instead    …", words set after a name.
std::string named_line(terminal::LineName name, const std::string& text, const Wording& w);

// "  warn        guard-setback: ...", its first word in the colour of the result.
std::string check_line(const Check& check, Colour colour, const Wording& w);

// What switches a terminal to the colour of this code, and back; nothing where no colour is wanted.
std::string colour_on(const char* code, Colour colour);
std::string colour_off(Colour colour);

// The text in this colour code where colour is wanted.
std::string painted(const std::string& text, const char* code, Colour colour);

}  // namespace shaftcut
