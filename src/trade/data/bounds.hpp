// What a length can be at all, whatever the shaft: a figure outside is a slip of the pen, of the tape or of the unit.
// The project's own choice: far beyond every shaft that is sold, and within the factor of 25.4 between the units.
// Checked by bounds_test.
#pragma once

#include "shaftcut/words/length.hpp"

namespace shaftcut {

// Both ends belong to it.
struct Bounds {
    Length least, greatest;
    constexpr bool hold(Length length) const { return length >= least && length <= greatest; }
};

inline constexpr Bounds telescoping_bounds{Length::micrometres(200'000), Length::micrometres(3'500'000)};  // closed, shortest, longest
inline constexpr Bounds half_bounds{Length::micrometres(100'000), Length::micrometres(2'500'000)};
inline constexpr Bounds guard_half_bounds{Length::micrometres(50'000), Length::micrometres(2'500'000)};
inline constexpr Bounds shoulder_bounds{Length::micrometres(25'000), Length::micrometres(500'000)};
inline constexpr Bounds spacing_bounds{Length::micrometres(30'000), Length::micrometres(250'000)};  // of a wide-angle joint's crosses

// Of a blade's kerf, and of what a length may be off: more explains itself by the wrong unit, or says that nothing was measured.
inline constexpr Bounds kerf_bounds{Length(), Length::micrometres(20'000)};
inline constexpr Bounds plus_minus_bounds{Length(), Length::micrometres(25'000)};

// What the figure would be if it were read in the other unit and that lies within the bounds: nothing where it lies within
// them as it is, or where no unit mends it.
enum class UnitSlip { none, inches_read_as_millimetres, millimetres_read_as_inches };
constexpr UnitSlip unit_slip(Length length, const Bounds& bounds)
{
    if (bounds.hold(length)) return UnitSlip::none;
    if (bounds.hold(Length::micrometres(length.um() * 254 / 10))) return UnitSlip::inches_read_as_millimetres;
    if (bounds.hold(Length::micrometres(length.um() * 10 / 254))) return UnitSlip::millimetres_read_as_inches;
    return UnitSlip::none;
}

}  // namespace shaftcut
