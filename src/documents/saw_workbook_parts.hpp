// The two sheets of a saw plan's workbook.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "shaftcut/documents/spreadsheet.hpp"
#include "shaftcut/trade/saw_order.hpp"

namespace shaftcut::saw_workbook {

Worksheet bars_sheet(const SawOrder& order, const std::string& footer);

// The range of one of the sums' columns on the sheet Bars: "Bars!$B$3:$B$20".
enum class Sum { alike, bars_length, pieces_length, rack_length, over };
std::string range_of(const SawOrder& order, Sum sum);

struct PlanSheet {
    Worksheet sheet;
    std::vector<std::pair<std::string, std::string>> names;
};
PlanSheet plan_sheet(const SawOrder& order, const std::string& footer);

}  // namespace shaftcut::saw_workbook
