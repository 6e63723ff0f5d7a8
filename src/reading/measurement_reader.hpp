// Measured lengths in a job.
#pragma once

#include <optional>

#include "shaftcut/trade/data/job.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// The length in `attribute`, 0 or more (the trade's checks refuse a 0), with the tolerance that its element states.
// Nothing where the attribute is missing or wrong.
std::optional<Measurement> read_measurement(const Attribute& attribute, std::optional<Length> plus_minus);

}  // namespace shaftcut
