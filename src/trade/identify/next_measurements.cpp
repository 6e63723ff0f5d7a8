#include "identify/next_measurements.hpp"

#include <algorithm>

#include "identify/candidates.hpp"
#include "identify/look_gain.hpp"
#include "identify/size_gain.hpp"
#include "identify/writing_gain.hpp"

namespace shaftcut::identifying {
namespace {

using Next = std::vector<NextMeasurement>;

class Scored {
public:
    Scored(const Catalogue& catalogue, const Parts& parts, const Posterior& posterior) : catalogue_(catalogue), parts_(parts), posterior_(posterior) {}

    NextMeasurement first(const IdentifyingFigure& figure) const { return made(figure, false, gain_of(figure)); }
    NextMeasurement again(const FigureMeasured& measured) const { return made(measured.what, true, again_gain(catalogue_, parts_, posterior_, measured)); }

private:
    static NextMeasurement made(const IdentifyingFigure& figure, bool again, const Gain& gain)
    {
        const auto percent = [](double share) { return std::min(100 * share, 100.0); };  // cells add up to a whole but for their rounding
        return {figure, again, effort_of(figure), std::max(gain.bits, 0.0), percent(gain.best), percent(gain.settles)};
    }

    Gain gain_of(const IdentifyingFigure& figure) const
    {
        if (figure.kind == IdentifyingKind::writing) return writing_gain(catalogue_, posterior_);
        if (!is_look(figure.kind)) return size(figure);
        return figure.part == IdentifiedPart::tubes ? tubes_look_gain(catalogue_, parts_, posterior_, figure) : joint_look_gain(catalogue_, parts_, posterior_, figure);
    }

    Gain size(const IdentifyingFigure& figure) const
    {
        std::vector<SizePrediction> predictions;
        for (std::size_t k = 0; k < catalogue_.series.size(); ++k) predictions.push_back(predicted_size(parts_, catalogue_.series[k], k, figure));
        const SizeKind kind = size_kind(figure);
        const Figure* cap = cap_beside(figure);
        const auto unknown = [&](double y) { return cap ? span_density(y, cap->mean()) : log_uniform(y, law_of(kind).usual); };
        return size_gain(posterior_, parts_.likelihood[*figure.part], *figure.part, predictions, kind, unknown);
    }

    // Of a span: the cap of the same cross, where that was measured.
    const Figure* cap_beside(const IdentifyingFigure& figure) const
    {
        if (figure.kind != IdentifyingKind::span) return nullptr;
        const EndFigures& end = parts_.figures.ends[figure.part == IdentifiedPart::tractor ? End::tractor : End::implement];
        const CrossFigures* cross = cross_of(end, figure);
        return cross && cross->pairs[figure.pair].cap ? &*cross->pairs[figure.pair].cap : nullptr;
    }

    const Catalogue& catalogue_;
    const Parts& parts_;
    const Posterior& posterior_;
};

double rate(const NextMeasurement& one) { return one.bits / minutes_of(one.effort); }

// A look, then what is done with the shaft as it lies, then what takes it apart.
int hardness(const NextMeasurement& one)
{
    switch (one.effort) {
    case MeasuringEffort::look: return 0;
    case MeasuringEffort::as_it_lies: return 1;
    default: return 2;
    }
}

void order(Next::iterator begin, Next::iterator end)
{
    std::stable_sort(begin, end, [](const NextMeasurement& a, const NextMeasurement& b) { return rate(a) > rate(b); });
    if (begin == end) return;
    const double least = rate(*begin) - like_rate;
    const auto alike = std::find_if(begin, end, [&](const NextMeasurement& one) { return rate(one) < least; });
    std::stable_sort(begin, alike, [](const NextMeasurement& a, const NextMeasurement& b) { return hardness(a) < hardness(b); });
}

void add_again(Next& next, const Scored& scored, const std::vector<FigureMeasured>& figures)
{
    for (const FigureMeasured& measured : figures)
        if (measured.figure->readings().size() < most_readings) next.push_back(scored.again(measured));
}

}  // namespace

Next next_measurements(const Catalogue& catalogue, const Measures& measures, const Parts& parts, const Posterior& posterior)
{
    const Scored scored(catalogue, parts, posterior);
    Next next;
    for (const IdentifyingFigure& figure : not_measured(catalogue, measures, parts.figures)) next.push_back(scored.first(figure));
    for (const End end : both_ends) add_again(next, scored, all_figures(parts.figures.ends[end], part_of(end)));
    add_again(next, scored, all_figures(parts.figures.tubes));
    const auto worth = std::stable_partition(next.begin(), next.end(), is_worth_measuring);
    order(next.begin(), worth);
    order(worth, next.end());
    return next;
}

bool nothing_worth_measuring(const Next& next)
{
    return std::none_of(next.begin(), next.end(), is_worth_measuring);
}

}  // namespace shaftcut::identifying

namespace shaftcut {

bool is_worth_measuring(const NextMeasurement& next) { return next.bits >= identifying::worth_bits; }

}  // namespace shaftcut
