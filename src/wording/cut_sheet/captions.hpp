// Captions and headings of the cut sheet: texts that hold no figure.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut::cut_sheet {

// Of the title block, and of the sheets that follow.
enum class TitleCaption { type, lengths_type, date, approved, customer, machine, not_here, tractor, other_tractors };
// Over lists of sentences.
enum class ListHeading { look_out, not_checked, notes, why, instead, confirmed_and_why, sources };
// In the drawing of a half and in its boxes.
enum class HalfCaption {
    tube, guard, cut_off, do_not_cut, not_measured_in_brackets, confirm_in_brackets, hold_side_by_side, centre_of_cross, inner_cross, outer_cross, no_guard, damaged_guard
};
// In boxes to write in.
enum class EntryCaption { name, date, signature };
// Over the steps of a side.
enum class RuleCaption { all_off, small_steps };
// In the frame of a position: in front of its sums.
enum class RingCaption { expected, read, from, to, never_under, never_over };
// Of the tables behind sheet 1.
enum class TableCaption {
    all_checks, check, result, value, worst_case, limit, readings, length, as_stated, between_inner_crosses, inner_cross_to_free_end, not_known, not_measured, source
};
// Of the table of what the job states.
enum class StatedCaption {
    heading, what, as_stated, shaft_number, telephone, hitch, power, other_tractors, no_other_tractors, machine, machine_elsewhere, measured, came_in, loosened, no_series, no_guard, damaged_guard
};

std::string say(TitleCaption caption, const Wording& w);
std::string say(ListHeading heading, const Wording& w);
std::string say(HalfCaption caption, const Wording& w);
std::string say(EntryCaption caption, const Wording& w);
std::string say(RuleCaption caption, const Wording& w);
std::string say(RingCaption caption, const Wording& w);
// A sum behind what it is for: "from P + 71 mm = ▭".
std::string on_rings(RingCaption caption, const std::string& sum, const Wording& w);
std::string say(TableCaption caption, const Wording& w);
std::string say(StatedCaption caption, const Wording& w);

}  // namespace shaftcut::cut_sheet
