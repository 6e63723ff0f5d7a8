// What the workbook of a quote says in its cells. Sheets' names, names of cells and formulas are not wording; what the customer's sheet shares
// with the paper is said by the paper's words. Checked in tests/documents/quote_book.
#pragma once

#include <string>

#include "shaftcut/trade/quote/quote.hpp"
#include "wording.hpp"

namespace shaftcut::quote_book_words {

// In what a sheet has at its head and foot, & begins a mark of the spreadsheet's own.
enum class Caption {
    footer, customer_header, desk_header,
    for_the_desk, inputs, hourly_rate, hourly_rate_remark, discount_percent, discount_amount, discount_remark, minimum, minimum_remark, deposit_percent, deposit_from, deposit_remark,
    lines, nothing_billed, totals, net, total, total_up_to, deposit, deposit_due, open_lines, verdict, complete, one_discount, too_great, not_priced, free_of_charge, off_it,
    alternatives, alternative, with_tax, working_days, not_known, cheapest, soonest, from, at_most,
    quantity_range, price_range, percent_range
};
std::string say(Caption caption, const Wording& w);

// The columns of the desk's lines; their order is the sheet's. The last ones are what the formulas count with.
enum class Column { number, what, quantity, unit, price, amount, tax, beside, minor, rate, base, most, most_tax };
// `estimate`: the lines' amounts at most stand beside them, else why a line has no price.
std::string head(Column column, bool estimate, const Currency& currency, const Wording& w);

std::string desk_title(const std::string& number, const Wording& w);
std::string unit_name(QuoteUnit unit, const Wording& w);  // "pieces", "min", "m"; empty of what is said by its amount alone
std::string rate_name(const Quote& quote, const OwnTax& rate, const Wording& w);  // "VAT 21 %"

}  // namespace shaftcut::quote_book_words
