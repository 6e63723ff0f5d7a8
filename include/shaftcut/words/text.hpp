// Small helpers for words in messages.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace shaftcut {

// The text in double quotes, cut to 40 characters with "..." and with control characters as '?': fit for a message.
std::string quoted(std::string_view text);

// True where `text` is well-formed UTF-8 (no overlong forms, surrogates or values over U+10FFFF).
bool is_utf8(std::string_view text);

// True where the UTF-8 `text` holds a control character, which a terminal may obey (C0, delete, C1), or U+FFFE or U+FFFF, which no XML
// and so no workbook can hold.
bool has_control(std::string_view text);

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
