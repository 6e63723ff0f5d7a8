// What was measured of a shaft, part by part, made ready to be compared.
#pragma once

#include <optional>
#include <vector>

#include "identify/figure.hpp"

namespace shaftcut::identifying {

struct PairFigures {
    std::optional<Figure> cap{}, span{};
};

struct CrossFigures {
    std::optional<CrossPlace> at{};  // by itself, or because the other cross's place is stated
    PerEach<CapPair, PairFigures> pairs{};
    std::optional<Circlip> circlip{};
    std::optional<Nipple> nipple{};
};

struct EndFigures {
    std::optional<JointKind> joint{};  // as stated, or as its crosses and spacing show
    bool joint_stated = false;
    std::vector<CrossFigures> crosses{};
    std::optional<Figure> spacing{};
};

struct TubeFigures {
    std::optional<Tube> tube{};  // by itself, or because the other one is stated
    std::optional<Figure> width{}, wall{};
};

struct ShaftFigures {
    PerEach<End, EndFigures> ends{};
    std::optional<Shape> shape{};
    std::vector<TubeFigures> tubes{};
    std::optional<MeasuredClosed> closed{};
};

ShaftFigures figures_of(const Measures& measures);

constexpr CrossPlace other(CrossPlace place) { return place == CrossPlace::inner ? CrossPlace::outer : CrossPlace::inner; }
inline constexpr std::array both_pairs{CapPair::first, CapPair::second};
inline constexpr std::array both_places{CrossPlace::inner, CrossPlace::outer};

constexpr IdentifiedPart part_of(End end) { return end == End::tractor ? IdentifiedPart::tractor : IdentifiedPart::implement; }

// A figure that was measured: what it is, and its readings.
struct FigureMeasured {
    IdentifyingFigure what;
    const Figure* figure;
    std::size_t index = 0;  // of its cross, or its tube
};

// Those of an end, and of the tubes, in the order of the file. They point into what is given.
std::vector<FigureMeasured> all_figures(const EndFigures& end, IdentifiedPart part);
std::vector<FigureMeasured> all_figures(const std::vector<TubeFigures>& tubes);

}  // namespace shaftcut::identifying
