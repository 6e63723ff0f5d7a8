// What lines come to, by EN 16931-1:2017: each line is rounded once (line_amount()); the sum of the lines (BR-CO-10), tax once a rate on the sum of its
// lines (BR-CO-17), the total with tax (BR-CO-15). Where prices hold their tax, lines are what the customer pays, and tax is taken out of each rate's
// sum. Checked on the standard's published example invoices (tests/trade/quote/published_invoices_test.cpp) and against Python's decimal on random bills
// (tests/oracle/quote_arithmetic.py).
#pragma once

#include <vector>

#include "shaftcut/trade/quote/quote.hpp"

namespace shaftcut {

// The totals of lines that all have an amount. `ordered`: parts are ordered or made, so that a deposit is due.
QuoteTotals totals_of(const std::vector<QuoteLine>& lines, const Prices& prices, bool ordered);

}  // namespace shaftcut
