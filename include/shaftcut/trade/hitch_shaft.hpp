// A job's shaft as a machine's geometry meets it: from locking groove to locking groove.
#pragma once

#include <variant>
#include <vector>

#include "shaftcut/trade/catalogue.hpp"
#include "shaftcut/trade/job.hpp"
#include "shaftcut/trade/placement.hpp"

namespace shaftcut {

// Centre to centre of each end's crosses: the series' figure, else the job's; 0 for a standard joint.
PerEach<End, Length> spacings(const JobShaft& shaft, const Series* series);

// From an end's cross (a wide-angle joint's outer one) to its locking groove; nothing where the job names no connection, or
// the series does not say.
std::optional<Length> yoke_of(const JobShaft& shaft, const Series* series, End end);

// The shaft between the two grooves, or the ends whose yoke is not known. `series` is null for a shaft of no known series.
// A triangular tube can be put together wrongly by 120 degrees, any other by 90.
std::variant<HitchShaft, std::vector<End>> hitch_shaft(const JobShaft& shaft, const Series* series);

}  // namespace shaftcut
