// What nobody knows yet of an office's list of orders. Checked in tests/engine/additions_test.cpp.
#pragma once

#include <string>
#include <vector>

#include "lists/order_columns.hpp"
#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "source/faults.hpp"

namespace shaftcut {

inline constexpr std::size_t most_values_asked = 100;

struct UnknownHeading {
    std::string heading;
    std::vector<std::string> first_values;  // at most two
    std::string nearest;                    // a column, or empty
};
struct UnknownMeaning {
    OrderColumn column = OrderColumn::series;
    std::string text;
    std::vector<std::string> known;
    std::string nearest;
};

// Of a list in CSV or a workbook, read by `map`. Faults: only those for which no line of it can be read.
struct UnknownInList {
    std::vector<UnknownHeading> headings;
    std::vector<UnknownMeaning> values;  // these and the following once no heading is unknown
    bool lengths_without_unit = false;
    std::vector<std::string> days_in_doubt;   // at most two; those of which the map does not say whether day or month stands first
    std::vector<std::string> articles;        // that the map does not hold, in the order of the list
    std::vector<OrderColumn> said_nowhere;    // of the columns that an article can state: those in which no line has anything
    FaultList faults;
};
// The words or names that the column takes; empty of a column of anything else.
std::vector<std::string> taken_by_column(OrderColumn column, const Catalogue& catalogue);

UnknownInList unknown_in(const Source& list, const Catalogue& catalogue, const ListMap& map);

}  // namespace shaftcut
