// The extremes over all machines of a job whose geometry is known, whatever was measured beside it.
#pragma once

#include <optional>
#include <vector>

#include "shaftcut/trade/cut/datum.hpp"

namespace shaftcut {

struct MachineExtremes {
    std::optional<ExtremeLength> shortest;                               // the least
    PerEach<Range, std::optional<ExtremeLength>> longest;                // the greatest
    PerEach<End, PerEach<Range, std::optional<ExtremeAngle>>> angles;    // the greatest
};

// All empty where no fit holds geometry; a range's where none states it. Of equals the first.
MachineExtremes machine_extremes(const std::vector<FitReading>& fits);

}  // namespace shaftcut
