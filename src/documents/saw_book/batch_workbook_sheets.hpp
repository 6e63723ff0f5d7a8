// The sheets of a batch's workbook.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "shaftcut/trade/build/batch.hpp"
#include "spreadsheet/spreadsheet.hpp"

namespace shaftcut::batch_workbook {

// A sheet, and the names that stand for cells of it.
struct NamedSheet {
    Worksheet sheet;
    std::vector<std::pair<std::string, std::string>> names;
};

// Rows are made while the workbook is written: `batch` must live until then.
NamedSheet orders_sheet(const Batch& batch, const std::string& footer);
// "Orders!$C$7": how many shafts of the order at this index.
std::string count_cell(std::size_t order);

// Parts, and PartsByOrder that it sums.
std::vector<Worksheet> parts_sheets(const Batch& batch, const std::string& footer);

NamedSheet saw_sheet(const Batch& batch, const std::string& footer);

}  // namespace shaftcut::batch_workbook
