// Densities of readings against integrals written out.
#include "identify/densities.hpp"

#include <cmath>
#include <numbers>

#include "identify/figure.hpp"
#include "identify/tubes_likelihood.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::identifying;

namespace {

template <class Of>
double integral(double low, double high, double step, const Of& of)
{
    double sum = 0;
    for (double at = low + step / 2; at < high; at += step) sum += of(at) * step;
    return sum;
}

// E(z; σ, θ) = ∫ over w from 0 of φ(z + w; σ)·exp(−w/θ)/θ.
double convolution(double z, double deviation, double mean)
{
    return integral(0, 40 * mean, mean / 2000, [&](double w) {
        const double away = (z + w) / deviation;
        return std::exp(-away * away / 2) / (deviation * std::sqrt(2 * std::numbers::pi)) * std::exp(-w / mean) / mean;
    });
}

constexpr std::array kinds{SizeKind::cap, SizeKind::cap_in_bore, SizeKind::span, SizeKind::spacing, SizeKind::inner_width, SizeKind::outer_width, SizeKind::wall};

SizeReading reading(double mm, double plus_minus) { return {Length::from_mm(mm), Length::from_mm(plus_minus), {}, {}}; }

}  // namespace

TEST_CASE("a normal draw less an exponential one has the density of their convolution")
{
    for (const double deviation : {0.05, 0.2, 1.0})
        for (const double mean : {0.06, 0.2, 0.4})
            for (double z = -4 * deviation; z <= 3 * deviation; z += deviation / 2) {
                INFO(z << " " << deviation << " " << mean);
                CHECK(normal_less_exponential(z, deviation, mean) == Approx(convolution(z, deviation, mean)).epsilon(2e-3));
            }
}

TEST_CASE("where the exponential would overflow the density goes on by its series")
{
    // q = z/σ + σ/θ a little below and a little above the 8 at which it changes.
    const double deviation = 0.4, mean = 0.1;
    CHECK(normal_less_exponential(4 * deviation + 1e-6, deviation, mean) == Approx(normal_less_exponential(4 * deviation - 1e-6, deviation, mean)).epsilon(1e-4));
    for (const double z : {1e3, 1e6, 1e9, -1e9}) {
        CHECK(std::isfinite(normal_less_exponential(z, 0.1, 0.1)));
        CHECK(normal_less_exponential(z, 0.1, 0.1) >= 0);
    }
    CHECK(std::isfinite(normal_less_exponential(0, 1e6, 0.06)));
}

TEST_CASE("readings that are no slips are somewhere, whatever the kind")
{
    for (const SizeKind kind : kinds)
        for (const double factor : {0.5, 1.0, 3.0}) {
            const SizeLaw& law = law_of(kind);
            CHECK(integral(-20, 20, 0.002, [&](double z) { return reading_density(z, factor * law.plus_minus, law); }) == Approx(1).epsilon(1e-3));
        }
}

TEST_CASE("wear makes a cap, a tube and a span less, and a bore and a spacing more")
{
    for (const SizeKind kind : kinds) {
        const SizeLaw& law = law_of(kind);
        const double mean = integral(-20, 20, 0.002, [&](double z) { return z * reading_density(z, law.plus_minus, law); });
        CHECK(mean == Approx(law.wear_sign * (law.worn * law.wear - law.dirty * law.dirt)).margin(1e-4));
        CHECK((law.wear_sign > 0) == (kind == SizeKind::cap_in_bore || kind == SizeKind::spacing));
    }
}

TEST_CASE("one slip costs the right size a factor of some ten thousand and not more")
{
    const Figure right(SizeKind::cap, {reading(27, 0.1)}), slipped(SizeKind::cap, {reading(37, 0.1)});
    const double factor = slipped.like(Length::millimetres(27)) / slipped.like(Length::millimetres(37));
    CHECK(factor > 1e-5);
    CHECK(factor < 1e-3);
    CHECK(right.slipped(SizeKind::cap, Length::millimetres(27)) < 1e-3);
    CHECK(slipped.slipped(SizeKind::cap, Length::millimetres(27)) == Approx(1));
}

TEST_CASE("of three readings of which one is a slip the other two count")
{
    const Figure two(SizeKind::span, {reading(70, 0.3), reading(70.1, 0.3)});
    const Figure three(SizeKind::span, {reading(70, 0.3), reading(17, 0.3), reading(70.1, 0.3)});
    for (const double other : {69.0, 71.0, 74.6}) {
        const double by_two = two.like(Length::from_mm(other)) / two.like(Length::millimetres(70));
        CHECK(three.like(Length::from_mm(other)) / three.like(Length::millimetres(70)) == Approx(by_two).epsilon(0.02));
    }
}

TEST_CASE("readings that agree are as good as their best, not better by their number")
{
    const Figure once(SizeKind::inner_width, {reading(43, 0.4)}), thrice(SizeKind::inner_width, {reading(43, 0.4), reading(43, 0.4), reading(43, 0.4)});
    const auto factor = [](const Figure& figure) { return figure.like(Length::from_mm(43.6)) / figure.like(Length::millimetres(43)); };
    CHECK(factor(thrice) == Approx(factor(once)).epsilon(0.02));
}

TEST_CASE("a span over spacers is read less well, and without them")
{
    SizeReading over{Length::millimetres(82), {}, Length::millimetres(12), {}};
    const Figure spaced(SizeKind::span, {over}), plain(SizeKind::span, {{Length::millimetres(70), {}, {}, {}}});
    CHECK(spaced.mean() == 70);
    CHECK(spaced.first_plus_minus() == 0.4);
    CHECK(plain.first_plus_minus() == 0.3);
}

TEST_CASE("a closed length is as sold or cut, and counts only where it can be compared")
{
    Series series;
    series.shape = Shape::lemon;
    series.wide_angle = WideAngleJoint{Length::millimetres(64), {}};
    series.closed_lengths = {Length::millimetres(860)};
    const auto like = [&](double closed, std::optional<Reference> reference, std::optional<JointKind> joint) {
        Measures measures;
        measures.closed = MeasuredClosed{{Length::from_mm(closed), {}, {}, {}}, reference};
        for (const End end : both_ends) measures.ends[end].joint = joint;
        return closed_likelihood(series, figures_of(measures));
    };
    const double unknown = 1.0 / 1700;
    CHECK(integral(150, 1200, 0.5, [&](double closed) { return like(closed, {}, {}); }) == Approx(1 - 0.015 + 0.015 * 1050 / 2800).epsilon(1e-3));
    CHECK(like(860, {}, {}) > 10 * like(700, {}, {}));
    CHECK(like(700, {}, {}) > 10 * like(1000, {}, {}));
    // Read at the inner crosses of two wide-angle joints: 2 × 64 less than at the outer ones, from which lemon tubes are listed.
    CHECK(like(732, Reference::inner_cross, JointKind::wide_angle) == Approx(like(860, {}, JointKind::wide_angle)));
    CHECK(like(860, Reference::inner_cross, JointKind::standard) == Approx(like(860, {}, JointKind::standard)));
    CHECK(like(860, Reference::inner_cross, {}) == Approx(unknown));
    series.closed_lengths.clear();
    CHECK(like(860, {}, {}) == Approx(unknown));
}
