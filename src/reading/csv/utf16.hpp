// Text in UTF-16, as spreadsheet programs call "Unicode text". Checked by tests/reading/csv/european_lists_test.cpp.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace shaftcut {

enum class Utf16 { little_endian, big_endian };

// By the byte order mark, or by a NUL in each of the first two characters, which begin a heading in Latin letters. Nothing where it is not UTF-16.
std::optional<Utf16> utf16_in(std::string_view bytes);

// The same in UTF-8, without the mark. Nothing where half a character is left, or half a pair of surrogates.
std::optional<std::string> utf8_of(std::string_view bytes, Utf16 order);

}  // namespace shaftcut
