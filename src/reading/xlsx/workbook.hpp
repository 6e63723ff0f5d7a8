// What a workbook's sheet is made of: its parts unpacked, what its cells refer to, and its rows. Checked by tests/reading/lists_test.cpp.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "source/findings.hpp"

namespace shaftcut {

// A cell with something in it, by its row and column on the sheet, from 1.
struct SheetCell {
    int row = 1, column = 1;
    std::string text;
    bool is_figure = false;  // a number or day, whose form is not in doubt
    std::optional<Unfit> wrong = {};
};

using SheetRow = std::vector<SheetCell>;

// The rows with something in them, in the order of the sheet; columns ascend in each. Or why there are none.
std::variant<std::vector<SheetRow>, FormFault> rows_of_first_sheet(std::string_view bytes);

}  // namespace shaftcut
