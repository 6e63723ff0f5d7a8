// The Basis sheet's figures: how each is called, and where the fixed ones come from.
#pragma once

#include <string>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

enum class FigureName {
    stops_known, path_confirmed, modelled_closed, agreement, guards_stop, exchanged_closed, closed_most, cut_known,
    clearance, clearance_worst, tube_left, guard_clearance, guard_cover, guard_cover_worst, guard_setback, greatest_longest, greatest_longest_at_most, guard_cut_away,
    saw_step, least_cut, saw_plus_minus
};
std::string name_of(FigureName which, const Wording& w);

std::string path_name(Tube tube, const Wording& w);
std::string most_name(Tube tube, const Wording& w);
std::string shoulder_name(End end, Tube tube, const Wording& w);
std::string stop_name(End end, Tube tube, const Wording& w);

// A half's fixed figures.
enum class HalfFigure { guard_shoulder, least_guard, seat, least_tube, cut_to, lubrication_hole };
std::string name_of(HalfFigure which, End end, Tube tube, const Wording& w);

enum class OverlapFigure { value, worst, limit };
std::string overlap_name(Range range, OverlapFigure which, const Wording& w);

// Where a fixed figure comes from.
enum class Origin { measured, earlier_sheet, series, half_series, workshop };
std::string origin(Origin from, const Wording& w);
std::string origin_by_stop_depth(Length depth, const Wording& w);
std::string origin_of_least_guard(bool seat_known, Length free, const Wording& w);

}  // namespace shaftcut::workbook
