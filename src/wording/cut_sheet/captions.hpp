// Captions and headings of the cut sheet: texts that hold no figure.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut::cut_sheet {

// Of the title block, and of the sheets that follow.
enum class TitleCaption { type, lengths_type, date, approved, customer, machine, not_here, tractor, other_tractors };
// Over lists of sentences.
enum class ListHeading { steps, look_out, notes, why, instead, confirmed_and_why };
// In the drawing of a half and in its boxes.
enum class HalfCaption {
    tube, guard, cut_off, do_not_cut, not_measured_in_brackets, confirm_in_brackets, hold_side_by_side, centre_of_cross, inner_cross, outer_cross, no_guard, damaged_guard
};
// In boxes to write in.
enum class EntryCaption { yes, no, name, date, signature, closed };
// Of the tables behind sheet 1.
enum class TableCaption {
    all_checks, check, result, value, worst_case, limit, readings, length, as_stated, between_inner_crosses, inner_cross_to_free_end, not_known, not_measured, limits, source
};
// Of the table of what the job states.
enum class StatedCaption {
    heading, what, as_stated, shaft_number, telephone, hitch, power, other_tractors, no_other_tractors, machine, machine_elsewhere, measured, came_in, loosened, no_series, no_guard, damaged_guard
};

std::string say(TitleCaption caption, const Wording& w);
std::string say(ListHeading heading, const Wording& w);
std::string say(HalfCaption caption, const Wording& w);
std::string say(EntryCaption caption, const Wording& w);
std::string say(TableCaption caption, const Wording& w);
std::string say(StatedCaption caption, const Wording& w);

}  // namespace shaftcut::cut_sheet
