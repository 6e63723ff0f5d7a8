// A refusal's ways out, as they are found: what would pass instead. Lengths are telescoping where nothing else is said.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"

namespace shaftcut {

// Those that carry no figure.
enum class Remedy {
    mend_every_failure,        // lengths and something else failed: no one way out cures all
    measure_halves,            // no length of a half is known
    measure_between_crosses,   // lengths between grooves cannot be used
    measure_contradictions,    // figures that contradict each other
    measure_more_exactly,      // the doubt of shortest and closed length leaves no clearance
    raise_shortest_in_vain,    // no higher shortest makes this shaft serve
    fit_unexposed_locks,
    device_at_implement,
    put_new_parts
};

// With the shortest as it is, no longer position of this range can be served.
struct LongestServed {
    Range range;
    std::optional<Length> longest;  // nothing: none at all
    bool after_cut;                 // the shaft is cut for its shortest
    bool has_wide_angle;
};

// The guards as they are cover no longer position. Longer ones are to be fitted.
struct GuardsReach {
    std::optional<Length> longest;  // nothing: none at all
    bool has_wide_angle;
};

// With the longest as they are, this shaft would serve with a shortest raised to this.
struct ShortestServed {
    Length least, now;
    bool after_cut;
    bool several_tractors;
    bool has_wide_angle;
};

// Of the closed lengths that a series lists, at its reference, those of a new shaft that would serve.
struct SeriesLengths {
    std::string series;
    std::optional<Reference> reference;  // of a shaft with a wide-angle joint
    std::vector<Length> as_is, after_cut;
    bool past_holes;  // only if the tubes reach past their lubrication holes
};

// A new shaft that would serve.
struct NewShaft {
    Length closed;
    std::optional<Reference> reference;  // of a shaft with a wide-angle joint
    bool past_holes;
};

// No new shaft serves these positions.
struct NoNewShaft {
    std::string series;             // empty: the shaft is of no known series
    std::optional<Length> shortest; // from which on one could serve
    bool raised_in_vain;            // none could with a shortest raised as far as can be
    bool has_wide_angle;
};

// A connection yoke to match what that end goes onto.
struct MatchConnection {
    enum class Rating { unknown, serves, too_slow };  // of that stub, for the shaft's speed
    End end;
    std::string onto;
    Rating rating;
    std::optional<int> speed;  // of the shaft, min⁻¹; stated where the stub is too slow
};

// The movement that bends the joint at this end too far is to be limited.
struct LimitMovement {
    enum class Of { turn, lift, either };
    Of movement;
    End end;
    Angle turning, standing;    // the greatest allowed in these ranges
    bool wide_angle_would_serve;
};

// A series that carries the power.
struct SeriesThatCarries {
    std::int64_t watts;
    int speed;  // min⁻¹
    std::vector<std::string> serving;
};

// How far a trailed machine may turn or pitch in this range, its other movements as stated. `tractor`: whose machine it is, where there
// are several.
struct TurnServed {
    std::string tractor;
    Range range;
    Angle served, now;
};
struct PitchServed {
    std::string tractor;
    Range range;
    Angle served, now;
};

// How high from its lowest, how low from its highest a mounted machine may be moved in this range: one of them at least.
struct LiftRangeServed {
    std::string tractor;
    Range range;
    Length lowest, highest;  // as they are, of the lower hitch point
    std::optional<Length> up_to, down_to;
};

// The pin moved along the drawbar, positive rearwards: then all ranges are served.
struct PinMoveServed {
    std::string tractor;
    Length move;
};

using WayOut = std::variant<Remedy, LongestServed, GuardsReach, ShortestServed, SeriesLengths, NewShaft, NoNewShaft, MatchConnection, LimitMovement,
                            SeriesThatCarries, TurnServed, PitchServed, LiftRangeServed, PinMoveServed>;

}  // namespace shaftcut
