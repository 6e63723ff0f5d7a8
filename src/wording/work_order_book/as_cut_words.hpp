// The shaft as it is after the cut: the Order sheet's block, and the figures on the Basis sheet that it rests on.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/checks/checks.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

std::string as_cut_heading(const Wording& w);
std::string as_cut_gives_heading(const Wording& w);
// Above the four lengths, and above what they give.
std::vector<std::string> as_cut_part_heads(const Wording& w);
std::vector<std::string> as_cut_heads(const Wording& w);
std::string as_cut_legend(const Wording& w);
std::string as_cut_verdict(const Wording& w);

enum class AsCutName { clearance, overlap_working, overlap_turning, overlap_standing, guard_clearance, guard_cover, guard_setback };
std::string name_of(AsCutName which, const Wording& w);

// What is done next; nothing while nothing was measured.
std::string next_step(std::optional<AfterCutVerdict> verdict, const Wording& w);

// Figures of one half, and of the whole shaft.
enum class AsCutFigure {
    kept, length, need, again, within, judged, at_worst, own_lack, blamed, short_by,
    guard_kept, guard_length, guard_most, guard_need, guard_again, guard_within, guard_judged, guard_sawn, guard_short_by
};
std::string name_of(AsCutFigure which, Tube tube, const Wording& w);

enum class AsCutFact { known, closes, stops_early, closed_overlap, overlap_lacks, tube_too_little, tube_forbidden, exchanged, guards_within, guard_cover_worst, guards_stop };
std::string name_of(AsCutFact which, const Wording& w);

std::string overlap_as_cut(Range range, const Wording& w);
std::string least_overlap_as_cut(Range range, const Wording& w);

}  // namespace shaftcut::workbook
