#include "identify/look_gain.hpp"

#include <algorithm>
#include <cmath>

#include "identify/size_prediction.hpp"

namespace shaftcut::identifying {
namespace {

void add_weighted(Outcomes& sum, const Outcomes& one, double weight)
{
    for (std::size_t y = 0; y < sum.size(); ++y) sum[y] += weight * one[y];
}

Outcomes weighted(const std::vector<double>& weights, double factor, const std::vector<Outcomes>& each)
{
    Outcomes sum(each.front().size(), 0);
    for (std::size_t k = 0; k < weights.size(); ++k) add_weighted(sum, each[k], weights[k] * factor);
    return sum;
}

// One outcome over all hypotheses.
class OutcomeSum {
public:
    OutcomeSum(const Posterior& posterior, const LookPrediction& prediction, std::size_t outcome) : outcome_(outcome)
    {
        const auto each = [&](const auto& take) {
            for (std::size_t k = 0; k < posterior.one.size(); ++k) take(posterior.one[k], prediction.of_series[k]);
            take(posterior.none, prediction.of_none);
            take(posterior.mixed, prediction.of_mixed);
        };
        each([&](double p, const Outcomes& predicted) { total_ += p * predicted[outcome_]; });
        if (total_ > 0) each([&](double p, const Outcomes& predicted) { add(p, predicted); });
    }

    double bits() const { return bits_; }
    double best() const { return best_; }
    double settles() const { return total_ > 0 && best_ >= certain * total_ ? total_ : 0; }

private:
    void add(double p, const Outcomes& predicted)
    {
        const double together = p * predicted[outcome_];
        if (together <= 0) return;
        bits_ += together * std::log2(predicted[outcome_] / total_);
        best_ = std::max(best_, together);
    }

