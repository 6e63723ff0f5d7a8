// What a shaft is called on paper.
#pragma once

#include "shaftcut/trade/catalogue.hpp"
#include "shaftcut/trade/job.hpp"

namespace shaftcut {

// "Alder 2, lemon tubes, primary, 540 min⁻¹, built 2018". `series` is null for a shaft of no known series.
std::string shaft_title(const JobShaft& shaft, const Series* series);

}  // namespace shaftcut
