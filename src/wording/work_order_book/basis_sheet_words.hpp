// The Basis sheet of the work order's workbook: its headings and how its figures are found.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string basis_title(const std::string& order, const Wording& w);
std::string basis_introduction(const Wording& w);

enum class BasisBlock { lengths, findings, stops, compared, as_cut, fixed, limits, checks, expressions };
std::string heading(BasisBlock block, const Wording& w);
// Of the five columns; none for the last two blocks.
std::vector<std::string> heads(BasisBlock block, const Wording& w);

// How a length between the crosses follows from what is typed in.
enum class LengthRead {
    as_measured, half_or_derived, deciding, of_geometry, of_geometry_inner_crosses, joints_in_line, joints_bent
};
std::string how_it_is_read(LengthRead read, const Wording& w);
std::string less_joint_spacing(const std::string& millimetres, const Wording& w);

// How a figure about where the tubes stop is found.
enum class StopFound { path_confirmed, modelled_closed, agreement, exchanged_closed };
std::string how_it_is_found(StopFound found, const Wording& w);
std::string how_path_is_found(Tube tube, const Wording& w);

}  // namespace shaftcut::workbook
