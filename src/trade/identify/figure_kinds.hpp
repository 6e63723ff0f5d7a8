// What is taken for granted of each kind of measured length: how well it is read and made, how it wears and what sticks to it. All figures are the
// project's own choice, in order of magnitude; which side wears is common practice.
#pragma once

#include "shaftcut/trade/identify/identify.hpp"

namespace shaftcut::identifying {

// As IdentifyingKind, but that a width is of one tube or the other: the inner one slides and wears, paint stays on the outer one.
enum class SizeKind { cap, cap_in_bore, span, spacing, inner_width, outer_width, wall };

// In millimetres.
struct Interval {
    double low = 0, high = 0;
};

// Of the other 1 − worn − dirty nothing but reading and making is between the figure and the series' own. Lengths in millimetres, ± at 95 %.
struct SizeLaw {
    double plus_minus = 0;     // u: of a reading that states none
    double tolerance = 0;      // t: of the series' figure
    double worn = 0, wear = 0; // a, w: how many are worn, and their mean wear
    double wear_sign = 0;      // g: −1 where wear makes the figure less
    double dirty = 0, dirt = 0;// b, d: likewise dirt, paint, rust, which go the other way
    Interval trade;            // where a slip may fall
    Interval usual;            // where a figure lies of which nothing is known
};

const SizeLaw& law_of(SizeKind kind);
SizeKind width_of(Tube tube);

// The same for a figure of a shaft; a width of no stated tube is taken as the inner one's. Not for looks and the closed length.
SizeKind size_kind(const IdentifyingFigure& figure);
bool is_look(IdentifyingKind kind);

// Of a span over two spacers.
inline constexpr double plus_minus_over_spacers = 0.4;

// The closed length: some are sold and left as they were, the rest are cut to no less than `cut_to` of that.
inline constexpr double closed_plus_minus = 4, closed_tolerance = 4, closed_uncut = 0.4, closed_cut_to = 0.6;
inline constexpr Interval closed_trade{200, 3000}, closed_usual{300, 2000};

}  // namespace shaftcut::identifying
