// What a look is expected to bring, or one more reading of a figure: outcomes that can be counted.
#pragma once

#include <vector>

#include "identify/gain.hpp"
#include "identify/posterior.hpp"

namespace shaftcut::identifying {

// How probable each outcome is; they add up to 1.
using Outcomes = std::vector<double>;

// Of each series, of a part of no series here (`of_none`), of a mixed shaft.
struct LookPrediction {
    std::vector<Outcomes> of_series;
    Outcomes of_none, of_mixed;
};

// Completes what each series predicts: a part of no series shares with one that is, or is as `unknown`; a mixed shaft's is of what that part of it is.
LookPrediction look_prediction(const Posterior& posterior, const PartLikelihood& likelihood, IdentifiedPart part, std::vector<Outcomes> of_series, const Outcomes& unknown);

Gain look_gain(const Posterior& posterior, const LookPrediction& prediction);

// A joint's kind; how one of its crosses is held or greased; the tubes' shape; which of them is which.
Gain joint_look_gain(const Catalogue& catalogue, const Parts& parts, const Posterior& posterior, const IdentifyingFigure& figure);
Gain tubes_look_gain(const Catalogue& catalogue, const Parts& parts, const Posterior& posterior, const IdentifyingFigure& figure);

// One more reading of a figure that was measured, scored as the same again or another: less than it brings.
Gain again_gain(const Catalogue& catalogue, const Parts& parts, const Posterior& posterior, const FigureMeasured& measured);

}  // namespace shaftcut::identifying
