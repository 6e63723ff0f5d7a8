// Of the form's third part: lengths on the machine, or the machine's own dimensions.
#include "bench/bench_words_parts.hpp"

namespace shaftcut::bench_page {

BenchWords on_machine_words(const Wording& w)
{
    return {{"on_machine", w("On the machine")},
            {"on_machine_hint", w("Measure with nothing moving: PTO off, engine off, key in your pocket, machine blocked. Nobody between tractor and machine while it moves.")},
            {"way", w("How the lengths are found")},
            {"way_measured", w("Measured, in each position")},
            {"way_trailed", w("Alone, trailed: six lengths of pin, stub and shaft, straight and level")},
            {"way_mounted", w("Mounted: the linkage's lengths")},
            {"shortest", w("Shortest of all positions")},
            {"shortest_hint", w("One half on each stub, side by side; the least length of all positions, PTO on or off.")},
            {"longest_turning", w("Longest, PTO turning")},
            {"longest_turning_hint", w("The greatest length of all positions in which the PTO may turn. Measure with it off.")},
            {"longest_working", w("Longest, at work")},
            {"longest_working_hint", w("The greatest length in the usual working position.")},
            {"longest_standing", w("Longest, PTO stopped")},
            {"longest_standing_hint", w("The greatest length of all, such as lifted for the road or folded. Not measured: do not lift or fold with this shaft on.")},
            {"at", w("In which position")},
            {"at_raised", w("raised")},
            {"at_level", w("level")},
            {"at_lowered", w("lowered")},
            {"at_straight", w("straight")},
            {"at_left", w("turned left")},
            {"at_right", w("turned right")},
            {"between_crosses", w("between the crosses")},
            {"between_outer_cross", w("between the OUTER crosses")},
            {"between_inner_cross", w("between the INNER crosses")},
            {"between_grooves", w("between the stubs' grooves")},
            {"fit_drawing", w("The shaft between tractor and machine, and what its lengths run between.")},
            {"fit_number", w("Tractor %1")},
            {"fit_tractor", w("Which tractor")},
            {"fit_away", w("Take this tractor away")},
            {"tractor_2", w("the other tractor")},
            {"other_tractors", w("Other tractors that drive this machine")},
            {"other_none", w("none")},
            {"other_measure", w("measure another")},
            {"other_name", w("name one, not measured")},
            {"other_tractor", w("Tractor, not measured")}};
}

BenchWords machine_words(const Wording& w)
{
    return {{"way_trailed_hint", w("Straight ahead on level ground. From the groove of the PTO stub; what is behind it counts forwards to the rear.")},
            {"way_mounted_hint", w("In any one position. A pivot in front of the stub's groove is written with a minus.")},
            {"ranges_trailed_hint", w("How far the machine moves about the pin, to each side of straight and level, in degrees.")},
            {"ranges_mounted_hint", w("Height of the lower hitch point above ground, lowest and highest.")},
            {"trailed_pto_height", w("A PTO stub above ground")},
            {"trailed_pin_behind", w("B pin behind the stub's groove")},
            {"trailed_pin_height", w("C pin above ground")},
            {"trailed_input_behind", w("D machine's shaft behind the pin")},
            {"trailed_input_height", w("E machine's shaft above ground")},
            {"trailed_input_left", w("F machine's shaft left of the pin")},
            {"trailed_input_left_hint", w("Seen in the direction of travel; to the right with a minus; in line: 0.")},
            {"trailed_input_tilt", w("G machine's shaft rises to the rear")},
            {"trailed_turn", w("H turns, each side")},
            {"trailed_pitch", w("I pitches, up or down")},
            {"trailed_roll", w("J rolls, each side")},
            {"mounted_pto_height", w("A PTO stub above ground")},
            {"mounted_lower_pivot_behind", w("B lower pivot behind the groove")},
            {"mounted_lower_pivot_height", w("C lower pivot above ground")},
            {"mounted_lower_link", w("D lower link")},
            {"mounted_top_pivot_behind", w("E top pivot behind the groove")},
            {"mounted_top_pivot_height", w("F top pivot above ground")},
            {"mounted_top_link", w("G top link, pivot to pivot")},
            {"mounted_mast", w("H lower to upper hitch point")},
            {"mounted_input_behind", w("I machine's shaft behind the hitch")},
            {"mounted_input_above", w("J machine's shaft above the hitch")},
            {"mounted_input_tilt", w("K machine's shaft rises to the rear")},
            {"mounted_lowest", w("L lowest")},
            {"mounted_highest", w("M highest")},
            {"range_working", w("At work")},
            {"range_turning", w("PTO turning")},
            {"range_standing", w("PTO stopped")},
            {"move", w("Position in its range")},
            {"play", w("Let it move")},
            {"stop", w("Stop")}};
}

}  // namespace shaftcut::bench_page
