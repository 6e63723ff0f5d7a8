// What a shaft is called on paper.
#pragma once

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"

namespace shaftcut {

// "Alder 2, lemon tubes, primary, 540 min⁻¹, built 2018". `series` is null for a shaft of no known series.
std::string shaft_title(const JobShaft& shaft, const Series* series);

}  // namespace shaftcut
