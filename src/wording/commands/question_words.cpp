#include "commands/question_words.hpp"

#include "text.hpp"

namespace shaftcut {
namespace {

// "1 order  2 count": numbers first, so that they stand in sight.
std::string numbered(const std::vector<std::string>& names)
{
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) text += (i == 0 ? "" : i % 6 == 0 ? "\n  " : "  ") + std::to_string(i + 1) + " " + printable(names[i]);
    return text;
}

}  // namespace

std::string no_text(const Wording& w) { return w("That holds a character that nobody sees. Write it again."); }

std::string no_more_answers(const Wording& w) { return w("the answers ended before the questions; nothing was written. Answer on the terminal, or give a line for each question"); }

std::string columns_offered(const std::vector<std::string>& columns, const Wording& w)
{
    return w("For each heading write the column that it is, by name or number; nothing leaves it out.\n  {columns}\n", {{"columns", numbered(columns)}});
}

std::string heading_question(const std::string& heading, const std::vector<std::string>& first_values, const std::string& nearest, const Wording& w)
{
    std::vector<std::string> values;
    for (const std::string& value : first_values) values.push_back(quoted(value));
    const NamedValue asked{"heading", quoted(heading)}, first{"values", w.all_of(values)}, near{"nearest", nearest};
    if (values.empty()) return nearest.empty() ? w("{heading}, with nothing under it: ", {asked}) : w("{heading}, with nothing under it, perhaps {nearest}: ", {asked, near});
    return nearest.empty() ? w("{heading}, such as {values}: ", {asked, first}) : w("{heading}, such as {values}, perhaps {nearest}: ", {asked, first, near});
}

std::string value_question(const std::string& column, const std::string& text, const std::vector<std::string>& known, const std::string& nearest, const Wording& w)
{
    const NamedValue in{"column", column}, what{"text", quoted(text)}, words{"known", numbered(known)}, near{"nearest", nearest};
    if (nearest.empty()) return w("What is {text} in {column}? nothing leaves it open\n  {known}\n: ", {what, in, words});
    return w("What is {text} in {column}, perhaps {nearest}? nothing leaves it open\n  {known}\n: ", {what, in, near, words});
}

std::string units_question(const Wording& w)
{
    return w("What are lengths in that carry no unit? nothing leaves it to --units\n  {known}\n: ", {{"known", numbered({unit_word(Units::mm), unit_word(Units::in)})}});
}

std::string dates_question(const std::vector<std::string>& days, const std::vector<std::string>& orders, const Wording& w)
{
    return w("What stands first in {days}, the day or the month? nothing leaves it open\n  {known}\n: ", {{"days", w.all_of(days)}, {"known", numbered(orders)}});
}

std::string article_begins(const std::string& number, const Wording& w)
{
    return w("Article {number}: what is the same in all of its lines? nothing leaves a column to them.", {{"number", quoted(number)}});
}

std::string field_question(const std::string& column, const std::vector<std::string>& known, const Wording& w)
{
    if (known.empty()) return w("{column}: ", {{"column", column}});
    return w("{column}\n  {known}\n: ", {{"column", column}, {"known", numbered(known)}});
}

std::string no_such_column(const std::string& answer, const std::string& nearest, const Wording& w)
{
    const NamedValue given{"answer", quoted(answer)};
    return nearest.empty() ? w("There is no column {answer}.", {given}) : w("There is no column {answer}. Did you mean {nearest}?", {given, {"nearest", nearest}});
}

std::string no_such_word(const std::string& answer, const std::string& nearest, const Wording& w)
{
    const NamedValue given{"answer", quoted(answer)};
    return nearest.empty() ? w("{answer} is none of these.", {given}) : w("{answer} is none of these. Did you mean {nearest}?", {given, {"nearest", nearest}});
}

std::string nothing_to_learn(const std::string& list, const Wording& w) { return w("Every heading and word of {list} is known; nothing was written.", {{"list", list}}); }

std::string map_written(const std::string& name, const std::string& file, const std::string& list, const Wording& w)
{
    return w("The map {name} stands in {file}. Now: shaftcut build --list {name} {list}", {{"name", quoted(name)}, {"file", file}, {"list", list}});
}

}  // namespace shaftcut
