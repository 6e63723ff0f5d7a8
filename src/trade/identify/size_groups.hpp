// Series that predict the same of a size, together; and what mixed and none predict.
#pragma once

#include <vector>

#include "identify/posterior.hpp"
#include "identify/size_grid.hpp"
#include "identify/size_prediction.hpp"

namespace shaftcut::identifying {

struct CellChance {
    std::size_t first = 0;  // of the size's table
    double chance = 0;
    bool operator==(const CellChance&) const = default;
};

struct SizeGroup {
    std::vector<CellChance> cells{};  // ascending
    double unknown = 0;
    double probability = 0;  // of all its series together
    double greatest = 0;     // of the most probable of them
};

// What a hypothesis predicts that is spread over many series.
struct SpreadPrediction {
    std::vector<double> weights{};  // by first cell
    double unknown = 0;
};

// In millimetres, as the grid has it: no size that a catalogue states makes it wider than the trade's sizes.
double gridded(Length size, SizeKind kind);

std::vector<SizeGroup> size_groups(const std::vector<double>& probabilities, const std::vector<SizePrediction>& predictions, const SizeGrid& grid, SizeKind kind);

// Σ of factor·weight·prediction.
SpreadPrediction spread_prediction(const std::vector<double>& weights, double factor, const std::vector<SizePrediction>& predictions, const SizeGrid& grid, SizeKind kind);

}  // namespace shaftcut::identifying
