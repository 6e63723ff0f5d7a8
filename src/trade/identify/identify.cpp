#include "shaftcut/trade/identify/identify.hpp"

#include <algorithm>
#include <numeric>
#include <stdexcept>

#include "identify/compared.hpp"
#include "identify/next_measurements.hpp"
#include "identify/together.hpp"

namespace shaftcut {
namespace {

using namespace identifying;

constexpr std::size_t most_of_a_part = 5;   // series named of a part
constexpr double odd_like_from = 0.05;      // what a series must hold to be named as what a part of a mixed shaft may be of

// From the most probable; of equals as in the catalogue.
std::vector<std::size_t> ranked(const std::vector<double>& probabilities)
{
    std::vector<std::size_t> order(probabilities.size());
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return probabilities[a] > probabilities[b]; });
    return order;
}

// Every series of 0.1 % or more in any part; and, where shafts of one series hold 1 % or more together, the most probable ones until 99.95 % of that is listed.
std::vector<ListedSeries> listed_series(const Catalogue& catalogue, const Posterior& answer)
{
    std::vector<ListedSeries> list;
    double held = 0;
    for (const std::size_t k : ranked(answer.one)) {
        const bool by_whole = answer.one_series >= listed_worth && held < listed_in_all * answer.one_series;
        if (by_whole || answer.any_part[k] >= listed_from) list.push_back({catalogue.series[k].name, 100 * answer.one[k], 100 * answer.any_part[k]});
        held += answer.one[k];
    }
    return list;
}

// The most probable of at least `from`, each in terms of `whole`.
std::vector<SeriesPercent> most_probable(const Catalogue& catalogue, const std::vector<double>& probabilities, double whole, double from)
{
    std::vector<SeriesPercent> all;
    for (const std::size_t k : ranked(probabilities))
        if (all.size() < most_of_a_part && probabilities[k] >= from * whole) all.push_back({catalogue.series[k].name, 100 * probabilities[k] / whole});
    return all;
}

PartOrigin origin_of(const Catalogue& catalogue, const Posterior& answer, IdentifiedPart part)
{
    std::vector<double> of = answer.mixed_part[part];
    for (std::size_t k = 0; k < of.size(); ++k) of[k] += answer.one[k];
    return {part, 100 * (answer.none + answer.mixed_part_none[part]), most_probable(catalogue, of, 1, listed_from)};
}

// Of all parts but one.
std::vector<ComparedFigure> compared_others(const Parts& parts, const Catalogue& catalogue, std::size_t series, IdentifiedPart odd)
{
    std::vector<ComparedFigure> all;
    for (const IdentifiedPart part : identified_parts) {
        if (part == odd) continue;
        const auto figures = compared_figures(parts, catalogue, series, part);
        all.insert(all.end(), figures.begin(), figures.end());
    }
    return all;
}

MixedShaft mixed_shaft(const Catalogue& catalogue, const Parts& parts, const Posterior& answer)
{
    const auto less = [&](IdentifiedPart a, IdentifiedPart b) { return answer.odd[a].total < answer.odd[b].total; };
    MixedShaft made{*std::max_element(identified_parts.begin(), identified_parts.end(), less)};
    const MixedSums& sums = answer.odd[made.odd];
    const auto others = std::max_element(sums.others.begin(), sums.others.end());
    if (*others >= sums.others_none) {
        const auto series = static_cast<std::size_t>(others - sums.others.begin());
        made.others_series = catalogue.series[series].name;
        made.odd_figures = compared_figures(parts, catalogue, series, made.odd);
        made.others_figures = compared_others(parts, catalogue, series, made.odd);
    }
    made.odd_like = most_probable(catalogue, sums.odd, sums.total, odd_like_from);
    made.odd_none_percent = 100 * sums.odd_none / sums.total;
    made.others_like = most_probable(catalogue, sums.others, sums.total, odd_like_from);
    made.others_none_percent = 100 * sums.others_none / sums.total;
    return made;
}

// Without the writing the verdict, or what it names, would be another.
bool rests_on_writing(const Catalogue& catalogue, const Parts& parts, const Posterior& answer)
{
    const Posterior without = posterior(parts, Writing(catalogue, std::nullopt));
    if (without.verdict() != answer.verdict()) return true;
    if (answer.verdict() == IdentifyVerdict::one) return without.best() != answer.best();
    if (answer.verdict() != IdentifyVerdict::mixed) return false;
    const MixedShaft now = mixed_shaft(catalogue, parts, answer), then = mixed_shaft(catalogue, parts, without);
    return now.odd != then.odd || now.others_series != then.others_series;
}

Identification answered(const Catalogue& catalogue, const Parts& parts, const Posterior& answer)
{
    Identification made;
    made.verdict = answer.verdict();
    made.one_series_percent = 100 * answer.one_series;
    made.mixed_percent = 100 * answer.mixed;
    made.none_percent = 100 * answer.none;
    made.series = listed_series(catalogue, answer);
    for (const IdentifiedPart part : identified_parts) {
        made.parts[part] = origin_of(catalogue, answer, part);
        made.odd_part_percent[part] = 100 * answer.odd[part].total;
    }
    made.fits = compared_series(parts, catalogue, answer.best());
    if (made.verdict == IdentifyVerdict::mixed) made.mixed = mixed_shaft(catalogue, parts, answer);
    made.outside_trade = outside_trade(parts.figures);
    return made;
}

}  // namespace

Identification identify(const Catalogue& catalogue, const Measures& measures)
{
    if (catalogue.series.empty()) throw std::invalid_argument("a catalogue without a series");
    const Parts parts = parts_of(catalogue, measures);
    const Writing writing(catalogue, measures.writing);
    const Posterior answer = posterior(parts, writing);
    Identification made = answered(catalogue, parts, answer);
    made.next = next_measurements(catalogue, measures, parts, answer);
    made.stop = nothing_worth_measuring(made.next);
    if (made.stop && made.verdict == IdentifyVerdict::several) made.not_told_apart = not_told_apart(catalogue, parts.figures, answer);
    if (writing.series()) made.written_series = catalogue.series[*writing.series()].name;
    made.rests_on_writing = measures.writing && rests_on_writing(catalogue, parts, answer);
    return made;
}

}  // namespace shaftcut
