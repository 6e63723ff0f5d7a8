// What a reading must show: lengths of a shaft that was sawn, and readings between two rings on its guards.
#pragma once

#include <optional>

#include "shaftcut/words/length.hpp"

namespace shaftcut {

struct Expected {
    Length value, least, most;
    // But for what decides nothing (length.hpp).
    bool holds(Length reading) const { return !clearly_below(reading, least) && !clearly_above(reading, most); }
};

// A reading between the rings less P, what they read when the shaft is closed: how far the shaft is pulled out.
struct OnRings {
    Length value;
    Length good_from, good_to;
    // Beyond these nobody goes on: too little is left to close, or the tubes overlap by too little.
    std::optional<Length> never_under, never_over;
};

}  // namespace shaftcut
