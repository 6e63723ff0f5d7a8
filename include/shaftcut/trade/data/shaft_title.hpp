// What a shaft is called on paper.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"

namespace shaftcut {

// "Alder 2, lemon tubes, primary, 540 min⁻¹, built 2018".
struct ShaftTitle {
    std::string series;          // empty: none that is known
    std::optional<Shape> shape;
    Role role = Role::primary;
    std::optional<int> speed;    // min⁻¹
    std::optional<int> built;    // the year
};

// `series` is null for a shaft of no known series.
ShaftTitle shaft_title(const JobShaft& shaft, const Series* series);

}  // namespace shaftcut
