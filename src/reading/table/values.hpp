// What spreadsheets leave in a cell, made into what the strict readers of words/parse.hpp take; what can be read in two ways is asked.
// Checked by tests/reading/table/values_test.cpp.
#pragma once

#include <optional>
#include <string>
#include <variant>

#include "source/findings.hpp"

namespace shaftcut {

// What stands in a column. `word`: one of the file's words, or what stands for it in another language (terms.hpp); `length`: with a unit or none, decimals or a fraction; `number`: with decimals; `whole`: without; `order`: an order's number.
enum class Holds { text, word, length, number, whole, order, date };

// What decimals are written with in a list: a comma where the separator is none.
enum class DecimalMark { point, comma };

// Which of 4/12/26 is the month, of a list whose days are all written so.
enum class DateOrder { day_first, month_first };

// The text as it is read on, or what is wrong with it. `name` is the column's. Of text and whatever is not seen to be one of these: as it is.
//   length, number, whole: "742,5" is 742.5 where decimals have a comma; "1.250" there, "1,250" anywhere and "1.250" of a whole number can be read
//     in two ways and are asked; so are digits in groups, "1 250", "1.250,5".
//   whole: "2,00" and "2.0" are 2.
//   all of these and order: "1,2E+05" is refused: a spreadsheet has dropped digits.
//   word: "Weitwinkel" is wide-angle.
//   date: "4.12.2026" is 2026-12-04; with slashes, or a year of two digits, it is asked where no order is fixed. By a fixed one 4/12/26 is one day; with points the day is always first.
std::variant<std::string, FaultFinding> plain_value(const std::string& text, const std::string& name, Holds holds, DecimalMark mark, std::optional<DateOrder> days = {});

}  // namespace shaftcut
