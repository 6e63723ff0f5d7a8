// The two sheets of a saw plan's workbook.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "shaftcut/trade/saw/saw_order.hpp"
#include "spreadsheet/sheet_builder.hpp"
#include "spreadsheet/spreadsheet.hpp"

namespace shaftcut::saw_workbook {

// The columns of a table of bars, its heads, and a row for each piece of each bar to be cut differently. Its formulas need the names
// kerf, trim_start, trim_end and reusable_leftover.
std::vector<double> bar_column_widths(Units units);
void put_bar_heads(workbook::SheetBuilder& sheet, Units units);
void put_bars(workbook::SheetBuilder& sheet, const SawOrder& order);

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
