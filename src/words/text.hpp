// Small helpers for words in messages.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shaftcut {

// The text with '?' for each character that is_hidden() names, and for bytes that are not UTF-8.
std::string printable(std::string_view text);

// The text in double quotes, cut to 40 characters with "..." and printable: fit for a message.
std::string quoted(std::string_view text);

// True where `text` is well-formed UTF-8 (no overlong forms, surrogates or values over U+10FFFF).
bool is_utf8(std::string_view text);

// What no text of a file may hold, for what is read would not be what somebody sees: control characters, which a terminal may
// obey (C0, delete, C1); line and paragraph separators; the controls of writing direction; zero-width, formatting, filler, tag and
// variation characters (Unicode's property Default_Ignorable_Code_Point, and the interlinear marks); and noncharacters, which no
// document can hold. Source: The Unicode Standard, DerivedCoreProperties.txt and chapter 23, from memory.
// Checked in tests/words/text_test.cpp.
bool is_hidden(char32_t point);

// The first character of the UTF-8 `text` that is_hidden() names.
std::optional<char32_t> first_hidden(std::string_view text);

// Of the hidden ones: a control character, not one that is merely invisible.
bool is_control(char32_t point);

// "U+202E".
std::string code_of(char32_t point);

// What comes along with text that was pasted, mended: every kind of blank (Unicode's Zs: U+00A0, U+202F and the like) is a plain one,
// and the soft hyphen U+00AD, of which nobody sees anything, is dropped.
std::string with_plain_blanks(std::string_view utf8);

// The code points of well-formed UTF-8. Ill-formed bytes come back as U+FFFD.
std::u32string code_points(std::string_view utf8);

// One code point, U+10FFFF at most, as UTF-8.
std::string utf8(char32_t point);

// The name in `known` that differs from `name` by the fewest edits; empty where none is within a third of its length
// (at least 2 edits).
std::string nearest_name(std::string_view name, const std::vector<std::string>& known);

// "a", "a or b", "a, b or c".
std::string listed(const std::vector<std::string>& names, std::string_view last = "or");

}  // namespace shaftcut
