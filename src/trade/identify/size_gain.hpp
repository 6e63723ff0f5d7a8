// What the reading of a size is expected to bring.
#pragma once

#include <vector>

#include "identify/gain.hpp"
#include "identify/posterior.hpp"
#include "identify/size_grid.hpp"
#include "identify/size_prediction.hpp"

namespace shaftcut::identifying {

//  Σ_h P(h) ∫ p(y | h)·log₂ [p(y | h) / p(y)] dy     h: one of each series, mixed, none
//
// Series whose sizes fall into the same cells, with the same chances, are one group; the cost goes with the groups, not with the series. Mixed and none are
// spread over the series by what that part of them is (`part`). Checked in tests/trade/identify/gain_test.cpp against the integral written out.
Gain size_gain(const Posterior& posterior, const PartLikelihood& likelihood, IdentifiedPart part, const std::vector<SizePrediction>& predictions, SizeKind kind,
               const std::function<double(double)>& unknown);

}  // namespace shaftcut::identifying
