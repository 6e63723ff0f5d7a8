// Which measured dimensions decide a length, and by how much.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/hitch/placement.hpp"

namespace shaftcut {

// How much one measured dimension decides a telescoping length.
struct Influence {
    std::string dimension;  // the attribute's name
    Place place;
    double slope = 0;       // mm of telescoping length per mm of the dimension, or per degree of an angle
    Length effect;          // |slope| times the dimension's plus or minus
};

// The effect of every dimension of the machine on the telescoping length at `position`, the greatest first. Central
// differences over 0.1 mm or 0.02 degrees, one-sided at the end of a linkage's reach. No effect is greater than the length
// itself, and where the length has an answer on neither side it is that. A length that states no plus or minus carries
// `measuring`, an angle none. The ends of `range`, in which the position lies, count where the position lies on them.
// `position` must have an answer and the machine be of the range's kind.
// Checked against differences of whole searches on changed machines.
std::vector<Influence> influences(const Machine& machine, const HitchShaft& shaft, const Coordinates& position,
                                  const TrailedRange& range, Length measuring);
std::vector<Influence> influences(const Machine& machine, const HitchShaft& shaft, const Coordinates& position,
                                  const MountedRange& range, Length measuring);

// The sum of the effects: the worst case of the length.
Length worst_case(const std::vector<Influence>& influences);

}  // namespace shaftcut
