#include "identify/tubes_likelihood.hpp"

#include <algorithm>

namespace shaftcut::identifying {
namespace {

double tube_likelihood(const TubeFigures& figures, const SeriesHalf& half, Tube as)
{
    return (figures.width ? figures.width->like(width_of(as), half.width) : 1) * (figures.wall ? figures.wall->like(half.wall) : 1);
}

// That the tube measured first is `first`.
double role_prior(const std::vector<TubeFigures>& tubes, Tube first)
{
    if (tubes.empty()) return first == Tube::inner ? 1 : 0;
    if (!tubes[0].tube) return 0.5;
    return *tubes[0].tube == first ? role_right : 1 - role_right;
}

std::optional<Reference> own_reference(const Series& series)
{
    return series.wide_angle_reference ? series.wide_angle_reference : usual_reference(series.shape);
}

// What is added to a length at `measured` to make it one at the series' own reference; nothing where that is not known.
std::optional<Length> to_own_reference(const Series& series, const ShaftFigures& figures, std::optional<Reference> measured)
{
    const auto own = own_reference(series);
    if (!measured || measured == own) return Length();
    int wide = 0;
    for (const End end : both_ends) {
        if (!figures.ends[end].joint && series.wide_angle) return std::nullopt;
        if (figures.ends[end].joint == JointKind::wide_angle) ++wide;
    }
    if (wide == 0) return Length();
    if (!series.wide_angle || !own) return std::nullopt;
    return (own == Reference::outer_cross ? wide : -wide) * series.wide_angle->spacing;
}

// Of a shaft that was sold at `listed`: left as it was, or cut to anything down to a part of that.
double density_of(double closed, double listed, double deviation)
{
    const double least = closed_cut_to * listed;
    const double between = (normal_below(closed - least, deviation) - normal_below(closed - listed, deviation)) / (listed - least);
    return closed_uncut * normal(closed - listed, deviation) + (1 - closed_uncut) * between;
}

}  // namespace

double shape_likelihood(std::optional<Shape> seen, Shape shape)
{
    if (!seen) return 1;
    return *seen == shape ? shape_right : (1 - shape_right) / static_cast<double>(shape_of_none.size() - 1);
}

TubesWays tubes_ways(const Series& series, const ShaftFigures& figures)
{
    TubesWays ways{{{0, Tube::inner}, {0, Tube::outer}}};
    for (TubesWay& way : ways) {
        way.weight = shape_likelihood(figures.shape, series.shape) * role_prior(figures.tubes, way.first);
        for (std::size_t i = 0; i < figures.tubes.size(); ++i) {
            const Tube as = i == 0 ? way.first : other(way.first);
            way.weight *= tube_likelihood(figures.tubes[i], series.halves[as], as);
        }
    }
    return ways;
}

// Outside what is usual it is a slip, as it is of a series that lists its lengths: a length that no shaft has tells of no series.
double closed_unknown(const ShaftFigures& figures)
{
    if (!figures.closed) return 1;
    const double closed = figures.closed->reading.length.mm();
    if (closed < closed_usual.low || closed > closed_usual.high) return slip / (closed_trade.high - closed_trade.low);
    return 1 / (closed_usual.high - closed_usual.low);
}

double closed_likelihood(const Series& series, const ShaftFigures& figures)
{
    if (!figures.closed || series.closed_lengths.empty()) return closed_unknown(figures);
    const auto shift = to_own_reference(series, figures, figures.closed->reference);
    if (!shift) return closed_unknown(figures);
    const SizeReading& reading = figures.closed->reading;
    const double plus_minus = reading.plus_minus ? reading.plus_minus->mm() : closed_plus_minus;
    double density = 0;
    for (const Length listed : series.closed_lengths)
        density += density_of((reading.length + *shift).mm(), listed.mm(), reading_deviation(plus_minus, closed_tolerance));
    return (1 - slip) * density / static_cast<double>(series.closed_lengths.size()) + slip / (closed_trade.high - closed_trade.low);
}

}  // namespace shaftcut::identifying
