// Which series of the catalogue speaks for a job's shaft, and for each of its halves: a repaired half may be of another one.
#pragma once

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"

namespace shaftcut {

// Null where no known series speaks.
struct ShaftSeries {
    const Series* shaft = nullptr;       // tube shape, least tube, limits, rating, closed lengths
    PerEach<Tube, const Series*> half;   // shoulder, seat, guard figures and joint
};

// A series that the job names must be one of the catalogue: the job reader refuses any other.
ShaftSeries series_of(const JobShaft& shaft, const Catalogue& catalogue);

// Of a shaft that is of one series from end to end; null for one of no known series.
ShaftSeries all_of(const Series* series);

// Whose the joint at this end is.
const Series* series_at(const ShaftSeries& series, const JobShaft& shaft, End end);

}  // namespace shaftcut
