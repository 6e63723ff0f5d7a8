#include "identify/figure.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace shaftcut::identifying {
namespace {

// The density of the readings' differences: each against the mean of those before it.
double agreement(const std::vector<double>& lengths, const std::vector<double>& plus_minus)
{
    double density = 1, before = 0;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        const auto count = static_cast<double>(i);
        if (i > 0) density *= normal(lengths[i] - before, reading_deviation(plus_minus[i], plus_minus[0] / std::sqrt(count)));
        before = (before * count + lengths[i]) / (count + 1);
    }
    return density;
}

double mean_of(const std::vector<double>& values)
{
    double sum = 0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

}  // namespace

Figure::Figure(SizeKind kind, SizeReadings readings) : kind_(kind), readings_(std::move(readings))
{
    std::vector<double> lengths;
    for (const SizeReading& reading : readings_) lengths.push_back(without_spacers(reading).mm());
    mean_ = mean_of(lengths);
    for (unsigned chosen = 0; chosen < 1U << readings_.size(); ++chosen) add(chosen);
    double greatest = all_slips_;
    for (const Good& good : good_) greatest += good.weight * normal(0, reading_deviation(good.plus_minus, law_of(kind_).tolerance));
    all_slips_ /= greatest;
    for (Good& good : good_) good.weight /= greatest;
    unknown_ = over([&](double y) { return log_uniform(y, law_of(kind_).usual); });
}

double Figure::plus_minus(const SizeReading& reading) const
{
    if (reading.plus_minus) return std::max(reading.plus_minus->mm(), 0.001);
    return reading.spacers > Length() && kind_ == SizeKind::span ? plus_minus_over_spacers : law_of(kind_).plus_minus;
}

void Figure::add(unsigned chosen)
{
    const Interval& trade = law_of(kind_).trade;
    double weight = 1;
    std::vector<double> lengths, their_plus_minus;
    for (std::size_t i = 0; i < readings_.size(); ++i) {
        const bool good = (chosen >> i) & 1U;
        weight *= good ? 1 - slip : slip / (trade.high - trade.low);
        if (!good) continue;
        lengths.push_back(without_spacers(readings_[i]).mm());
        their_plus_minus.push_back(plus_minus(readings_[i]));
    }
    if (lengths.empty()) all_slips_ = weight;
    else good_.push_back({weight * agreement(lengths, their_plus_minus), mean_of(lengths), *std::min_element(their_plus_minus.begin(), their_plus_minus.end())});
}

double Figure::compute(SizeKind as, double size) const
{
    double sum = all_slips_;
    for (const Good& good : good_) sum += good.weight * reading_density(good.mean - size, good.plus_minus, law_of(as));
    return sum;
}

double Figure::like(SizeKind as, std::optional<Length> size) const
{
    if (!size) return unknown_;
    auto& known = known_[as == SizeKind::outer_width ? Tube::outer : Tube::inner];
    const auto [at, is_new] = known.try_emplace(size->um(), 0);
    if (is_new) at->second = compute(as, size->mm());
    return at->second;
}

}  // namespace shaftcut::identifying
