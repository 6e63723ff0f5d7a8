// A job's shaft as a machine's geometry meets it: from locking groove to locking groove.
#pragma once

#include <variant>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/data/shaft_series.hpp"
#include "shaftcut/trade/hitch/placement.hpp"

namespace shaftcut {

// Centre to centre of each end's crosses: the end's own figure, else its series', else the shaft's; 0 for a standard joint.
PerEach<End, Length> spacings(const JobShaft& shaft, const ShaftSeries& series);

// From an end's cross (a wide-angle joint's outer one) to its locking groove: the end's own figure, else its series'; nothing
// where neither is stated, or the series asks for a connection and the job names none.
std::optional<Length> yoke_of(const JobShaft& shaft, const ShaftSeries& series, End end);

// The shaft between the two grooves, or the ends whose yoke is not known.
// A triangular tube can be put together wrongly by 120 degrees, any other by 90.
std::variant<HitchShaft, std::vector<End>> hitch_shaft(const JobShaft& shaft, const ShaftSeries& series);

}  // namespace shaftcut
