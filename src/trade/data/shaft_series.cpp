#include "shaftcut/trade/data/shaft_series.hpp"

namespace shaftcut {

ShaftSeries series_of(const JobShaft& shaft, const Catalogue& catalogue)
{
    ShaftSeries series = all_of(shaft.series ? find_series(catalogue, *shaft.series) : nullptr);
    for (const Tube tube : both_tubes)
        if (const auto& other = shaft.halves[tube].series) series.half[tube] = other->name ? find_series(catalogue, *other->name) : nullptr;
    return series;
}

ShaftSeries all_of(const Series* series)
{
    ShaftSeries all;
    all.shaft = series;
    for (const Tube tube : both_tubes) all.half[tube] = series;
    return all;
}

const Series* series_at(const ShaftSeries& series, const JobShaft& shaft, End end) { return series.half[tube_on(shaft, end)]; }

}  // namespace shaftcut
