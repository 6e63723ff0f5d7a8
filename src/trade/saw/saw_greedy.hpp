// First-fit decreasing: the first answer, and the one the solver must never be worse than.
#pragma once

#include "saw/saw_model.hpp"

namespace shaftcut::saw {

// Longest pieces first, each into the first open bar with room for it; a new bar is the first kind in `order` that has
// one left in `bars` and room. Nothing when a piece finds no bar. Works on whole groups of equal bars, so that a million
// pieces cost no more than their different lengths.
std::optional<Packing> first_fit_decreasing(const Model& model, const Counts& counts, const Counts& bars,
                                            const std::vector<std::size_t>& order);

// The same packing with each bar exchanged for the cheapest kind that holds its pieces and has one left.
Packing on_cheapest_bars(const Model& model, Packing packing, const Counts& bars);

// The cheapest of first-fit decreasing under each kind first, then the longest first, then the cheapest for its length
// first, each before and after on_cheapest_bars(); of fewer of them when time is up and one has worked. Nothing when all of
// them ran out of bars.
std::optional<Packing> greedy_packing(const Model& model, const Counts& counts, const Counts& bars, const SawWatch& watch);

}  // namespace shaftcut::saw
