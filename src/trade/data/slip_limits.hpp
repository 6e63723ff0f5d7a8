// Where a figure stops being believed without a second one: the project's own choice throughout.
// Used by the consistency checks and, so that it finds the same slips, by the workbook's formulas.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/length.hpp"

namespace shaftcut {

// A half's own shoulder may differ from its series' by this or by 1/`usual_part` of it, the greater, before a second figure has to
// bear it out.
inline constexpr Length usual_difference = Length::millimetres(10);
inline constexpr std::int64_t usual_part = 10;

// An inner tube may run past the outer tube's own end into its yoke by this much; and no face is nearer to its cross.
inline constexpr Length past_outer_end = Length::millimetres(30);
inline constexpr Length least_shoulder = Length::millimetres(25);

// How far a half's own shoulder may lie from its series'.
inline Length usual_difference_from(Length series_shoulder)
{
    return std::max(usual_difference, Length::micrometres(series_shoulder.um() / usual_part));
}

// The least that the shoulder of the half with this tube can be.
inline Length least_stop(const std::optional<Length>& seat, Tube tube)
{
    const Length by_seat = seat ? (tube == Tube::inner ? *seat : *seat - past_outer_end) : Length();
    return std::max(by_seat, least_shoulder);
}

// By how much a closed length read at the other cross may be off: the spacing of one wide-angle joint, of the other, of both.
inline std::vector<Length> spacing_sums(const PerEach<End, Length>& spacing)
{
    std::vector<Length> sums;
    for (const End end : both_ends)
        if (spacing[end] != Length()) sums.push_back(spacing[end]);
    if (sums.size() == 2) sums.push_back(sums[0] + sums[1]);
    return sums;
}

// How far beside one of its series' closed lengths an uncut shaft may close, beyond the measurement's own tolerance.
inline constexpr Length beside_a_listed_length = Length::millimetres(5);

// Below its yoke a guard tube holds nothing; so much of one that is cut must stand free beyond.
inline constexpr Length least_free_guard = Length::millimetres(50);

}  // namespace shaftcut
