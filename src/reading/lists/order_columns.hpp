// The columns of a list of orders, and an office's own map of its lists onto them. Checked in tests/reading/lists_reader_test.cpp.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/length.hpp"
#include "table/table.hpp"

namespace shaftcut {

// `article`: an office's number for a shaft, of lists with a map only; `left_out`: what a map does not read.
enum class OrderColumn {
    order, count, series, role, speed, inner_tube, tractor_joint, tractor_connection, tractor_lock, tractor_device, implement_joint,
    implement_connection, implement_lock, implement_device, guard, closed, closed_reference, shortest, longest_working, longest_turning,
    longest_standing, fit_between, fit_reference, customer, machine, due, article, left_out
};
template <> struct Words<OrderColumn> {
    static constexpr std::array all{"order", "count", "series", "role", "speed", "inner_tube", "tractor_joint", "tractor_connection", "tractor_lock", "tractor_device", "implement_joint",
                                    "implement_connection", "implement_lock", "implement_device", "guard", "closed", "closed_reference", "shortest", "longest_working", "longest_turning",
                                    "longest_standing", "fit_between", "fit_reference", "customer", "machine", "due", "article", "left-out"};
};
template <> struct Words<DateOrder> { static constexpr std::array all{"day-first", "month-first"}; };

// `means`: a word, or the name of a series or connection.
struct MappedHeading {
    std::string heading;
    OrderColumn is = OrderColumn::left_out;
};
struct MappedValue {
    OrderColumn column = OrderColumn::series;
    std::string text, means;
};
// `states`: what stands in a column of its line, a length with its unit.
struct Article {
    std::string number;
    std::map<OrderColumn, std::string> states;
};

// `units`: of its lengths that carry none; nothing: those of the call.
struct ListMap {
    std::string name;
    std::optional<Units> units;
    std::optional<DateOrder> dates;
    std::vector<MappedHeading> headings;
    std::vector<MappedValue> values;
    std::vector<Article> articles;
};

// Those of a list in the order of the enumerators: without a map all up to `due`; with one `article` and `left_out` too. Where a map
// has articles, none but the order's number is required: an article may state it.
std::vector<TableColumn> order_columns(const ListMap* map);

// The words that a column of words takes; empty of a column of anything else.
std::vector<std::string> words_of_column(OrderColumn column);

}  // namespace shaftcut
