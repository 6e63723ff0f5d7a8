// A quote's lines on a terminal. Checked with tests/commands/quote_test.cpp.
#pragma once

#include <string>

#include "shaftcut/trade/quote/quote.hpp"
#include "wording.hpp"

namespace shaftcut {

// "quote K-1042", "quote orders-Meadow-Farm for Meadow Farm".
std::string title_of(const Quote& quote, const Wording& w);
// "2 pieces of 18.40", "6 min at 62.00 an hour".
std::string quantity_of(const QuoteLine& line, const Currency& currency, const Wording& w);
// The amount that stands before a line: "free", "not priced", "18.40", "75.00 to 95.00".
std::string amount_of(const QuoteLine& line, const Currency& currency, const Wording& w);
std::string line_said(const QuoteLine& line, const Currency& currency, const Wording& w);

std::string net_said(const Quote& quote, const Wording& w);   // `totals` must be there, here and below
std::string tax_said(const TaxSum& sum, const Quote& quote, const Wording& w);
std::string total_said(const Quote& quote, const Wording& w);
std::string deposit_said(const Quote& quote, const Wording& w);
std::string no_total(const Wording& w);

std::string said_with_price(const Alternative& one, const Currency& currency, const Wording& w);
std::string valid_said(const Quote& quote, const Wording& w);
// Of an order of a list that is not offered.
std::string not_offered(const std::string& order, const Wording& w);
// What of its firm the workshop does not state; empty where all is.
std::string firm_not_stated(const Firm& firm, const Wording& w);

// In front of a line.
std::string instead_name(const Wording& w);
std::string total_name(const Wording& w);
std::string note_name(const Wording& w);

}  // namespace shaftcut
