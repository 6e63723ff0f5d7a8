// What an article of an office's map says of a line. Checked in tests/reading/lists_reader_test.cpp.
#pragma once

#include "lists/order_columns.hpp"

namespace shaftcut {

// The line, whose lengths without a unit are in `units`, with what its article states where it says nothing itself. At fault: an article that `map` does not hold, and what the line
// says otherwise than its article.
TableRow with_article(TableRow cells, const ListMap& map, Units units, Faults& faults);

}  // namespace shaftcut
