#include "identify/densities.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "identify/priors.hpp"

namespace shaftcut::identifying {
namespace {

constexpr double next_to_nothing = 1e-4;  // a millimetre

}  // namespace

double normal(double z, double deviation)
{
    const double away = z / deviation;
    return std::exp(-0.5 * away * away) / deviation * (std::numbers::inv_sqrtpi / std::numbers::sqrt2);
}

double normal_below(double z, double deviation) { return 0.5 * std::erfc(-z / deviation / std::numbers::sqrt2); }

double normal_less_exponential(double z, double deviation, double mean)
{
    const double ratio = deviation / mean, q = z / deviation + ratio;
    if (q > 8) {
        const double i = 1 / (q * q);
        return normal(z / deviation, 1) / (mean * q) * (1 - i + 3 * i * i);
    }
    return std::exp(ratio * q - ratio * ratio / 2) * normal_below(-q, 1) / mean;
}

double reading_deviation(double plus_minus, double tolerance) { return 0.5 * std::hypot(plus_minus, tolerance); }

double reading_density(double z, double plus_minus, const SizeLaw& law)
{
    const double deviation = reading_deviation(plus_minus, law.tolerance);
    return (1 - law.worn - law.dirty) * normal(z, deviation) + law.worn * normal_less_exponential(-law.wear_sign * z, deviation, law.wear) +
           law.dirty * normal_less_exponential(law.wear_sign * z, deviation, law.dirt);
}

double log_uniform(double y, const Interval& within)
{
    if (y < 0.9 * within.low || y > 1.1 * within.high) return next_to_nothing;
    return 1 / (std::clamp(y, within.low, within.high) * std::log(within.high / within.low));
}

double span_density(double span, double cap) { return normal(span - span_to_cap * cap, span_to_cap_deviation * cap); }

}  // namespace shaftcut::identifying
