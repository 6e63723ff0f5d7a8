// Lists of shafts to be made, as CSV, workbooks or XML. What can be read of a list with faults is still there to be built.
#pragma once

#include <deque>

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/build_order.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "lists/order_columns.hpp"
#include "source/faults.hpp"

namespace shaftcut {

inline constexpr std::size_t most_orders = 20'000;

// `orders`: those without a fault, in the list's order. `faults`: of all others and of the file, in the order of their places.
// `units`: of the list's lengths. A deque, so that each order can go once it is built.
struct OrderList {
    std::deque<BuildOrder> orders;
    FaultList faults;
    Units units = Units::mm;
};

// Of CSV or a workbook (list_reader.hpp). One order a line under a header that names the columns; see docs/build-orders.md. `units` is that of lengths that carry none.
// Faults beside those of form: a series or connection that `catalogue` does not hold, a wide-angle joint of a series that has
// none, neither a closed length nor shortest and longest_turning, or both, what says nothing between grooves or without a fit, no
// reference where one is needed, an order number that stands there twice or names the files of another (none of them is built), and more than
// most_orders lines, of which none is built. `map`: an office's own, by which headings and values are read and articles say what a line does
// not; at fault are then an article that it does not hold and a line that says other than its article. Checked in tests/reading/orders_reader_test.cpp.
OrderList read_orders_csv(const Source& source, const Catalogue& catalogue, Units units, const ListMap* map = nullptr);

// `orders` with an `order` for each, in a job's words: `for`, `shaft` without halves, and `fit`, with lengths or a machine's
// geometry, or a closed length in `shaft`. The same faults. Of a file that is no sound XML nothing is built.
// config/orders.xsd says the same for editors. Checked in the same tests and by tests/reading/bad/.
OrderList read_orders_xml(const Source& source, const Catalogue& catalogue);

}  // namespace shaftcut
