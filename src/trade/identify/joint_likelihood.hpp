// How probable the figures of one end are where its joint is of a series, over all that is not known of it: standard or wide-angle, which of its crosses, which
// measured cross is the inner one, which measured pair of caps is which.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "identify/shaft_figures.hpp"

namespace shaftcut::identifying {

// Of a cross as a series states it: how the measured pairs stand to its own. alike: both are the pair that is stated. stated, exchanged: the first is its first pair, or
// its other. first_known, second_known: one is the stated pair, of the other nothing is known. unknown: the series states no such cross.
enum class Pairing : std::uint8_t { alike, stated, exchanged, first_known, second_known, unknown };

// One way in which the joint may be, its figures' likelihood with the prior of that way.
struct JointWay {
    double weight = 0;
    JointKind joint = JointKind::standard;
    CrossPlace first = CrossPlace::inner;                                   // of a wide-angle joint: which cross was measured first
    PerEach<CrossPlace, Pairing> pairing{};                                 // likewise; each at least `unknown`
    std::uint16_t cross = 0;                                                // of a standard joint: which of the series'
};

// What a series states of a pair of caps.
struct PairSizes {
    Length cap, span;
};

using JointWays = std::vector<JointWay>;

// Their weights add up to the likelihood.
JointWays joint_ways(const Series& series, const EndFigures& end);

// A pair of a cross at `place` of a wide-angle joint, as the series states it in that way.
std::optional<PairSizes> pair_at(const Series& series, const JointWay& way, CrossPlace place, CapPair pair);

// The same of the cross that was measured as number `index`, whatever the joint.
std::optional<PairSizes> pair_measured(const Series& series, const JointWay& way, std::size_t index, CapPair pair);

// The cross itself, of a wide-angle joint by its place; nothing where the series states none. Of two crosses the first is the inner one; one stands for both.
const Cross* cross_at(const Series& series, CrossPlace place);
const Cross* cross_measured(const Series& series, const JointWay& way, std::size_t index);

// The figures of a pair beside what is stated of it; nothing: where nothing is known of it, a span goes by its cap.
double pair_likelihood(const PairFigures& figures, const std::optional<PairSizes>& sizes);

// Of a look, where it is stated as `stated`; nothing: not stated. Both have two outcomes.
template <class Look>
double look_likelihood(const std::optional<Look>& seen, const std::optional<Look>& stated)
{
    if (!seen) return 1;
    if (!stated) return 0.5;
    return *seen == *stated ? look_right : 1 - look_right;
}

}  // namespace shaftcut::identifying
