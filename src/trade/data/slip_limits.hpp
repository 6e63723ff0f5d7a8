// Where a figure stops being believed without a second one: the project's own choice throughout.
// Used by the consistency checks and, so that it finds the same slips, by the workbook's formulas.
#pragma once

#include "shaftcut/words/length.hpp"

namespace shaftcut {

// A half's own shoulder may differ from its series' by this or by 1/`usual_part` of it, the greater, before a second figure has to
// bear it out.
inline constexpr Length usual_difference = Length::millimetres(10);
inline constexpr std::int64_t usual_part = 10;

// An inner tube may run past the outer tube's own end into its yoke by this much; and no face is nearer to its cross.
inline constexpr Length past_outer_end = Length::millimetres(30);
inline constexpr Length least_shoulder = Length::millimetres(25);

// How far beside one of its series' closed lengths an uncut shaft may close, beyond the measurement's own tolerance.
inline constexpr Length beside_a_listed_length = Length::millimetres(5);

// Below its yoke a guard tube holds nothing; so much of one that is cut must stand free beyond.
inline constexpr Length least_free_guard = Length::millimetres(50);

}  // namespace shaftcut
