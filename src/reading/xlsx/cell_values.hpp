// Numbers and days of a workbook's cells, as texts that the readers of lists take. Checked by tests/reading/xlsx/cell_values_test.cpp.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace shaftcut {

// "742.5" of "742.50000000000011": a plain decimal number with what a spreadsheet shows, at most 15 digits. Nothing where it is no number, or one of
// which digits are lost, 10^15 and more, or one below zero.
std::optional<std::string> plain_number(std::string_view value);

// "2026-12-04" of 46360.25, the days since 1899-12-30, or since 1904-01-01; the time of day is dropped. Nothing outside 1900-03-01 to 9999-12-31: the
// days before are counted differently by different programs.
std::optional<std::string> day_of_serial(std::string_view value, bool since_1904);

// Whether a number format shows a day: it has a d, m or y that is not quoted, not escaped and not in brackets. ECMA-376 part 1, 18.8.30 and
// 18.8.31, from memory.
bool is_day_format(std::string_view format);
// Of the formats that have a number only.
bool is_day_format(int built_in);

}  // namespace shaftcut
