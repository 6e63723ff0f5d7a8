// One saw plan within the time allowed, by the clock that is handed in.
#pragma once

#include "shaftcut/engine/wishes.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {

struct SawnInTime {
    SawOutcome outcome;
    SawEnd end = SawEnd::finished;
    double seconds = 0;  // that it took
};

SawnInTime plan_in_time(const SawTask& task, double seconds_allowed, const SawMeans& means);

}  // namespace shaftcut
