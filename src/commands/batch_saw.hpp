// The saw plans of a batch, one profile after the other within the time allowed for all.
#pragma once

#include <optional>

#include "shaftcut/commands/command.hpp"
#include "shaftcut/trade/batch.hpp"

namespace shaftcut {

struct BatchSawing {
    double seconds = 0;               // for all plans together; what one leaves, the next may use
    std::optional<Length> reusable;   // a leftover at least this long goes back to the rack
    Length least_cut, plus_minus;     // the saw's
};

// The batch with its plans, and the profiles that have none for want of bars. Ctrl-C ends each search with its best plan so far.
Batch plan_batch(Batch batch, const BatchSaw& saw, const BatchSawing& sawing, Console& console);

}  // namespace shaftcut
