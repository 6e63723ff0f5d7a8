// What a shaft must measure after it was sawn as its answer allows, part by part, closed, and on the machine.
//
// a' kept, t the saw's ± where the tube is sawn, u_a the ± with which the half was known before, u that of the tape that reads it
// now; C' the new closed length, S shortest, X a longest, all telescoping. A half may be marked from its free end, then its true
// length lies within u_a + t of a', or from its cross, then within t; and is read within u:
//
//     half      a' ± (t + u_a + u)         stands out of its guard      a' − g' ± (t_a + t_g + u_a + u_g + u)
//     closed    from min over the halves of (C − u_C − cut − (t + u_a where it is sawn)) − u      to closed_at_worst (cut.hpp) + u
//
// The least: whichever half it is that stops the shaft, its path was C before. Of a plain shaft, where every ± of a length is u, that
// is a' ± (t + 2u) and at most C' + t + 2u.
// On the machine two rings on the guards, read when closed (P) and in each position, show by how much the shaft is pulled out.
// Checked by after_cut_truth_test: of true shafts, sawn as allowed and read within the tape's ±, none reads outside.
#pragma once

#include <optional>

#include "shaftcut/trade/order/expected.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

// Of an answer that is not refused: `order.cut` must be there. `tape`: u.
Expected expected_half(const WorkOrder& order, Tube tube, Length tape);
// Nothing of a guard that was not measured before or is not used again.
std::optional<Expected> expected_guard(const WorkOrder& order, Tube tube, Length tape);
std::optional<Expected> expected_stands_out(const WorkOrder& order, Tube tube, Length tape);
// Telescoping. With a tape of 0: where the true closed length lies. `most` can be less than the value: where closed length and halves
// differ, within their ±, the cut takes the greater for true.
Expected expected_closed(const WorkOrder& order, Length tape);

// With `closed` the closed length as it is and where it truly lies (a tape of 0). worst: S − u_S − closed.most.
//     good from max(worst − 2u, floor), never above what is expected, to S + u_S − closed.least + 2u; never under min(floor, worst)
OnRings rings_at_shortest(const WorkOrder& order, const Expected& closed, Length tape);
//     X − closed ± (u_X + that of the closed length + 2u); never over closed overlap − limit − its doubt, where that is not good:
//     the doubt is u_a + u_b + t for each half that is sawn + that of the closed length + 2u
// Nothing where this longest is not known.
std::optional<OnRings> rings_at_longest(const WorkOrder& order, Range range, const Expected& closed, Length tape);

// Over both outer ends the greased shaft with its guards reads as the dry one within this; else its closed reading between the rings
// was taken on grease or air, or a guard stops it. The project's own choice.
inline constexpr Length overall_apart = Length::millimetres(2);

// All of them for the sheet, read by the workshop's tape.
struct ExpectedAfterCut {
    Expected closed;  // telescoping
    PerEach<Tube, Expected> half;
    PerEach<Tube, std::optional<Expected>> guard, stands_out;
    OnRings shortest;
    PerEach<Range, std::optional<OnRings>> longest;
};
ExpectedAfterCut expected_after_cut(const WorkOrder& order);

}  // namespace shaftcut
