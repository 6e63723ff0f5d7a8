// Where a job's or an order's ends get their figures from. Private to the reading layer, which asks only whether they are stated.
#pragma once

#include "shaftcut/trade/catalogue.hpp"
#include "shaftcut/trade/job.hpp"

namespace shaftcut {

// Whether the end states its figures itself: its half is of another series than the shaft, or of none, or the shaft is of no series.
bool has_own_figures(const JobShaft& shaft, End end);

// The series of the joint at this end; null where none is known.
const Series* series_at(const JobShaft& shaft, const Catalogue& catalogue, End end);

// Of its wide-angle joint, centre to centre of the crosses: the end's own figure, else its series', else that of a shaft of no series.
std::optional<Length> spacing_at(const JobShaft& shaft, const Catalogue& catalogue, End end);

// From its cross to its locking groove: the end's own figure, else its series' for the connection that it states.
std::optional<Length> cross_to_groove_at(const JobShaft& shaft, const Catalogue& catalogue, End end);

}  // namespace shaftcut
