#include "hitch/hitch_shaft.hpp"

namespace shaftcut {

PerEach<End, Length> spacings(const JobShaft& shaft, const ShaftSeries& series)
{
    PerEach<End, Length> found;
    for (const End end : both_ends) {
        if (shaft.ends[end].joint == JointKind::standard) continue;
        const Series* own = series_at(series, shaft, end);
        found[end] = shaft.ends[end].spacing.value_or(own && own->wide_angle ? own->wide_angle->spacing : shaft.spacing.value_or(Length()));
    }
    return found;
}

std::optional<Length> yoke_of(const JobShaft& shaft, const ShaftSeries& series, End end)
{
    const JobEnd& job_end = shaft.ends[end];
    if (job_end.cross_to_groove) return job_end.cross_to_groove;
    const Series* own = series_at(series, shaft, end);
    if (!own || !job_end.connection) return std::nullopt;
    return cross_to_groove(*own, *job_end.connection, job_end.joint);
}

std::variant<HitchShaft, std::vector<End>> hitch_shaft(const JobShaft& shaft, const ShaftSeries& series)
{
    std::vector<End> unknown;
    PerEach<End, HitchEnd> ends;
    const PerEach<End, Length> spacing = spacings(shaft, series);
    for (const End end : both_ends) {
        const auto yoke = yoke_of(shaft, series, end);
        if (!yoke) unknown.push_back(end);
        ends[end] = {yoke.value_or(Length()), spacing[end]};
    }
    if (!unknown.empty()) return unknown;
    const auto shape = series.shaft ? std::optional(series.shaft->shape) : shaft.shape;
    return HitchShaft{ends[End::tractor], ends[End::implement], Angle::degrees(shape == Shape::triangular ? 120 : 90)};
}

}  // namespace shaftcut
