// What a measurement is expected to tell, against the same written out: every series by itself, readings on a finer grid without groups.
#include <algorithm>
#include <array>
#include <cmath>

#include "identify/candidates.hpp"
#include "identify/look_gain.hpp"
#include "identify/neighbours.hpp"
#include "identify/next_measurements.hpp"
#include "identify/size_gain.hpp"
#include "identify/writing_gain.hpp"
#include "support/catch.hpp"
#include "support/identify/invented.hpp"
#include "support/identify/reference_files.hpp"

using namespace shaftcut;
using namespace shaftcut::identifying;

namespace {

Catalogue six()
{
    return test::read_reference_catalogue(std::string(SHAFTCUT_SOURCE_DIR) + "/tests/trade/identify/reference/six/series.xml");
}

struct Answered {
    Parts parts;
    Posterior posterior;
};

Answered answered(const Catalogue& catalogue, const Measures& measures)
{
    Parts parts = parts_of(catalogue, measures);
    const Posterior made = posterior(parts, Writing(catalogue, measures.writing));
    return {std::move(parts), made};
}

// By hypothesis: each series, none, mixed.
std::vector<double> hypotheses(const Posterior& of)
{
    std::vector<double> all = of.one;
    all.push_back(of.none);
    all.push_back(of.mixed);
    return all;
}

// What a part of none, and of a mixed shaft, predicts, by what each series does.
std::vector<double> completed(const Answered& of, IdentifiedPart part, std::vector<double> by_series, double unknown)
{
    const PartLikelihood& likelihood = of.parts.likelihood[part];
    double none = (1 - likelihood.none_shared) * unknown, mixed = 0;
    for (std::size_t k = 0; k < by_series.size(); ++k) {
        none += likelihood.none_shared * likelihood.of_series[k] / likelihood.sum * by_series[k];
        mixed += of.posterior.mixed_part[part][k] * by_series[k];
    }
    mixed = (mixed + of.posterior.mixed_part_none[part] * none) / of.posterior.mixed;
    by_series.push_back(none);
    by_series.push_back(mixed);
    return by_series;
}

// Adds one outcome: P(h) and what h holds of it.
struct Sum {
    double bits = 0, best = 0, settles = 0, whole = 0;
    void add(const std::vector<double>& probabilities, const std::vector<double>& predicted, double width)
    {
        double total = 0, greatest = 0;
        for (std::size_t h = 0; h < predicted.size(); ++h) {
            total += probabilities[h] * predicted[h];
            greatest = std::max(greatest, probabilities[h] * predicted[h]);
        }
        if (total <= 0) return;
        for (std::size_t h = 0; h < predicted.size(); ++h)
            if (predicted[h] > 0) bits += probabilities[h] * predicted[h] * std::log2(predicted[h] / total) * width;
        best += greatest * width;
        whole += total * width;
        if (greatest >= 0.95 * total) settles += total * width;
    }
};

Sum integrated(const Catalogue& catalogue, const Answered& of, const IdentifyingFigure& figure)
{
    const SizeKind kind = size_kind(figure);
    const SizeLaw& law = law_of(kind);
    const double step = 0.004, low = law.usual.low - 8, high = law.usual.high + 8;
    std::vector<SizePrediction> predictions;
    for (std::size_t k = 0; k < catalogue.series.size(); ++k) predictions.push_back(predicted_size(of.parts, catalogue.series[k], k, figure));
    const auto is_usual = [&](double y) { return y >= law.usual.low && y <= law.usual.high ? 1 / (y * std::log(law.usual.high / law.usual.low)) : 0; };
    Sum sum;
    for (double y = low; y < high; y += step) {
        const double slips = 0.015 / (high - low), unknown = 0.985 * is_usual(y);
        std::vector<double> by_series;
        for (const SizePrediction& prediction : predictions) {
            double density = prediction.unknown * unknown;
            for (const SizeChance& one : prediction.sizes)
                if (std::abs(y - one.size.mm()) < 6) density += 0.985 * one.chance * reading_density(y - one.size.mm(), law.plus_minus, law);
            by_series.push_back(density);
        }
        std::vector<double> all = completed(of, *figure.part, by_series, unknown);
        for (double& one : all) one += slips;
        sum.add(hypotheses(of.posterior), all, step);
    }
    return sum;
}

std::vector<Measures> some_measures(const Catalogue& catalogue)
{
    support::Dice dice(11);
    std::vector<Measures> all{Measures{}};
    for (int i = 0; i < 6; ++i) {
        Measures drawn = test::drawn_measures(dice, test::drawn_shaft(dice, catalogue, catalogue, {}), {});
        drawn.writing.reset();
        all.push_back(drawn);
    }
    return all;
}

const NextMeasurement& next_of(const std::vector<NextMeasurement>& next, const IdentifyingFigure& figure)
{
    return *std::find_if(next.begin(), next.end(), [&](const NextMeasurement& one) { return one.figure == figure && !one.again; });
}

}  // namespace

