// Lists as Excel workbooks (.xlsx): the values of the first sheet that is shown, as a list's rows. Formulas count by the value that the program has
// stored. Source: ECMA-376 part 1, SpreadsheetML, from memory; what LibreOffice writes is tried. Checked by tests/reading/lists_test.cpp.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "table/table.hpp"

namespace shaftcut {

// Whether these bytes are to be read so: they are a zip file.
bool is_xlsx(std::string_view bytes);

// As read_csv(): the first row with anything in it is the heading, rows and columns may be empty, spots are the sheet's row and column, from 1.
// A cell with a number is that number, one with a day's format the day, yes and no of a logical value. Text is read as in a CSV whose decimals have
// a comma. At most most_csv_fields columns. Refused whole: what is no such workbook, needs a password, holds more than 16 MB packed or unpacked.
// At fault cell by cell: an error value, a formula without a value, a number below zero or of more than 15 digits, a character that nobody sees.
Faults read_xlsx(std::string_view bytes, const std::string& file, const std::vector<TableColumn>& columns, const TableLimit& limit, const TakeRow& take);

}  // namespace shaftcut
