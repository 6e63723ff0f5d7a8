// True shafts once they are sawn, as the answer allows or otherwise, and what somebody reads of them within the tape's tolerance.
#pragma once

#include "shaftcut/trade/order/after_cut.hpp"
#include "support/drawn/true_shafts.hpp"

namespace shaftcut::test {

// Each half and guard marked from its free end or from its cross, and sawn within the saw's tolerance.
TrueShaft sawn_as_allowed(const TrueShaft& shaft, const Promise& promise, Dice& dice);

// Off by a few millimetres to a few centimetres, on the other half's tube, with the two cuts exchanged, or not at all.
TrueShaft sawn_otherwise(const TrueShaft& shaft, const Promise& promise, Dice& dice);

// Again, by what was found.
TrueShaft sawn_again(const TrueShaft& shaft, const AfterCut& found, Um saw, Dice& dice);

// Everything that can be read of it, on the bench and on the machine.
MeasuredAfterCut read_after_cut(const TrueShaft& shaft, const WorkOrder& order, Dice& dice);

// What it truly leaves: clearance at the shortest of all fits, overlap at the greatest longest of them.
Um true_clearance(const TrueShaft& shaft);
Um true_overlap(const TrueShaft& shaft, Range range);

}  // namespace shaftcut::test