    std::size_t outcome_;
    double total_ = 0, bits_ = 0, best_ = 0;
};

const std::vector<JointWays>& joints_of(const Parts& parts, IdentifiedPart part) { return parts.joints[part == IdentifiedPart::tractor ? End::tractor : End::implement]; }

// What each way of a joint predicts, weighted.
template <class Of>
Outcomes over_ways(const JointWays& ways, const Outcomes& unknown, const Of& of_way)
{
    Outcomes sum(unknown.size(), 0);
    double total = 0;
    for (const JointWay& way : ways) {
        add_weighted(sum, of_way(way), way.weight);
        total += way.weight;
    }
    if (total <= 0) return unknown;
    for (double& one : sum) one /= total;
    return sum;
}

template <class Look>
Outcomes seen(const std::optional<Look>& stated)
{
    return {look_likelihood<Look>(static_cast<Look>(0), stated), look_likelihood<Look>(static_cast<Look>(1), stated)};
}

Outcomes cross_look(const Series& series, const JointWay& way, const IdentifyingFigure& figure, bool joint_known)
{
    const Cross* cross = figure.cross ? cross_at(series, *figure.cross) : cross_measured(series, way, figure.other ? 1 : 0);
    if (!cross || (way.joint == JointKind::wide_angle && !joint_known)) return {0.5, 0.5};
    return figure.kind == IdentifyingKind::circlip ? seen(cross->circlip) : seen(cross->nipple);
}

Outcomes joint_seen(const JointWay& way)
{
    return way.joint == JointKind::standard ? Outcomes{1, 0} : Outcomes{0, 1};
}

Outcomes shape_seen(Shape shape)
{
    Outcomes all;
    for (std::size_t i = 0; i < shape_of_none.size(); ++i) all.push_back(shape_likelihood(static_cast<Shape>(i), shape));
    return all;
}

// As is predicted of a shape that nobody knows.
Outcomes shape_seen_of_none()
{
    Outcomes all(shape_of_none.size(), 0);
    for (std::size_t i = 0; i < shape_of_none.size(); ++i) add_weighted(all, shape_seen(static_cast<Shape>(i)), shape_of_none[i]);
    return all;
}

Outcomes role_seen(const TubesWays& ways)
{
    const double total = ways[0].weight + ways[1].weight;
    return total > 0 ? Outcomes{ways[0].weight / total, ways[1].weight / total} : Outcomes{0.5, 0.5};
}

Gain completed_gain(const Parts& parts, const Posterior& posterior, IdentifiedPart part, std::vector<Outcomes> of_series, const Outcomes& unknown)
{
    return look_gain(posterior, look_prediction(posterior, parts.likelihood[part], part, std::move(of_series), unknown));
}

// Where the readings so far are slips so often, another one is the same again, or another.
Outcomes read_again(double slipped) { return {(1 - slipped) * (1 - slip), slipped + (1 - slipped) * slip}; }

double tube_slipped(const Series& series, const TubesWays& ways, const FigureMeasured& measured)
{
    double sum = 0, total = 0;
    for (const TubesWay& way : ways) {
        const TubeSize stated = stated_beside(series, way, measured);
        sum += way.weight * measured.figure->slipped(stated.as, stated.size);
        total += way.weight;
    }
    return total > 0 ? sum / total : 1;
}

double joint_slipped(const Series& series, const JointWays& ways, const FigureMeasured& measured)
{
    double sum = 0, total = 0;
    for (const JointWay& way : ways) {
        sum += way.weight * measured.figure->slipped(measured.figure->kind(), stated_beside(series, way, measured));
        total += way.weight;
    }
    return total > 0 ? sum / total : 1;
}

}  // namespace

LookPrediction look_prediction(const Posterior& posterior, const PartLikelihood& likelihood, IdentifiedPart part, std::vector<Outcomes> of_series, const Outcomes& unknown)
{
    LookPrediction made{std::move(of_series), {}, {}};
    made.of_none = weighted(likelihood.of_series, likelihood.none_shared / likelihood.sum, made.of_series);
    add_weighted(made.of_none, unknown, 1 - likelihood.none_shared);
    made.of_mixed = weighted(posterior.mixed_part[part], 1 / posterior.mixed, made.of_series);
    add_weighted(made.of_mixed, made.of_none, posterior.mixed_part_none[part] / posterior.mixed);
    return made;
}

Gain look_gain(const Posterior& posterior, const LookPrediction& prediction)
{
    Gain made;
    for (std::size_t y = 0; y < prediction.of_none.size(); ++y) {
        const OutcomeSum sum(posterior, prediction, y);
        made.bits += sum.bits();
        made.best += sum.best();
        made.settles += sum.settles();
    }
    return made;
}

Gain joint_look_gain(const Catalogue& catalogue, const Parts& parts, const Posterior& posterior, const IdentifyingFigure& figure)
{
    const bool kind = figure.kind == IdentifyingKind::joint;
    const Outcomes unknown = kind ? Outcomes{1 - wide_of_none, wide_of_none} : Outcomes{0.5, 0.5};
    const bool joint_known = parts.figures.ends[figure.part == IdentifiedPart::tractor ? End::tractor : End::implement].joint.has_value();
    const std::vector<JointWays>& ways = joints_of(parts, *figure.part);
    std::vector<Outcomes> of_series;
    for (std::size_t k = 0; k < catalogue.series.size(); ++k)
        of_series.push_back(over_ways(ways[k], unknown, [&](const JointWay& way) { return kind ? joint_seen(way) : cross_look(catalogue.series[k], way, figure, joint_known); }));
    return completed_gain(parts, posterior, *figure.part, std::move(of_series), unknown);
}

Gain tubes_look_gain(const Catalogue& catalogue, const Parts& parts, const Posterior& posterior, const IdentifyingFigure& figure)
{
    const bool shape = figure.kind == IdentifyingKind::shape;
    std::vector<Outcomes> of_series;
    for (std::size_t k = 0; k < catalogue.series.size(); ++k) of_series.push_back(shape ? shape_seen(catalogue.series[k].shape) : role_seen(parts.tubes[k]));
    return completed_gain(parts, posterior, IdentifiedPart::tubes, std::move(of_series), shape ? shape_seen_of_none() : Outcomes{0.5, 0.5});
}

Gain again_gain(const Catalogue& catalogue, const Parts& parts, const Posterior& posterior, const FigureMeasured& measured)
{
    const IdentifiedPart part = *measured.what.part;
    std::vector<Outcomes> of_series;
    for (std::size_t k = 0; k < catalogue.series.size(); ++k) {
        const Series& series = catalogue.series[k];
        const bool tubes = part == IdentifiedPart::tubes;
        of_series.push_back(read_again(tubes ? tube_slipped(series, parts.tubes[k], measured) : joint_slipped(series, joints_of(parts, part)[k], measured)));
    }
    const SizeKind kind = measured.figure->kind();
    return completed_gain(parts, posterior, part, std::move(of_series), read_again(measured.figure->slipped(kind, std::nullopt)));
}

}  // namespace shaftcut::identifying
