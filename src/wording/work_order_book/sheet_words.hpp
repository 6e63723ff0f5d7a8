// What stands on more than one sheet of the work order's workbook: titles, heads, rules of cells, the halves' names.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string work_order_title(const std::string& order, const Wording& w);

// The foot of every sheet.
enum class Foot { pale_cells, danger };
std::string foot(Foot which, const Wording& w);
std::string page_of_pages(const std::string& page, const std::string& pages, const Wording& w);

// What a program says to something else than a cell takes, and what stands above that.
std::string refused_entry(const Wording& w);
std::string takes_a_length(const Wording& w);
std::string takes_a_length_in(const std::string& unit, const Wording& w);

// "Tractor half (inner tube)", and what belongs to it.
std::string half_name(End end, Tube tube, const Wording& w);
std::string guard_name(End end, Tube tube, const Wording& w);
// From where to where a half and its guard are measured.
enum class Measured { half, half_or_derived, guard, guard_or_not, guard_not_used };
std::string measured_between(Measured what, const Wording& w);

// A figure that nothing states.
std::string not_known(const Wording& w);

}  // namespace shaftcut::workbook
