// The two sheets of a quote's workbook.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "quote_book/quote_figures.hpp"
#include "spreadsheet/sheet_builder.hpp"
#include "spreadsheet/spreadsheet.hpp"
#include "wording.hpp"

namespace shaftcut::quote_book {

// Rows of the desk's sheet that the customer's shows; -1: there is none.
struct DeskRows {
    int first_line = 0;              // of the lines, one below the other
    int minimum = -1;
    std::vector<int> discounts, taxes;  // of each rate
    int net = -1, total = -1, total_up_to = -1, deposit = -1;
};

struct DeskSheet {
    Worksheet sheet;
    std::vector<std::pair<std::string, std::string>> names;
    DeskRows rows;
};

DeskSheet desk_sheet(const Quote& quote, const Figures& figures, const Wording& w);
Worksheet customer_sheet(const Quote& quote, const Figures& figures, const DeskRows& desk, const Wording& w);

// As cells hold it: whole units of the currency, and its number format.
double units_of(Money amount, const Currency& currency);
std::string money_format(const Currency& currency);
std::int64_t minor_in_unit(const Currency& currency);

// A cell of the sheet Desk, from another sheet.
std::string desk_cell(int row, int column);

// Columns of the sheet Desk, as they stand.
enum DeskColumn { number, what, quantity, unit, price, amount, tax, beside, minor, rate, base, most, most_tax };

}  // namespace shaftcut::quote_book
