#include "lists/list_questions.hpp"

#include <algorithm>
#include <array>
#include <set>

#include "lists/list_reader.hpp"
#include "lists/orders_reader.hpp"
#include "table/terms.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_first_values = 2;

std::vector<TableColumn> columns_of(const ListMap& map)
{
    std::vector<TableColumn> columns = order_columns(&map);
    for (TableColumn& column : columns) column.required = false;
    return columns;
}

FaultList read(const Source& list, const std::vector<TableColumn>& columns, const TakeRow& take)
{
    return read_list(list.bytes, list.name, columns, {most_orders, ManyOf::orders}, take).listed();
}

// The column that has this name or heading.
std::string column_of(const std::string& heading, const std::vector<TableColumn>& columns)
{
    const auto has_it = [&](const TableColumn& column) {
        return is_heading_of(heading, column.name) || std::find(column.headings.begin(), column.headings.end(), heading) != column.headings.end();
    };
    const auto found = std::find_if(columns.begin(), columns.end(), has_it);
    return found == columns.end() || heading.empty() ? "" : found->name;
}

void add_first_values(const Source& list, std::vector<TableColumn> columns, std::vector<UnknownHeading>& headings)
{
    const std::size_t first = columns.size();
    for (const UnknownHeading& heading : headings) {
        TableColumn own{heading.heading, false, Holds::text};
        own.headings = {heading.heading};
        columns.push_back(std::move(own));
    }
    read(list, columns, [&](const TableRow& row, Faults&) {
        for (std::size_t i = 0; i < headings.size(); ++i)
            if (auto& values = headings[i].first_values; values.size() < most_first_values && !row[first + i].text.empty()) values.push_back(row[first + i].text);
    });
}

struct Takes {
    std::vector<std::string> known;
    std::set<std::string> met;
};

Takes taken_by(OrderColumn column, const Catalogue& catalogue)
{
    Takes takes{words_of_column(column), {}};
    if (column == OrderColumn::series)
        for (const Series& series : catalogue.series) takes.known.push_back(series.name);
    if (column == OrderColumn::tractor_connection || column == OrderColumn::implement_connection)
        for (const Connection& connection : catalogue.connections) takes.known.push_back(connection.name);
    takes.met.insert(takes.known.begin(), takes.known.end());
    return takes;
}

std::vector<UnknownMeaning> unknown_values(const Source& list, const Catalogue& catalogue, const std::vector<TableColumn>& columns)
{
    std::vector<Takes> taken;
    for (std::size_t i = 0; i < columns.size(); ++i) taken.push_back(taken_by(static_cast<OrderColumn>(i), catalogue));
    std::vector<UnknownMeaning> found;
    read(list, columns, [&](const TableRow& row, Faults&) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string& text = row[i].text;
            if (taken[i].known.empty() || text.empty() || found.size() == most_values_asked || !taken[i].met.insert(text).second) continue;
            found.push_back({static_cast<OrderColumn>(i), text, taken[i].known, nearest_name(text, taken[i].known)});
        }
    });
    std::stable_sort(found.begin(), found.end(), [](const UnknownMeaning& a, const UnknownMeaning& b) { return a.column < b.column; });
    return found;
}

// What an article of a map can state, in the order in which it is asked.
constexpr std::array of_articles{OrderColumn::series, OrderColumn::role, OrderColumn::speed, OrderColumn::inner_tube, OrderColumn::tractor_joint, OrderColumn::tractor_connection,
                                 OrderColumn::tractor_lock, OrderColumn::tractor_device, OrderColumn::implement_joint, OrderColumn::implement_connection, OrderColumn::implement_lock,
                                 OrderColumn::implement_device, OrderColumn::guard, OrderColumn::closed, OrderColumn::closed_reference};
constexpr std::array lengths{OrderColumn::closed, OrderColumn::shortest, OrderColumn::longest_working, OrderColumn::longest_turning, OrderColumn::longest_standing};

const std::string& text_in(const TableRow& row, OrderColumn column)
{
    static const std::string none;
    const auto index = static_cast<std::size_t>(column);
    return index < row.size() ? row[index].text : none;
}

bool has_unit(const std::string& length) { return length.find_first_of("mi\"") != std::string::npos; }

// What the lines say that no heading and no word tells.
void add_unsaid(const Source& list, const std::vector<TableColumn>& columns, const ListMap& map, UnknownInList& unknown)
{
    std::set<OrderColumn> said;
    std::set<std::string> articles;
    for (const Article& article : map.articles) articles.insert(article.number);
    read(list, columns, [&](const TableRow& row, Faults&) {
        for (const OrderColumn column : of_articles)
            if (!text_in(row, column).empty()) said.insert(column);
        for (const OrderColumn column : lengths) unknown.lengths_without_unit |= !text_in(row, column).empty() && !has_unit(text_in(row, column));
        const std::string& article = text_in(row, OrderColumn::article);
        if (!article.empty() && unknown.articles.size() < most_values_asked && articles.insert(article).second) unknown.articles.push_back(article);
    });
    for (const OrderColumn column : of_articles)
        if (!said.contains(column)) unknown.said_nowhere.push_back(column);
}

}  // namespace

std::vector<std::string> taken_by_column(OrderColumn column, const Catalogue& catalogue) { return taken_by(column, catalogue).known; }

UnknownInList unknown_in(const Source& list, const Catalogue& catalogue, const ListMap& map)
{
    UnknownInList unknown;
    const std::vector<TableColumn> columns = columns_of(map);
    bool any_line = false;
    for (Fault& fault : read(list, columns, [&](const TableRow&, Faults&) { any_line = true; })) {
        if (const auto* const day = std::get_if<DateInDoubt>(&fault.what); day && unknown.days_in_doubt.size() < most_first_values) unknown.days_in_doubt.push_back(day->stated.value);
        const auto* const column = std::get_if<UnknownColumn>(&fault.what);
        if (!column) unknown.faults.push_back(std::move(fault));
        else if (std::none_of(unknown.headings.begin(), unknown.headings.end(), [&](const UnknownHeading& one) { return one.heading == column->name; }))
            unknown.headings.push_back({column->name, {}, column_of(column->nearest, columns)});
    }
    if (!unknown.headings.empty()) add_first_values(list, columns, unknown.headings);
    else if (any_line) {
        unknown.values = unknown_values(list, catalogue, columns);
        add_unsaid(list, columns, map, unknown);
    }
    // Lines at fault are said when the list is built.
    if (any_line) unknown.faults.clear();
    return unknown;
}

}  // namespace shaftcut
