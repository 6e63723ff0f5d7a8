// A quote as the desk's own XLSX workbook, which recalculates.
//
// Sheet Desk: hourly rate, discount, and of each line its quantity (of work its minutes) and price are unlocked; the amounts, the minimum
// charge, the taxes, the totals and the deposit follow by the program's own rule: quantities are thousandths and prices minor units of the
// currency, both whole numbers, a product of two is exact and rounded once, and only what is shown is divided. A product above 10¹⁴ is not
// counted but called TOO GREAT: below it neither a tie nor what lies beside one is moved by the 15 digits that programs calculate with. A line
// without a price says NOT PRICED and the totals are empty. Sheet Customer shows it without minutes and rate, on one page.
// Checked in tests/documents/quote_book, and by tests/oracle/quote_workbook.py: another program recalculates it for random inputs, and Python's
// decimal must agree.
#pragma once

#include <string>

#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/quote/quote.hpp"
#include "wording.hpp"

namespace shaftcut {

// The XLSX file. Workbook-level names: inputs `hourly_rate`, `discount_percent`, `discount_amount`, `line_1_quantity`, `line_1_price`, …, of an
// estimate `line_1_most`; fixed `minimum_charge`, `deposit_percent`, `deposit_from`; results `line_1_amount`, …, `minimum_amount`,
// `discount_1_amount`, …, `tax_1_base`, `tax_1_amount`, …, `net`, `total`, `total_up_to`, `deposit`, `open_lines`, `verdict`. Lines are counted
// without those of the minimum charge and the discount; tax rates from the usual one on. What a quote has not, has no name.
std::string quote_workbook_of(const Quote& quote, const Wording& w, Paper paper);

}  // namespace shaftcut
