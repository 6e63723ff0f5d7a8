#include "identify/compared.hpp"

#include <algorithm>

#include "identify/size_prediction.hpp"

namespace shaftcut::identifying {
namespace {

End end_of(IdentifiedPart part) { return part == IdentifiedPart::tractor ? End::tractor : End::implement; }

// `as`: what it is where the series states `stated`.
ComparedFigure compared(const FigureMeasured& measured, std::optional<Length> stated, SizeKind as)
{
    ComparedFigure made{measured.what, Length::from_mm(measured.figure->mean()), stated, {}, {}};
    if (!stated) return made;
    const double off = measured.figure->mean() - stated->mm();
    made.off = Length::from_mm(off);
    made.off_sigma = off / reading_deviation(measured.figure->first_plus_minus(), law_of(as).tolerance);
    return made;
}

template <class Ways>
auto best_way(const Ways& ways)
{
    return *std::max_element(ways.begin(), ways.end(), [](const auto& a, const auto& b) { return a.weight < b.weight; });
}

ComparedFigure compared_tube(FigureMeasured measured, const Series& series, const TubesWay& way)
{
    const TubeSize stated = stated_beside(series, way, measured);
    measured.what.tube = stated.tube;
    measured.what.other = false;
    return compared(measured, stated.size, stated.as);
}

void add_outside(std::vector<OutsideTrade>& all, const FigureMeasured& measured)
{
    const Interval& trade = law_of(measured.figure->kind()).trade;
    for (const SizeReading& reading : measured.figure->readings()) {
        const Length length = without_spacers(reading);
        if (length.mm() < trade.low || length.mm() > trade.high)
            all.push_back({measured.what, length, Length::from_mm(trade.low), Length::from_mm(trade.high), reading.place});
    }
}

}  // namespace

std::vector<ComparedFigure> compared_figures(const Parts& parts, const Catalogue& catalogue, std::size_t series, IdentifiedPart part)
{
    std::vector<ComparedFigure> all;
    const Series& of = catalogue.series[series];
    if (part == IdentifiedPart::tubes) {
        const TubesWay way = best_way(parts.tubes[series]);
        for (const FigureMeasured& measured : all_figures(parts.figures.tubes)) all.push_back(compared_tube(measured, of, way));
        return all;
    }
    const JointWay way = best_way(parts.joints[end_of(part)][series]);
    for (const FigureMeasured& measured : all_figures(parts.figures.ends[end_of(part)], part))
        all.push_back(compared(measured, stated_beside(of, way, measured), measured.figure->kind()));
    return all;
}

ComparedSeries compared_series(const Parts& parts, const Catalogue& catalogue, std::size_t series)
{
    ComparedSeries made{catalogue.series[series].name, {}};
    for (const IdentifiedPart part : identified_parts) {
        const auto figures = compared_figures(parts, catalogue, series, part);
        made.figures.insert(made.figures.end(), figures.begin(), figures.end());
    }
    return made;
}

std::vector<OutsideTrade> outside_trade(const ShaftFigures& figures)
{
    std::vector<OutsideTrade> all;
    for (const End end : both_ends)
        for (const FigureMeasured& measured : all_figures(figures.ends[end], part_of(end))) add_outside(all, measured);
    for (const FigureMeasured& measured : all_figures(figures.tubes)) add_outside(all, measured);
    if (!figures.closed) return all;
    const SizeReading& closed = figures.closed->reading;
    if (closed.length.mm() < closed_trade.low || closed.length.mm() > closed_trade.high)
        all.push_back({{{}, IdentifyingKind::closed, {}, CapPair::first, {}, false}, closed.length, Length::from_mm(closed_trade.low), Length::from_mm(closed_trade.high), closed.place});
    return all;
}

}  // namespace shaftcut::identifying
