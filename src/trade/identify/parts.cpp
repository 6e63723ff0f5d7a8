#include "identify/parts.hpp"

#include <algorithm>
#include <numeric>

#include "identify/outsiders.hpp"

namespace shaftcut::identifying {
namespace {

// `background`: of no series, sharing nothing. `scale` is what all were divided by.
struct Scaled {
    PartLikelihood part;
    double scale = 1;
};

Scaled scaled(std::vector<double> of_series, double background, double shared)
{
    const double scale = std::max(background, *std::max_element(of_series.begin(), of_series.end()));
    PartLikelihood part{std::move(of_series)};
    for (double& one : part.of_series) one /= scale;
    part.sum = std::accumulate(part.of_series.begin(), part.of_series.end(), 0.0);
    part.mean = part.sum / static_cast<double>(part.of_series.size());
    part.none = shared * part.mean + (1 - shared) * background / scale;
    part.none_shared = shared * part.mean / part.none;
    return {part, scale};
}

double total(const JointWays& ways)
{
    double sum = 0;
    for (const JointWay& way : ways) sum += way.weight;
    return sum;
}

Scaled joint_part(std::vector<JointWays>& ways, const Catalogue& catalogue, const EndFigures& end)
{
    std::vector<double> of_series;
    for (const Series& series : catalogue.series) {
        ways.push_back(joint_ways(series, end));
        of_series.push_back(total(ways.back()));
    }
    return scaled(std::move(of_series), joint_of_none(end), joint_shared);
}

Scaled tubes_part(std::vector<TubesWays>& ways, const Catalogue& catalogue, const ShaftFigures& figures)
{
    std::vector<double> of_series;
    for (const Series& series : catalogue.series) {
        ways.push_back(tubes_ways(series, figures));
        of_series.push_back((ways.back()[0].weight + ways.back()[1].weight) * closed_likelihood(series, figures));
    }
    return scaled(std::move(of_series), tubes_of_none(figures) * closed_unknown(figures), tubes_shared);
}

// h·mean of T·I + (1 − h)·one draw for both, where the ends are alike; else separately.
double both_of_none(const Parts& parts, const PerEach<End, double>& scale)
{
    const PartLikelihood &tractor = parts.likelihood[IdentifiedPart::tractor], &implement = parts.likelihood[IdentifiedPart::implement];
    const double together = std::inner_product(tractor.of_series.begin(), tractor.of_series.end(), implement.of_series.begin(), 0.0) /
                            static_cast<double>(tractor.of_series.size());
    const double one_draw = joint_of_none(parts.figures.ends[End::tractor]) / scale[End::tractor] *
                            (joint_like(parts.figures.ends[End::implement], parts.figures.ends[End::tractor]) / scale[End::implement]);
    const double alike = joint_shared * together + (1 - joint_shared) * one_draw;
    return ends_alike * alike + (1 - ends_alike) * tractor.none * implement.none;
}

}  // namespace

Parts parts_of(const Catalogue& catalogue, const Measures& measures)
{
    Parts parts;
    parts.figures = figures_of(measures);
    PerEach<End, double> scale;
    for (const End end : both_ends) {
        Scaled joint = joint_part(parts.joints[end], catalogue, parts.figures.ends[end]);
        scale[end] = joint.scale;
        parts.likelihood[part_of(end)] = std::move(joint.part);
    }
    parts.likelihood[IdentifiedPart::tubes] = tubes_part(parts.tubes, catalogue, parts.figures).part;
    parts.both_ends_none = both_of_none(parts, scale);
    return parts;
}

}  // namespace shaftcut::identifying
