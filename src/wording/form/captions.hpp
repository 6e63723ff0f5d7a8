// Captions of the blank measuring form: what stands beside the words of a job file, which the form uses as they are.
#pragma once

#include <string>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::measuring_form {

// Of each sheet.
enum class TitleCaption {
    title, sheet_shaft, sheet_halves, sheet_lengths, sheet_trailed, sheet_mounted, units_mm, units_in, instead_units_mm, instead_units_in, shaft_number, hitch, machine_here
};
enum class CautionCaption { turning_shaft, pto_off, engine_off, key_out, machine_blocked, nothing_moving, each_position };
// What is read off the shaft before anything is loosened.
enum class ShaftCaption { hint, series, spacing, shape, primary_role, secondary_role, inner_tube, year };
enum class ConditionCaption { hint, locks, crosses, device, phase, slides, do_not_cut };
enum class ClosedCaption { wide_angle_joint, standard_joint, pushed_together, one_cross, outer_cross, inner_cross };
enum class EndCaption { hint, lock, device, where_connections, connection_and_where, tractor_connection, tractor_onto, implement_connection, implement_onto };
// The halves, parted.
enum class HalfCaption { hint, hint_black, hint_boxes, guard_not_used, inner_stop_depth, outer_stop_depth, series, spacing, series_not_known, wide_angle_joint, standard_joint };
// How the lengths at the machine are measured, and each of them.
enum class FitCaption { hint, between_crosses, between_grooves };
enum class PositionCaption { heading, hint, mounted, trailed, from_side, from_above, at };
enum class AngleCaption { hint, two_views, needed_for, angle, stub, tube };
// The machine's own dimensions.
enum class MachineCaption {
    trailed_hint, trailed_words, ranges, trailed_ranges_hint, trailed_ranges_words, mounted_hint, mounted_words, mounted_ranges_hint, leave_out
};
// Whose figures they are.
enum class WhoseCaption {
    other_tractors, other_tractor, tractor, tractor_and_another, measured_by, with_tape, with_gauge, clearance, limit, why, by_whom, back_at_bench
};

std::string say(TitleCaption caption, const Wording& w);
std::string say(CautionCaption caption, const Wording& w);
std::string say(ShaftCaption caption, const Wording& w);
std::string say(ConditionCaption caption, const Wording& w);
std::string say(ClosedCaption caption, const Wording& w);
std::string say(EndCaption caption, const Wording& w);
std::string say(HalfCaption caption, const Wording& w);
std::string say(FitCaption caption, const Wording& w);
std::string say(PositionCaption caption, const Wording& w);
std::string say(AngleCaption caption, const Wording& w);
std::string say(MachineCaption caption, const Wording& w);
std::string say(WhoseCaption caption, const Wording& w);

// What a word to tick means.
std::string meaning(JointKind joint, const Wording& w);
std::string meaning(Lock lock, const Wording& w);
std::string meaning(Device device, const Wording& w);
std::string meaning(Range range, const Wording& w);

}  // namespace shaftcut::measuring_form
