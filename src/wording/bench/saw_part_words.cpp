// Of the saw, the choice of another shaft, the quote, and which shaft it is.
#include "bench/bench_words_parts.hpp"

namespace shaftcut::bench_page {

BenchWords saw_words(const Wording& w)
{
    return {{"saw", w("At the saw")},
            {"front", w("Front: until the last saw stroke")},
            {"back", w("Back: from the first file stroke on")},
            {"touch_off", w("touch when done")},
            {"done", w("done")},
            {"do_not_saw", w("Do not saw.")},
            {"as_expected", w("As expected.")},
            {"not_as_expected", w("Not as expected: do not saw. Read it again; if it stays, the cuts change.")},
            {"put_reading_in", w("Put this reading in")},
            {"marks", w("What the marks must read")},
            {"after_cut", w("After the cut")},
            {"after_cut_hint", w("Type what the tape says now; what you do not measure stays empty.")},
            {"inner_guard_after", w("Guard of the inner half, from its cross")},
            {"outer_guard_after", w("Guard of the outer half, from its cross")},
            {"inner_stands_out", w("or: inner tube stands out of its guard by")},
            {"outer_stands_out", w("or: outer tube stands out of its guard by")},
            {"closed_after", w("Closed length now")},
            {"mark_overall_dry", w("Over both outer ends, dry (O)")},
            {"mark_overall", w("Over both outer ends, guards on (O)")},
            {"mark_closed", w("Ring to ring, together (P)")},
            {"mark_shortest", w("Ring to ring at the shortest")},
            {"mark_turning", w("Ring to ring at the longest, PTO turning")},
            {"mark_standing", w("Ring to ring at the longest, PTO stopped")},
            {"after_right", w("right")},
            {"after_saw_more", w("saw %1 mm more")},
            {"after_too_short", w("too short by %1 mm: do not use")},
            {"verdict_right", w("RIGHT")},
            {"verdict_saw_more", w("SAW MORE")},
            {"verdict_too_short", w("TOO SHORT: DO NOT USE")}};
}

BenchWords quote_words(const Wording& w)
{
    return {{"would_serve", w("Shafts that would serve: %1")},
            {"none_serves", w("No shaft of the catalogue serves.")},
            {"cannot_choose", w("To choose a shaft, the ends and the lengths on the machine must be known.")},
            {"as_it_is", w("as it is")},
            {"cut_by", w("cut %1 mm")},
            {"to_order", w("to order")},
            {"take_this", w("Take this one")},
            {"work", w("Work and parts")},
            {"quantity", w("Quantity")},
            {"each", w("Each")},
            {"amount", w("Amount")},
            {"discount", w("Discount, such as 5% or 12.50")},
            {"net", w("Without tax")},
            {"tax", w("Tax")},
            {"total", w("Total")},
            {"deposit", w("Deposit")},
            {"quote_sheet", w("Print for the customer (PDF)")},
            {"quote_book", w("The desk's workbook (XLSX)")},
            {"quote_complete", w("Complete")},
            {"quote_incomplete", w("Incomplete: something has no price")},
            {"quote_refused", w("Refused: what would serve instead")},
            {"quote_estimate", w("An estimate")}};
}

BenchWords identify_words(const Wording& w)
{
    return {{"identify_hint", w("Touch the part in the drawing and type what the calliper says. Nothing must be measured; each figure shortens the list.")},
            {"identify_drawing", w("The shaft in its three parts: joint at the tractor, tubes, joint at the machine.")},
            {"tubes", w("Tubes")},
            {"its_cross", w("Its cross")},
            {"inner_tube_of", w("Inner tube")},
            {"outer_tube_of", w("Outer tube")},
            {"cap", w("Cap, across")},
            {"cap_hint", w("Calliper on the cap, its circlip off; or inside the mouth of the bore, the cross fitted.")},
            {"cap_where", w("Where the cap was measured")},
            {"cap_bore", w("in the bore")},
            {"span", w("Span, over both caps")},
            {"span_hint", w("Over the ends of two opposite caps, the cross fitted.")},
            {"width", w("Width")},
            {"width_hint", w("Lemon: across the width. Triangular, square: across the flats. Star: between opposite points. Splined: over the outside.")},
            {"wall", w("Wall")},
            {"wall_hint", w("Calliper at the free end, the burr off.")},
            {"writing", w("Written on the guard")},
            {"identified_one", w("Measures like this series")},
            {"identified_mixed", w("Mixed: its parts are of more than one series")},
            {"identified_none", w("Of no series here")},
            {"identified_several", w("Not decided yet")},
            {"measure_joint", w("look: one cross or two")},
            {"measure_shape", w("look: section of the tubes")},
            {"measure_role", w("look: which tube is the inner")},
            {"measure_writing", w("read what is written on the guard")},
            {"measure_span", w("span of its cross")},
            {"measure_cap", w("cap of its cross")},
            {"measure_cap_in_bore", w("cap of its cross, in the bore")},
            {"measure_spacing", w("between its two crosses")},
            {"measure_width", w("width of a tube")},
            {"measure_wall", w("wall of a tube")},
            {"to_the_cut", w("To the cut with this series")}};
}

}  // namespace shaftcut::bench_page
