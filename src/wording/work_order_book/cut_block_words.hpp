// The Order sheet's cut, and the shaft after it.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string cut_heading(const Wording& w);
std::vector<std::string> cut_heads(const Wording& w);

// "C  Tractor half (inner tube): tube", with its letter on the cut sheet.
struct CutPiece {
    End end = End::tractor;
    Tube tube = Tube::inner;
    bool guard = false;
};
std::string piece_name(const CutPiece& piece, const Wording& w);

enum class HowToSaw { tube, guard, guard_unmeasured, guard_not_used, not_at_all };
std::string how_to_saw(HowToSaw how, const Wording& w);

std::string after_heading(const Wording& w);
enum class AfterName { closed, clearance, overlap_closed_before, overlap_closed, overlap_shortest, overlap_working, overlap_turning, overlap_standing };
std::string name_of(AfterName which, const Wording& w);
// How a figure after the cut is meant.
enum class AfterRemark { inner_crosses, outer_cross, clearance, overlap_closed_before, overlap_closed };
std::string remark(AfterRemark which, const Wording& w);

}  // namespace shaftcut::workbook
