#include "identify/outsiders.hpp"

#include "identify/joint_likelihood.hpp"
#include "identify/tubes_likelihood.hpp"

namespace shaftcut::identifying {
namespace {

// One draw for both: a figure beside the same of the other, if that was measured.
double figure_like(const std::optional<Figure>& figure, const std::optional<Figure>& known, double apart)
{
    if (!figure) return 1;
    if (!known) return figure->unknown();
    return figure->over([&](double y) { return normal(y - known->mean(), apart); });
}

double pair_like(const PairFigures& pair, const PairFigures& known, double apart)
{
    return figure_like(pair.cap, known.cap, apart) * figure_like(pair.span, known.span, apart);
}

double cross_of_none(const CrossFigures& cross)
{
    const PairFigures& second = cross.pairs[CapPair::second];
    double likelihood = pair_likelihood(cross.pairs[CapPair::first], {});
    if (second.cap || second.span)
        likelihood *= pairs_alike * pair_like(second, cross.pairs[CapPair::first], like_pairs_apart) + (1 - pairs_alike) * pair_likelihood(second, {});
    return likelihood * look_likelihood<Circlip>(cross.circlip, {}) * look_likelihood<Nipple>(cross.nipple, {});
}

double kind_of_none(std::optional<JointKind> joint)
{
    if (!joint) return 1;
    return *joint == JointKind::wide_angle ? wide_of_none : 1 - wide_of_none;
}

// The second tube's width beside the first's, of which nobody knows which is inside.
double widths_of_none(const std::vector<const Figure*>& widths)
{
    if (widths.empty()) return 1;
    if (widths.size() == 1) return widths[0]->unknown();
    const double first = widths[0]->mean(), less = inner_to_outer * first, more = first / inner_to_outer, deviation = inner_to_outer_deviation * first;
    const auto density = [&](double y) { return (normal(y - less, deviation) + normal(y - more, deviation / inner_to_outer)) / 2; };
    return widths[0]->unknown() * widths[1]->over(density);
}

}  // namespace

double joint_of_none(const EndFigures& end)
{
    double likelihood = kind_of_none(end.joint) * (end.spacing ? end.spacing->unknown() : 1);
    for (const CrossFigures& cross : end.crosses) likelihood *= cross_of_none(cross);
    return likelihood;
}

double joint_like(const EndFigures& end, const EndFigures& known)
{
    const bool wide = end.joint == JointKind::wide_angle || known.joint == JointKind::wide_angle;
    if (wide || end.crosses.empty() || known.crosses.empty()) return joint_of_none(end);
    const CrossFigures &cross = end.crosses[0], &model = known.crosses[0];
    double likelihood = kind_of_none(end.joint) * look_likelihood(cross.circlip, model.circlip) * look_likelihood(cross.nipple, model.nipple);
    for (const CapPair pair : both_pairs) likelihood *= pair_like(cross.pairs[pair], model.pairs[pair], like_ends_apart);
    return likelihood;
}

double tubes_of_none(const ShaftFigures& figures)
{
    double likelihood = figures.shape ? shape_of_none[static_cast<std::size_t>(*figures.shape)] : 1;
    std::vector<const Figure*> widths;
    for (const TubeFigures& tube : figures.tubes) {
        if (tube.width) widths.push_back(&*tube.width);
        if (tube.wall) likelihood *= tube.wall->unknown();
    }
    return likelihood * widths_of_none(widths);
}

}  // namespace shaftcut::identifying
