// A list, whatever the form of its file: a workbook where it is a zip file, else CSV. As read_csv() and read_xlsx(). Checked by
// tests/reading/lists_test.cpp.
#pragma once

#include "csv/csv.hpp"
#include "xlsx/xlsx.hpp"

namespace shaftcut {

inline Faults read_list(std::string_view bytes, const std::string& file, const std::vector<TableColumn>& columns, const TableLimit& limit, const TakeRow& take)
{
    return is_xlsx(bytes) ? read_xlsx(bytes, file, columns, limit, take) : read_csv(bytes, file, columns, limit, take);
}

}  // namespace shaftcut
