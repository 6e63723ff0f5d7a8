#include "identify/size_prediction.hpp"

#include <algorithm>

namespace shaftcut::identifying {
namespace {

class Collected {
public:
    void add(std::optional<Length> size, double weight)
    {
        total_ += weight;
        if (!size) {
            made_.unknown += weight;
            return;
        }
        const auto same = [&](const SizeChance& one) { return one.size == *size; };
        const auto at = std::find_if(made_.sizes.begin(), made_.sizes.end(), same);
        if (at == made_.sizes.end()) made_.sizes.push_back({*size, weight});
        else at->chance += weight;
    }

    SizePrediction taken()
    {
        if (total_ <= 0) return {{}, 1};
        for (SizeChance& one : made_.sizes) one.chance /= total_;
        made_.unknown /= total_;
        return std::move(made_);
    }

private:
    SizePrediction made_;
    double total_ = 0;
};

std::optional<Length> tube_size(const Series& series, const TubesWay& way, const IdentifyingFigure& figure)
{
    const Tube tube = figure.tube ? *figure.tube : figure.other ? other(way.first) : way.first;
    const SeriesHalf& half = series.halves[tube];
    return figure.kind == IdentifyingKind::width ? half.width : half.wall;
}

std::optional<PairSizes> pair_asked_for(const Series& series, const JointWay& way, const IdentifyingFigure& figure)
{
    if (figure.cross) return pair_at(series, way, *figure.cross, figure.pair);
    return pair_measured(series, way, figure.other ? 1 : 0, figure.pair);
}

}  // namespace

std::optional<Length> stated_size(const Series& series, const JointWay& way, const IdentifyingFigure& figure, bool joint_known)
{
    const bool wide = way.joint == JointKind::wide_angle;
    if (figure.kind == IdentifyingKind::spacing) return wide && series.wide_angle ? std::optional(series.wide_angle->spacing) : std::nullopt;
    if (wide && !joint_known) return std::nullopt;
    const auto pair = pair_asked_for(series, way, figure);
    if (!pair) return std::nullopt;
    return figure.kind == IdentifyingKind::span ? pair->span : pair->cap;
}

std::optional<Length> stated_beside(const Series& series, const JointWay& way, const FigureMeasured& measured)
{
    if (measured.what.kind == IdentifyingKind::spacing) return stated_size(series, way, measured.what, true);
    const auto pair = pair_measured(series, way, measured.index, measured.what.pair);
    if (!pair) return std::nullopt;
    return measured.what.kind == IdentifyingKind::span ? pair->span : pair->cap;
}

TubeSize stated_beside(const Series& series, const TubesWay& way, const FigureMeasured& measured)
{
    const Tube tube = measured.index == 0 ? way.first : other(way.first);
    const SeriesHalf& half = series.halves[tube];
    if (measured.what.kind == IdentifyingKind::width) return {tube, width_of(tube), half.width};
    return {tube, SizeKind::wall, half.wall};
}

SizePrediction predicted_size(const Parts& parts, const Series& of, std::size_t series, const IdentifyingFigure& figure)
{
    Collected collected;
    if (figure.part == IdentifiedPart::tubes) {
        for (const TubesWay& way : parts.tubes[series]) collected.add(tube_size(of, way, figure), way.weight);
        return collected.taken();
    }
    const End end = figure.part == IdentifiedPart::tractor ? End::tractor : End::implement;
    const bool joint_known = parts.figures.ends[end].joint.has_value();
    for (const JointWay& way : parts.joints[end][series]) collected.add(stated_size(of, way, figure, joint_known), way.weight);
    return collected.taken();
}

}  // namespace shaftcut::identifying
