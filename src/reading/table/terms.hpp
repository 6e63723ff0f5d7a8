// Headings and words of lists in English, German, Dutch, French, Polish and Spanish. Source: config/languages/terms.md, which says where each comes
// from. Checked by tests/reading/table/terms_test.cpp.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace shaftcut {

// Whether `text` is the column's name or its heading in one of the languages; capitals, blanks, points, colons, hyphens and underscores do not
// matter. A unit in it does: "L\u00e4nge (in)" is no heading, for nobody would see that it is not heeded.
bool is_heading_of(std::string_view text, std::string_view column);
// Those that are no column's name.
std::vector<std::string> headings_of(std::string_view column);

// "wide-angle" of "Weitwinkel"; what is no such word as it is.
std::string file_word_of(const std::string& text);

}  // namespace shaftcut
