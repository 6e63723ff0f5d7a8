#include "end_figures.hpp"

namespace shaftcut {

bool has_own_figures(const JobShaft& shaft, End end) { return !shaft.series || shaft.halves[tube_on(shaft, end)].series; }

const Series* series_at(const JobShaft& shaft, const Catalogue& catalogue, End end)
{
    const auto& other = shaft.halves[tube_on(shaft, end)].series;
    const auto& name = other ? other->name : shaft.series;
    return name ? find_series(catalogue, *name) : nullptr;
}

std::optional<Length> spacing_at(const JobShaft& shaft, const Catalogue& catalogue, End end)
{
    if (shaft.ends[end].spacing) return shaft.ends[end].spacing;
    const Series* series = series_at(shaft, catalogue, end);
    if (series) return series->wide_angle ? std::optional(series->wide_angle->spacing) : std::nullopt;
    return shaft.spacing;
}

std::optional<Length> cross_to_groove_at(const JobShaft& shaft, const Catalogue& catalogue, End end)
{
    const JobEnd& job_end = shaft.ends[end];
    if (job_end.cross_to_groove) return job_end.cross_to_groove;
    const Series* series = series_at(shaft, catalogue, end);
    return series && job_end.connection ? cross_to_groove(*series, *job_end.connection, job_end.joint) : std::nullopt;
}

}  // namespace shaftcut
