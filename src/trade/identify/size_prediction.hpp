// What a figure would be by a series, over all that is left open, weighted by what was measured.
#pragma once

#include <vector>

#include "identify/parts.hpp"

namespace shaftcut::identifying {

struct SizeChance {
    Length size;
    double chance = 0;
};

// With `unknown`, that the series does not state it, the chances add up to 1.
struct SizePrediction {
    std::vector<SizeChance> sizes{};
    double unknown = 0;
};

// Of the series number `series`.
SizePrediction predicted_size(const Parts& parts, const Series& of, std::size_t series, const IdentifyingFigure& figure);

// What the series states in that way of a figure of the joint.
std::optional<Length> stated_size(const Series& series, const JointWay& way, const IdentifyingFigure& figure, bool joint_known);

// What the series states in that way where the figure was measured.
std::optional<Length> stated_beside(const Series& series, const JointWay& way, const FigureMeasured& measured);

struct TubeSize {
    Tube tube = Tube::inner;  // that it is in that way
    SizeKind as = SizeKind::inner_width;
    std::optional<Length> size;
};
TubeSize stated_beside(const Series& series, const TubesWay& way, const FigureMeasured& measured);

}  // namespace shaftcut::identifying
