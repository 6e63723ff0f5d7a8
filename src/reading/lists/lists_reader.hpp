// An office's own maps of its lists of orders, config/lists.xml.
#pragma once

#include <vector>

#include "lists/order_columns.hpp"
#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "source/read.hpp"

namespace shaftcut {

// Reads `lists` with its maps. Faults beside those of form: two maps of one name, in one map two columns of one heading, two values of one
// text in one column or two articles of one number, a value that its column does not take, a series or connection that `catalogue` does
// not hold, and a closed length outside the bounds of bounds.hpp. config/lists.xsd says the same for editors. Checked in
// tests/reading/lists_reader_test.cpp and by tests/reading/bad/.
Read<std::vector<ListMap>> read_lists(const Source& source, const Catalogue& catalogue);

}  // namespace shaftcut
