#include "identify/shaft_figures.hpp"

namespace shaftcut::identifying {
namespace {

std::optional<Figure> figure_of(SizeKind kind, const SizeReadings& readings)
{
    if (readings.empty()) return std::nullopt;
    return Figure(kind, readings);
}

CrossFigures cross_of(const MeasuredCross& measured)
{
    CrossFigures cross{measured.at, {}, measured.circlip, measured.nipple};
    for (const CapPair pair : both_pairs) {
        const MeasuredPair& read = measured.pairs[pair];
        cross.pairs[pair].cap = figure_of(read.cap_read == CapRead::bore ? SizeKind::cap_in_bore : SizeKind::cap, read.cap);
        cross.pairs[pair].span = figure_of(SizeKind::span, read.span);
    }
    return cross;
}

// Of two whose place one states the other has the other place.
template <class Measured, class Place>
void place_both(std::vector<Measured>& both, std::optional<Place> Measured::*place)
{
    if (both.size() != 2) return;
    for (const std::size_t i : {0U, 1U})
        if (!(both[i].*place) && both[1 - i].*place) both[i].*place = other(*(both[1 - i].*place));
}

// Only a wide-angle joint has a spacing, two crosses, or an inner and an outer one.
bool shows_wide_angle(const EndFigures& end)
{
    return end.spacing || end.crosses.size() > 1 || (!end.crosses.empty() && end.crosses[0].at);
}

EndFigures end_of(const MeasuredEnd& measured)
{
    EndFigures end{measured.joint, measured.joint.has_value(), {}, figure_of(SizeKind::spacing, measured.spacing)};
    for (const MeasuredCross& cross : measured.crosses) end.crosses.push_back(cross_of(cross));
    place_both(end.crosses, &CrossFigures::at);
    if (!end.joint && shows_wide_angle(end)) end.joint = JointKind::wide_angle;
    return end;
}

void add(std::vector<FigureMeasured>& all, const std::optional<Figure>& figure, const IdentifyingFigure& what, std::size_t index)
{
    if (figure) all.push_back({what, &*figure, index});
}

void add_pair(std::vector<FigureMeasured>& all, const PairFigures& pair, IdentifyingFigure what, std::size_t index)
{
    what.kind = pair.cap && pair.cap->kind() == SizeKind::cap_in_bore ? IdentifyingKind::cap_in_bore : IdentifyingKind::cap;
    add(all, pair.cap, what, index);
    what.kind = IdentifyingKind::span;
    add(all, pair.span, what, index);
}

}  // namespace

ShaftFigures figures_of(const Measures& measures)
{
    ShaftFigures shaft{{}, measures.shape, {}, measures.closed};
    for (const End end : both_ends) shaft.ends[end] = end_of(measures.ends[end]);
    for (const MeasuredTube& tube : measures.tubes)
        shaft.tubes.push_back({tube.tube, figure_of(SizeKind::inner_width, tube.width), figure_of(SizeKind::wall, tube.wall)});
    place_both(shaft.tubes, &TubeFigures::tube);
    return shaft;
}

std::vector<FigureMeasured> all_figures(const EndFigures& end, IdentifiedPart part)
{
    std::vector<FigureMeasured> all;
    IdentifyingFigure what{part, IdentifyingKind::spacing, {}, CapPair::first, {}, false};
    add(all, end.spacing, what, 0);
    for (std::size_t i = 0; i < end.crosses.size(); ++i)
        for (const CapPair pair : both_pairs) {
            what.cross = end.crosses[i].at;
            what.pair = pair;
            what.other = i > 0 && !what.cross;
            add_pair(all, end.crosses[i].pairs[pair], what, i);
        }
    return all;
}

std::vector<FigureMeasured> all_figures(const std::vector<TubeFigures>& tubes)
{
    std::vector<FigureMeasured> all;
    for (std::size_t i = 0; i < tubes.size(); ++i) {
        IdentifyingFigure what{IdentifiedPart::tubes, IdentifyingKind::width, {}, CapPair::first, tubes[i].tube, i > 0 && !tubes[i].tube};
        add(all, tubes[i].width, what, i);
        what.kind = IdentifyingKind::wall;
        add(all, tubes[i].wall, what, i);
    }
    return all;
}

}  // namespace shaftcut::identifying
