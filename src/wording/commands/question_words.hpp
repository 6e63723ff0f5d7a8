// What a call asks on the terminal. A question ends with a blank: the answer stands behind it.
#pragma once

#include <string>
#include <vector>

#include "wording.hpp"

namespace shaftcut {

// Of an answer that is no text, and of answers that end before the questions.
std::string no_text(const Wording& w);
std::string no_more_answers(const Wording& w);

// What a heading can be, each with its number, in lines.
std::string columns_offered(const std::vector<std::string>& columns, const Wording& w);
// `first_values`: at most two; `nearest`: the column that may be meant; empty: none.
std::string heading_question(const std::string& heading, const std::vector<std::string>& first_values, const std::string& nearest, const Wording& w);
// `known`: the words or names that the column takes.
std::string value_question(const std::string& column, const std::string& text, const std::vector<std::string>& known, const std::string& nearest, const Wording& w);
std::string units_question(const Wording& w);
// `days`: that can be read in two ways; `orders`: the words to choose from.
std::string dates_question(const std::vector<std::string>& days, const std::vector<std::string>& orders, const Wording& w);
// Before the questions of an article, and each of them; `known` empty: a figure is asked.
std::string article_begins(const std::string& number, const Wording& w);
std::string field_question(const std::string& column, const std::vector<std::string>& known, const Wording& w);
std::string no_such_column(const std::string& answer, const std::string& nearest, const Wording& w);
std::string no_such_word(const std::string& answer, const std::string& nearest, const Wording& w);
std::string nothing_to_learn(const std::string& list, const Wording& w);
// `file`: lists.xml; `list`: what was learnt from.
std::string map_written(const std::string& name, const std::string& file, const std::string& list, const Wording& w);

}  // namespace shaftcut