TEST_CASE("a size's gain is the integral over its readings, within a few hundredths of a bit for its cells")
{
    const Catalogue catalogue = six();
    int compared = 0;
    for (const Measures& measures : some_measures(catalogue)) {
        const Answered of = answered(catalogue, measures);
        const auto next = next_measurements(catalogue, measures, of.parts, of.posterior);
        for (const IdentifyingFigure& figure : not_measured(catalogue, measures, of.parts.figures)) {
            // A span beside a measured cap is not log-uniform.
            if (is_look(figure.kind) || figure.kind == IdentifyingKind::span) continue;
            const Sum expected = integrated(catalogue, of, figure);
            const NextMeasurement& made = next_of(next, figure);
            INFO(to_word(*figure.part) << " " << to_word(figure.kind));
            CHECK(expected.whole == Approx(1).margin(0.005));
            CHECK(made.bits == Approx(expected.bits).margin(0.03));
            CHECK(made.expected_best_percent == Approx(100 * expected.best).margin(1.5));
            ++compared;
        }
    }
    CHECK(compared > 25);
}

TEST_CASE("a look's gain is what its outcomes tell of every series, mixed and none")
{
    const Catalogue catalogue = six();
    for (const Measures& measures : some_measures(catalogue)) {
        if (measures.shape) continue;
        const Answered of = answered(catalogue, measures);
        Sum expected;
        for (std::size_t y = 0; y < 6; ++y) {
            const auto seen = [&](Shape is) { return static_cast<std::size_t>(is) == y ? 0.985 : 0.003; };
            std::vector<double> by_series;
            for (const Series& series : catalogue.series) by_series.push_back(seen(series.shape));
            const std::array<double, 6> unknown{0.4, 0.2, 0.2, 0.1, 0.07, 0.03};
            double of_unknown = 0;
            for (std::size_t i = 0; i < 6; ++i) of_unknown += unknown[i] * seen(static_cast<Shape>(i));
            expected.add(hypotheses(of.posterior), completed(of, IdentifiedPart::tubes, by_series, of_unknown), 1);
        }
        const auto next = next_measurements(catalogue, measures, of.parts, of.posterior);
        const NextMeasurement& made = next_of(next, {IdentifiedPart::tubes, IdentifyingKind::shape, {}, CapPair::first, {}, false});
        CHECK(made.bits == Approx(expected.bits).margin(1e-9));
        CHECK(made.expected_best_percent == Approx(100 * expected.best).margin(1e-7));
        CHECK(made.settles_percent == Approx(100 * expected.settles).margin(1e-7));
    }
}

TEST_CASE("the writing's gain is what each name in the catalogue and any other tell")
{
    support::Dice dice(3);
    const Catalogue catalogue = test::invented_catalogue(dice, 30, "Invented");
    const auto near = neighbours(catalogue);
    const double n = 30;
    for (int i = 0; i < 10; ++i) {
        Measures measures = test::drawn_measures(dice, test::drawn_shaft(dice, catalogue, catalogue, {}), {});
        measures.writing.reset();
        const Answered of = answered(catalogue, measures);
        Sum expected;
        double mixed_outside = 1;
        for (std::size_t name = 0; name < 30; ++name) {
            std::vector<double> predicted;
            for (std::size_t k = 0; k < 30; ++k) {
                const bool is_near = std::find(near[k].begin(), near[k].end(), name) != near[k].end();
                predicted.push_back((k == name ? 0.8 : 0) + 0.2 * 0.75 * ((is_near ? 0.7 / 4 : 0) + 0.3 / n));
            }
            predicted.push_back(0.2 * 0.75 / n);
            double parts = 0;
            for (const IdentifiedPart part : identified_parts) parts += of.posterior.mixed_part[part][name] / of.posterior.mixed / 3;
            predicted.push_back(0.8 * parts + 0.2 * 0.75 / n);
            mixed_outside -= predicted.back();
            expected.add(hypotheses(of.posterior), predicted, 1);
        }
        std::vector<double> outside(30, 0.2 * 0.25);
        outside.push_back(0.8 + 0.2 * 0.25);
        outside.push_back(mixed_outside);
        expected.add(hypotheses(of.posterior), outside, 1);
        const Gain made = writing_gain(catalogue, of.posterior);
        CHECK(expected.whole == Approx(1));
        CHECK(made.bits == Approx(expected.bits).margin(1e-9));
        CHECK(made.best == Approx(expected.best).margin(1e-9));
        CHECK(made.settles == Approx(expected.settles).margin(1e-9));
    }
}

TEST_CASE("series that are the same in all a measurement can show are one group, however many")
{
    // A hundred series of two kinds: as much as of one each.
    Catalogue two = six(), many;
    two.series.resize(2);
    for (int i = 0; i < 100; ++i) {
        many.series.push_back(two.series[static_cast<std::size_t>(i % 2)]);
        many.series.back().name += std::to_string(i);
    }
    const auto bits = [](const Catalogue& catalogue) {
        const Answered of = answered(catalogue, {});
        const auto next = next_measurements(catalogue, {}, of.parts, of.posterior);
        return next_of(next, {IdentifiedPart::tubes, IdentifyingKind::width, {}, CapPair::first, Tube::outer, false}).bits;
    };
    CHECK(bits(two) > 0.8);
    CHECK(bits(many) == Approx(bits(two)).margin(1e-6));
}
