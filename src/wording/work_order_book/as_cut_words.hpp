// The Order sheet's block for the shaft as it is after the cut.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/checks/checks.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string as_cut_heading(const Wording& w);
std::vector<std::string> as_cut_heads(const Wording& w);
std::string as_cut_legend(const Wording& w);
std::string as_cut_verdict(const Wording& w);

enum class AsCutName { clearance, overlap_working, overlap_turning, overlap_standing, guard_clearance, guard_cover, guard_setback };
std::string name_of(AsCutName which, const Wording& w);

// What is done next.
enum class AsCutNext { fits, fits_with_warning, refused, measure };
std::string next_step(AsCutNext next, const Wording& w);

}  // namespace shaftcut::workbook
