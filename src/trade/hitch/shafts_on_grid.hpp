// A shaft at every position of the grid that a search of its range begins with: several quantities are searched from it. Private to the layer
// and to the reader of a fit.
#pragma once

#include <optional>
#include <vector>

#include "shaftcut/trade/hitch/hitch.hpp"

namespace shaftcut {

// The positions of the grid of extremes.hpp; and the same search by who has the function's values there already.
std::vector<Coordinates> grid_of(const Box& box);
Greatest greatest(const BoxFunction& function, const Box& box, const std::vector<std::optional<double>>& on_grid);

// What measure_of() gives, of a shaft in place.
double measure(Quantity quantity, const BentShaft& bent);

// As joints_in_place(), of a shaft in place.
JointPair joints_of(const BentShaft& bent, const HitchShaft& shaft, double out_of_phase);

struct ShaftsOnGrid {
    Box box;
    std::vector<std::optional<BentShaft>> shafts;  // as grid_of(box)

    ShaftsOnGrid(const Machine& machine, const HitchShaft& shaft, const Box& whole);

    // What `of` gives for each.
    template <class Of>
    std::vector<std::optional<double>> each(const Of& of) const
    {
        std::vector<std::optional<double>> values;
        values.reserve(shafts.size());
        for (const auto& bent : shafts) values.push_back(of(bent));
        return values;
    }
};

// greatest() of the quantity's measure over the grid's box.
Greatest greatest_over(Quantity quantity, const Machine& machine, const HitchShaft& shaft, const ShaftsOnGrid& shafts);

// The problems of operating_lengths(), without its lengths.
HitchProblems operating_problems(const Machine& machine, const HitchShaft& shaft);

}  // namespace shaftcut
