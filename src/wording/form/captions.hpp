// Captions of the blank measuring form: what stands at its headings, boxes and pictures, and where a figure has no part in it.
#pragma once

#include <string>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::measuring_form {

// Of both sides.
enum class TitleCaption {
    front, back, units_mm, units_in, order, date, customer, phone, machine, tractor, power, shaft_number, hitch, machine_here, yes, no, plus_minus, none, minus
};
enum class CautionCaption { turning_shaft, pto_off, engine_off, key_out, machine_blocked, nothing_moving, each_position };
// What is read off the shaft, still together.
enum class ShaftCaption {
    heading, hint, series, spacing, speed, year, section, calliper, width_inner, wall_inner, width_outer, wall_outer, primary_role, secondary_role, inner_tube
};
enum class ConditionCaption { heading, hint, guard, chains, locks, crosses, tubes, weld, device, phase, slides, do_not_cut };
enum class ClosedCaption {
    heading, together, strokes, outer_cross, inner_cross, only_cross, dashed, both, tractor_end, machine_end
};
enum class EndCaption { heading, hint, tractor_tick, machine_tick, joint, device, tractor_connection, tractor_onto, machine_connection, machine_onto };
enum class LimitCaption { clearance, limit, why, by_whom };
// The halves, parted.
enum class HalfCaption {
    heading, hint, hint_boxes, inner_half, outer_half, guard, guard_missing, guard_damaged, lubrication_hole, shoulder, stop_depth, length, series, spacing, cross_to_groove,
    series_not_known, inner_stop_depth, outer_stop_depth
};
// On the machine: how the lengths are measured, each position, the joints' angles.
enum class FitCaption { heading, hint, measured, outer_crosses, inner_crosses, crosses, grooves, position, length };
enum class AngleCaption { heading, hint, two_views };
// On the machine: its own dimensions in the place of the lengths.
enum class MachineCaption { trailed_heading, mounted_heading, computed, trailed_words, mounted_words, trailed_ranges, mounted_ranges };
// Whose figures they are.
enum class WhoseCaption { hole_and_hitch, measured_tractor, other_tractors, other_tractor, measured_by, measured_on, with };

// Of the form that asks for what tells a shaft's series.
enum class IdentifyCaption {
    title, shaft, writing, how_heading, how_hint, span, bore, cap, spacing, spacer_box, ends_heading, ends_hint, tractor_end, machine_end, one_or_inner, outer, cap_box, again_box, second_cap_box,
    span_box, second_span_box, spacing_box, in_bore, on_cap, circlips, nipple, tubes_heading, tubes_hint, width_lemon, width_star, width_flats, width_rounding, width_splined, width_other, tube_a, tube_b, which_tube,
    not_known, width_box, wall_box, closed_heading, closed_hint, closed_box, with
};

std::string say(TitleCaption caption, const Wording& w);
std::string say(IdentifyCaption caption, const Wording& w);
std::string say(CautionCaption caption, const Wording& w);
std::string say(ShaftCaption caption, const Wording& w);
std::string say(ConditionCaption caption, const Wording& w);
std::string say(ClosedCaption caption, const Wording& w);
std::string say(EndCaption caption, const Wording& w);
std::string say(LimitCaption caption, const Wording& w);
std::string say(HalfCaption caption, const Wording& w);
std::string say(FitCaption caption, const Wording& w);
std::string say(AngleCaption caption, const Wording& w);
std::string say(MachineCaption caption, const Wording& w);
std::string say(WhoseCaption caption, const Wording& w);

}  // namespace shaftcut::measuring_form
