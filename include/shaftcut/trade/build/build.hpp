// The lengths of a shaft made to order: halves, guards, and the blanks that they are sawn to.
//
// C: the closed length to build to, telescoping (ordered, or the shortest less the closing clearance); a, b: half lengths of the
// inner (A) and outer (B) half; s_A, s_B: shoulders; r_A, r_B: guard shoulders; z: the guard's setback on a new shaft; all from
// the half's inner cross:
//
//     a = C − s_B, b = C − s_A        rounded down to the saw's step, so the shaft closes at C or less than a step below
//     guard half = min(half − z rounded up, C − the other half's r rounded down), to the saw's step
//     blank = half − seat             guard blank = guard half − guard seat (a wide-angle joint has its own)
//
// Derived from the geometry of two tubes that slide in one another. Checked by building, then working up what was built as a
// shaft that exists (build_plan_test), and against a second implementation on random orders.
#pragma once

#include "shaftcut/trade/data/half_figure.hpp"
#include "shaftcut/trade/data/build_order.hpp"
#include "shaftcut/trade/data/catalogue.hpp"

namespace shaftcut {

// A tube of a shaft: one of its drive tubes, or the guard tube around it.
enum class TubeKind { drive, guard };
struct ShaftTube {
    Tube tube = Tube::inner;
    TubeKind kind = TubeKind::drive;
    auto operator<=>(const ShaftTube&) const = default;
};

struct BuiltLengths {
    Length closed;                                      // max(a + s_B, b + s_A), telescoping
    PerEach<Tube, Length> half;                         // a, b
    PerEach<Tube, Length> blank;                        // of the drive tube
    PerEach<Tube, std::optional<Length>> guard_half;    // nothing without a guard
    PerEach<Tube, std::optional<Length>> guard_blank;   // the same
    PerEach<Tube, std::optional<Length>> pin_hole;      // from the blank's inner end to the hole's centre; where the series says
};

// The guard seat of this tube's half, for the joint that it carries; nothing where the series does not state it.
std::optional<Length> guard_seat_of(const Series& series, const JobShaft& shaft, Tube tube);

// What the series must state for a shaft to be built and does not. Empty where all is stated.
std::vector<HalfFigure> unstated_for_building(const Series& series, const BuildOrder& order);

// `room` is C, `setback` z. Only for a series that states all that is needed. A half or a blank may come out at 0 or below: no
// such shaft can be, and that is for the checks to say.
BuiltLengths build_lengths(const Series& series, const BuildOrder& order, Length room, Length setback, Fraction step_um);

}  // namespace shaftcut
