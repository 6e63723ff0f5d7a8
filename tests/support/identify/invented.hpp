// Catalogues and shafts to identify, invented: true shafts that wear, get dirty, are repaired and misread by laws of their own, none of them the program's.
//
// A true shaft is drawn first, with all its sizes; then it is measured, with the errors of measuring; only that is shown to the program.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/identify/identify.hpp"
#include "support/machines.hpp"

namespace shaftcut::test {

// Crosses of trade sizes in seven of ten series (common practice; the other sizes are invented), tubes on chains where what is an inner tube in one series is an outer tube
// in another. Some series leave figures out.
Catalogue invented_catalogue(support::Dice& dice, int series, const std::string& name);

// How shafts come in. worn: mean wear, dirty: mean dirt, in terms of the program's; errors: true ± of readings in terms of what is stated.
struct World {
    double outsiders = 0.06, mixed = 0.08, slips = 0.015, wrong_place = 0.05, wrong_writing = 0.2;
    double worn = 1, errors = 1;
};

// Twice the outsiders, mixed shafts, slips and wrong words; worn 1.8 times as much; read 1.4 times as badly as stated.
inline constexpr World harsh_world{0.12, 0.16, 0.03, 0.1, 0.4, 1.8, 1.4};

struct TrueCross {
    PerEach<CapPair, double> cap{}, span{};  // as they are on the shaft, mm
};

struct TrueEnd {
    JointKind joint = JointKind::standard;
    PerEach<CrossPlace, TrueCross> crosses{};  // of a standard joint both are its only one
    double spacing = 0;
};

// As it lies on the bench.
struct TrueShaft {
    IdentifyVerdict truth = IdentifyVerdict::one;  // one, mixed or none
    std::string series;                            // of one
    PerEach<End, TrueEnd> ends{};
    Shape shape = Shape::lemon;
    PerEach<Tube, double> width{}, wall{};
    double closed = 0;
    std::optional<std::string> writing{};
};

TrueShaft drawn_shaft(support::Dice& dice, const Catalogue& inside, const Catalogue& outside, const World& world);

// What somebody wrote down who measured some of it: some figures twice, some places not stated, some stated wrongly.
Measures drawn_measures(support::Dice& dice, const TrueShaft& shaft, const World& world);

// What was asked for is measured as well, with its errors.
void measure(Measures& measures, support::Dice& dice, const TrueShaft& shaft, const World& world, const IdentifyingFigure& asked);

bool chance(support::Dice& dice, double probability);

}  // namespace shaftcut::test
