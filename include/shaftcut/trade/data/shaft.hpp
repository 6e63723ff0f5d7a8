// A shaft and what it must reach, in the one computing length: telescoping, between the crosses that carry the tube yokes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// A length with the sum of what can be wrong with it, up or down.
struct Toleranced {
    Length value;
    Length plus_minus;
};

// One half. Lengths run from its inner cross (its only one on a standard joint).
struct Half {
    End end = End::tractor;                    // the end it is on
    std::optional<Toleranced> length;          // to the tube's free end; derived from the closed length where not measured
    bool measured = false;
    std::optional<Toleranced> guard;           // to the guard tube's free end
    bool guard_used = true;                    // false: there is none, or it is damaged and not used again
    std::optional<Toleranced> shoulder;        // to the face that stops the other tube: the job's, else the series'
    std::optional<Length> series_shoulder;     // the same by the half's series
    std::optional<Length> guard_shoulder;      // to the face that stops the other half's guard
    std::optional<Length> guard_seat;          // to the guard tube's inner end
    std::optional<Length> seat, least_tube;
    std::optional<Length> lubrication_hole;    // to the far edge of the hole
    bool of_other_series = false;              // its joint is of another series than the shaft, or of none
    bool identified = false;                   // its series is known by measuring: what measures alike may stop elsewhere
    bool shortening_forbidden = false;
    std::optional<Length> cut_to;              // its length that an earlier sheet kept; only where it was measured
    std::vector<Feature> features;
    std::optional<Place> length_place, guard_place, shoulder_place;  // where the job states them
};

struct Shaft {
    Toleranced closed;
    Place closed_place;
    PerEach<Tube, Half> halves;
    PerEach<End, Length> spacing;  // of a wide-angle joint; 0 for a standard joint
};

// What one tractor and machine ask of the shaft, or the deciding lengths of several: the least shortest, the greatest longest, with
// the ± that reaches to the worst of all of them.
struct Fit {
    std::optional<Toleranced> shortest;  // nothing where a length between grooves cannot be converted
    Place shortest_place;
    PerEach<Range, std::optional<Toleranced>> longest;
    PerEach<Range, Place> longest_places;
    PerEach<End, PerEach<Range, std::optional<Angle>>> angles;
    // Of several, where some state this range and others leave it out: the least that it can be. Then it has no longest, no angle.
    PerEach<Range, std::optional<Toleranced>> longest_at_least;
    PerEach<End, PerEach<Range, std::optional<Angle>>> angles_at_least;
};

}  // namespace shaftcut
