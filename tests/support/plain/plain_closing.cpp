// What is left to push together at the worst, in the second implementation. A shaft can stop in two ways that err
// differently, and a cut can be marked from the free end, where what comes off is right, or from the cross, where what is
// kept is.
#include <algorithm>

#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

// What bounds the closed length of one path: the measured one (y), and the half with the stated shoulder, its own tolerance
// apart (x); nothing where no shoulder is stated.
struct Bound {
    Um y = 0;
    Maybe x;
    Um half_plus_minus = 0;
};

Bound bound_of(const PlainShaft& shaft, std::size_t half)
{
    const PlainHalf& mine = shaft.halves[half];
    const MaybeFigure& face = shaft.halves[1 - half].shoulder;
    Bound bound{shaft.closed.value + shaft.closed.plus_minus, std::nullopt, mine.length->plus_minus};
    if (face) bound.x = mine.length->value + face->value + face->plus_minus;
    return bound;
}

Um longest_path(const Bound& bound, bool is_cut, bool apart)
{
    const auto& [y, x, u] = bound;
    if (!x) return is_cut ? y + u : y;
    if (apart) return is_cut ? std::max(*x, y) + u : std::max(y, *x + u);
    return is_cut ? std::min(std::max(*x, y), std::min(*x, y) + u) : std::min(y, *x + u);
}

}  // namespace

PlainCheck closing_clearance(const PlainShaft& shaft)
{
    if (!shaft.cut) return {};
    Maybe longest;
    for (std::size_t i = 0; i < 2; ++i) {
        const bool is_cut = shaft.cut->cut[i] > 0;
        const Um saw = is_cut ? shaft.workshop->saw.plus_minus.um() : 0;
        const Um path = longest_path(bound_of(shaft, i), is_cut, shaft.stops.apart) - shaft.cut->cut[i] + saw;
        longest = std::max(longest.value_or(path), path);
    }
    const Um value = *shaft.deciding.shortest - shaft.cut->closed;
    const Um worst = shaft.deciding.shortest_at_worst - *longest;
    const bool too_little = below(value, shaft.clearance);
    const Um floor = length_limit(shaft, Limit::closing_clearance_floor);
    const bool was_cut_before = shaft.cut->spared[0] || shaft.cut->spared[1];
    const bool fails = (too_little && !(was_cut_before && !below(value, floor))) || worst < 10;
    return {graded(fails, too_little || below(worst, floor)), value, worst, shaft.clearance};
}

}  // namespace shaftcut::test::plain
