// Densities of one reading, per millimetre.
#pragma once

#include "identify/figure_kinds.hpp"

namespace shaftcut::identifying {

// Of a normal distribution at z from its mean; deviation σ above 0.
double normal(double z, double deviation);

// The share of a normal distribution that is less than z above its mean.
double normal_below(double z, double deviation);

// Of z = a normal draw less an exponential one of mean θ:  exp(z/θ + σ²/2θ²)·Φ(−z/σ − σ/θ)/θ, by its asymptotic series where that would overflow (four figures right).
double normal_less_exponential(double z, double deviation, double mean);

// σ = ½·√(u² + t²), of ± at 95 %.
double reading_deviation(double plus_minus, double tolerance);

// Of measured − stated where the reading is no slip:  (1−a−b)·φ(z; σ) + a·E(−g·z; σ, w) + b·E(g·z; σ, d).
double reading_density(double z, double plus_minus, const SizeLaw& law);

// Of a figure of which nothing is known: log-uniform, for trade sizes run in ratios. Up to a tenth beyond the interval as at its end, further out next to nothing.
double log_uniform(double y, const Interval& within);

// Of a span beside a measured cap.
double span_density(double span, double cap);

}  // namespace shaftcut::identifying
