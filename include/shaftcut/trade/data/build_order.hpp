// A shaft made to order, as its list states it: nothing is converted or computed here.
#pragma once

#include "shaftcut/trade/data/job.hpp"

namespace shaftcut {

inline constexpr int most_shafts_of_an_order = 10'000;

// Whether a shaft is made with its guard, as lists of orders write it.
enum class Guarded { yes, no };
template <> struct Words<Guarded> { static constexpr std::array all{"yes", "no"}; };

// Either `closed` or `fits` says how long it is to be: never both, never neither. The shaft is of a series; its closed length, halves
// and year are those of a shaft that exists: not used.
struct BuildOrder : OrderHead {
    int count = 1;                       // shafts, all alike
    std::string due;                     // YYYY-MM-DD, or empty
    bool guard = true;                   // with guard tubes, bearings and chains
    std::optional<Measurement> closed;   // at shaft.closed_reference
};

}  // namespace shaftcut
