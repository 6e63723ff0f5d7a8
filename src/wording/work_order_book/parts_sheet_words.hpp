// The workbook's sheet of parts and operations.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string parts_sheet_name(const Wording& w);  // at most 31 characters
std::string parts_title(const std::string& order, const Wording& w);

enum class PartsBlock { tubes, operations, parts, cautions };
std::string heading(PartsBlock block, const Wording& w);
// Of the five columns; none for the cautions.
std::vector<std::string> heads(PartsBlock block, const Wording& w);

// "Tractor half (inner tube): drive tube (mm)".
std::string tube_to_saw(End end, Tube tube, bool guard, const Wording& w);
std::string no_operations(const Wording& w);

// What may be written where something is done, and what a program says to anything else.
std::vector<std::string> ticks(const Wording& w);
std::string takes_a_tick(const Wording& w);

// What still holds of the sheet. `sheet`: the one that says more; `count` may be a formula.
std::string parts_of_refused(const std::string& sheet, const Wording& w);
std::string parts_of_changed(const Wording& w);
std::string parts_as_issued(const Wording& w);
std::string confirm_before_parts(const std::string& count, const std::string& sheet, const Wording& w);

}  // namespace shaftcut::workbook
