#include "lists/mapped_articles.hpp"

#include <algorithm>

#include "parse.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

std::size_t index_of(OrderColumn column) { return static_cast<std::size_t>(column); }

// "860" and "860 mm" are one length where the list is in millimetres.
bool says_the_same(const std::string& line, const std::string& article, Units units)
{
    const auto one = parse_length(line, units), other = parse_length(article, units);
    if (std::holds_alternative<Length>(one) && std::holds_alternative<Length>(other)) return std::get<Length>(one) == std::get<Length>(other);
    return line == article;
}

UnknownArticle unknown_article(const TableCell& cell, const ListMap& map)
{
    std::vector<std::string> numbers;
    for (const Article& article : map.articles) numbers.push_back(article.number);
    return {{to_word(OrderColumn::article), cell.text}, map.name, nearest_name(cell.text, numbers)};
}

}  // namespace

TableRow with_article(TableRow cells, const ListMap& map, Units units, Faults& faults)
{
    const TableCell number = cells[index_of(OrderColumn::article)];
    if (number.text.empty()) return cells;
    const auto article = std::find_if(map.articles.begin(), map.articles.end(), [&](const Article& one) { return one.number == number.text; });
    if (article == map.articles.end()) {
        faults.add(where(number), unknown_article(number, map));
        cells[index_of(OrderColumn::article)].in_doubt = true;
        return cells;
    }
    for (const auto& [column, states] : article->states) {
        TableCell& cell = cells[index_of(column)];
        if (cell.text.empty()) cell.text = states, cell.spot = number.spot;
        else if (!cell.in_doubt && !says_the_same(cell.text, states, units)) faults.add(where(cell), OtherThanArticle{{to_word(column), cell.text}, number.text, states});
    }
    return cells;
}

}  // namespace shaftcut
