// The second stage: among plans of equal cost the longest reusable leftover, then the fewest different patterns.
#pragma once

#include "saw/saw_packer.hpp"

namespace shaftcut::saw {

// Usable length behind the last cut: what the bar holds between its trims, less pieces and one kerf behind each. 0 when
// nothing is left or the last cut eats it.
Length leftover_of(const SawTask& task, const Model& model, const Pattern& pattern);

// A packing on the same bars, at the same cost, whose longest leftover is at least as long (when it is reusable) and that has
// no more patterns. Heuristic: no claim that a longer leftover or fewer patterns are impossible.
// `known`: patterns to start from.
Packing finished(const SawTask& task, const Model& model, Packing packing, const ColumnPool& known, const SawWatch& watch);

}  // namespace shaftcut::saw
