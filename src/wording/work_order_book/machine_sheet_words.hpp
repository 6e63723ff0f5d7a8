// The workbook's sheet of a machine: the table behind its curve, and the curve.
#pragma once

#include <string>
#include <vector>

#include "wording.hpp"

namespace shaftcut::workbook {

// Over the lift of a mounted machine or the turn of a trailed one; `tractor` may be empty.
std::string machine_title(bool mounted, const std::string& order, const std::string& tractor, const Wording& w);
std::string machine_remark(bool mounted, const Wording& w);
std::vector<std::string> machine_heads(bool mounted, const Wording& w);
std::string joint_angles(Angle tractor, Angle implement, const Wording& w);

std::string position_axis(bool mounted, const Wording& w);
std::string length_axis(const Wording& w);
enum class CurveName { telescoping, level, shortest, longest, least_overlap };
std::string name_of(CurveName which, const Wording& w);

}  // namespace shaftcut::workbook
