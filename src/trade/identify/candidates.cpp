#include "identify/candidates.hpp"

#include <algorithm>

namespace shaftcut::identifying {
namespace {

using Candidates = std::vector<IdentifyingFigure>;

// What some series states of a cross besides its sizes.
struct CrossLooks {
    bool circlip = false, nipple = false;
};

CrossLooks stated_looks(const Catalogue& catalogue)
{
    CrossLooks looks;
    const auto take = [&](const std::vector<Cross>& crosses) {
        for (const Cross& cross : crosses) {
            looks.circlip = looks.circlip || cross.circlip;
            looks.nipple = looks.nipple || cross.nipple;
        }
    };
    for (const Series& series : catalogue.series) {
        take(series.crosses);
        if (series.wide_angle) take(series.wide_angle->crosses);
    }
    return looks;
}

bool has_cap(const CrossFigures& cross) { return cross.pairs[CapPair::first].cap || cross.pairs[CapPair::second].cap; }
bool has_span(const CrossFigures& cross) { return cross.pairs[CapPair::first].span || cross.pairs[CapPair::second].span; }

// `measured`: what is known of that cross; nothing of it where it is null.
void add_cross(Candidates& all, IdentifyingFigure what, const CrossFigures* measured, const CrossLooks& looks)
{
    const auto add = [&](IdentifyingKind kind, bool done) {
        what.kind = kind;
        if (!done) all.push_back(what);
    };
    add(IdentifyingKind::cap_in_bore, measured && has_cap(*measured));
    add(IdentifyingKind::cap, measured && has_cap(*measured));
    add(IdentifyingKind::span, measured && has_span(*measured));
    add(IdentifyingKind::circlip, !looks.circlip || (measured && measured->circlip));
    add(IdentifyingKind::nipple, !looks.nipple || (measured && measured->nipple));
}

void add_wide_angle(Candidates& all, IdentifyingFigure what, const EndFigures& end, const CrossLooks& looks)
{
    what.kind = IdentifyingKind::spacing;
    if (!end.spacing) all.push_back(what);
    const bool placed = end.crosses.empty() || end.crosses[0].at;
    for (const std::size_t i : {0U, 1U}) {
        what.other = !placed && i == 1;
        if (placed) what.cross = both_places[i];
        add_cross(all, what, cross_of(end, what), looks);
    }
}

void add_end(Candidates& all, End at, const EndFigures& end, const CrossLooks& looks)
{
    IdentifyingFigure what{part_of(at), IdentifyingKind::joint, {}, CapPair::first, {}, false};
    if (!end.joint) all.push_back(what);
    if (end.joint == JointKind::wide_angle) add_wide_angle(all, what, end, looks);
    else add_cross(all, what, cross_of(end, what), looks);
}

void add_tubes(Candidates& all, const ShaftFigures& figures)
{
    const std::vector<TubeFigures>& tubes = figures.tubes;
    IdentifyingFigure what{IdentifiedPart::tubes, IdentifyingKind::shape, {}, CapPair::first, {}, false};
    if (!figures.shape) all.push_back(what);
    const bool placed = tubes.empty() || tubes[0].tube;
    what.kind = IdentifyingKind::role;
    if (!placed) all.push_back(what);
    for (const std::size_t i : {0U, 1U}) {
        const bool turned = placed && !tubes.empty() && tubes[0].tube == Tube::outer;
        const std::size_t index = turned ? 1 - i : i;
        if (placed) what.tube = both_tubes[i];
        what.other = !placed && i == 1;
        what.kind = IdentifyingKind::width;
        if (index >= tubes.size() || !tubes[index].width) all.push_back(what);
        what.kind = IdentifyingKind::wall;
        if (index >= tubes.size() || !tubes[index].wall) all.push_back(what);
    }
}

}  // namespace

Candidates not_measured(const Catalogue& catalogue, const Measures& measures, const ShaftFigures& figures)
{
    Candidates all;
    const CrossLooks looks = stated_looks(catalogue);
    for (const End end : both_ends) add_end(all, end, figures.ends[end], looks);
    add_tubes(all, figures);
    if (!measures.writing) all.push_back({{}, IdentifyingKind::writing, {}, CapPair::first, {}, false});
    return all;
}

const CrossFigures* cross_of(const EndFigures& end, const IdentifyingFigure& figure)
{
    std::size_t index = figure.other ? 1 : 0;
    if (figure.cross && !end.crosses.empty()) index = end.crosses[0].at == figure.cross ? 0 : 1;
    return index < end.crosses.size() ? &end.crosses[index] : nullptr;
}

MeasuringEffort effort_of(const IdentifyingFigure& figure)
{
    switch (figure.kind) {
    case IdentifyingKind::cap_in_bore:
    case IdentifyingKind::span:
    case IdentifyingKind::spacing:
    case IdentifyingKind::closed: return MeasuringEffort::as_it_lies;
    case IdentifyingKind::cap: return MeasuringEffort::circlip_off;
    case IdentifyingKind::width: return figure.tube == Tube::outer ? MeasuringEffort::as_it_lies : MeasuringEffort::halves_apart;
    case IdentifyingKind::wall:
    case IdentifyingKind::role: return MeasuringEffort::halves_apart;
    default: return MeasuringEffort::look;
    }
}

}  // namespace shaftcut::identifying

namespace shaftcut {

double minutes_of(MeasuringEffort effort)
{
    switch (effort) {
    case MeasuringEffort::look: return 0.5;
    case MeasuringEffort::as_it_lies: return 1;
    case MeasuringEffort::halves_apart: return 2;
    case MeasuringEffort::circlip_off: return 10;
    }
    return 10;
}

}  // namespace shaftcut
