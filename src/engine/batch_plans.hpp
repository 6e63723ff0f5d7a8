// The saw plans of a batch, one profile after the other within the time allowed for all.
#pragma once

#include <optional>

#include "shaftcut/engine/wishes.hpp"
#include "shaftcut/trade/build/batch.hpp"

namespace shaftcut {

struct BatchSawing {
    double seconds = 0;               // for all plans together; what one leaves, the next may use
    std::optional<Length> reusable;   // a leftover at least this long goes back to the rack
    Length least_cut, plus_minus;     // the saw's
};

// The batch with its plans, and the profiles that have none for want of bars.
Batch plan_batch(Batch batch, const BatchSaw& saw, const BatchSawing& sawing, const SawMeans& means);

}  // namespace shaftcut
