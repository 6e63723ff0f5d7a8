// What a cut rests on and no second figure confirms: to be measured, or looked at, before anything is sawn.
#pragma once

#include <optional>
#include <vector>

#include "shaftcut/trade/checks/checks.hpp"

namespace shaftcut {

// What is to be measured, in the order of the bench: a length, but the last three, which are looks.
enum class Confirmed { closed, closed_inner_cross, inner_half, outer_half, inner_shoulder, outer_shoulder, inner_guard, outer_guard, built };
template <> struct Words<Confirmed> {
    static constexpr std::array all{"closed",         "closed_inner_cross", "inner_half",  "outer_half", "inner_shoulder",
                                    "outer_shoulder", "inner_guard",        "outer_guard", "built"};
};

// Why.
enum class ConfirmedFor { disagreement, cross_not_known, half_not_measured, half_short_alone, stop_alone, guard_not_measured, year_not_stated, stop_by_measures };
// That of each half's length, of its shoulder, of its guard.
constexpr PerEach<Tube, Confirmed> confirmed_per_tube(Confirmed inner, Confirmed outer)
{
    PerEach<Tube, Confirmed> each;
    each[Tube::inner] = inner;
    each[Tube::outer] = outer;
    return each;
}
inline constexpr auto confirmed_half = confirmed_per_tube(Confirmed::inner_half, Confirmed::outer_half);
inline constexpr auto confirmed_shoulder = confirmed_per_tube(Confirmed::inner_shoulder, Confirmed::outer_shoulder);
inline constexpr auto confirmed_guard = confirmed_per_tube(Confirmed::inner_guard, Confirmed::outer_guard);

struct Confirmation {
    Confirmed what = Confirmed::closed;
    ConfirmedFor why = ConfirmedFor::disagreement;
    std::optional<Length> expected, plus_minus;  // nothing for a look
    std::optional<Reference> from;               // the cross of a closed length as stated, of a shaft with a wide-angle joint
    std::optional<Length> setback;               // the most that a tube may stand out of the guard that is looked at
    bool is_look() const { return !expected; }
};

// What is to be confirmed of a shaft that is not refused. `tape`: the ± of the reading that confirms.
//   each half that was not measured: its derived length ± u_C + u of the shoulder + tape
//   a half or a stop that rests on its own figure (stops.hpp): itself ± its u + tape
//   the stop of a half whose series is known by measuring, where the job does not state it: the series' own ± its u + tape
//   of a wide-angle shaft with a measured half but none whose stop is stated too: the closed length between the inner crosses
//   closed length and halves that disagree: the closed length as stated, and the measured half of M's path
//   looks: each guard that was not measured and is used again; the year of an exposed lock of a primary shaft where it is not stated
// Checked by confirmation_test and against a second implementation by differential_test.
std::vector<Confirmation> confirmations(const CheckInput& input, Length tape);

// Whether a lock of this shaft stands out and no year of building says whether it may: a primary shaft's, its year not stated.
bool year_to_confirm(const JobShaft& shaft);

}  // namespace shaftcut
