#include "identify/size_groups.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <unordered_map>

namespace shaftcut::identifying {
namespace {

constexpr double too_little = 1e-12;  // of a hypothesis that no measurement brings back
constexpr double same_chance = 1e6;   // chances that differ by less than one part in so many are the same

double rounded(double chance) { return std::round(chance * same_chance) / same_chance; }

// By cells, ascending, those of one cell together.
std::vector<CellChance> cells_of(const SizePrediction& prediction, const SizeGrid& grid, SizeKind kind)
{
    std::vector<CellChance> cells;
    for (const SizeChance& one : prediction.sizes)
        if (one.chance > 1e-9) cells.push_back({grid.first_cell(gridded(one.size, kind)), one.chance});
    std::sort(cells.begin(), cells.end(), [](const CellChance& a, const CellChance& b) { return a.first < b.first; });
    std::size_t kept = 0;
    for (std::size_t i = 1; i < cells.size(); ++i)
        if (cells[i].first == cells[kept].first) cells[kept].chance += cells[i].chance;
        else cells[++kept] = cells[i];
    if (!cells.empty()) cells.resize(kept + 1);
    for (CellChance& cell : cells) cell.chance = rounded(cell.chance);
    return cells;
}

std::uint64_t mark_of(const SizeGroup& group)
{
    std::uint64_t mark = std::bit_cast<std::uint64_t>(group.unknown);
    const auto add = [&](std::uint64_t value) { mark = (mark ^ (value + 0x9e3779b97f4a7c15U + (mark << 6U) + (mark >> 2U))) * 0xff51afd7ed558ccdU; };
    for (const CellChance& cell : group.cells) {
        add(cell.first);
        add(std::bit_cast<std::uint64_t>(cell.chance));
    }
    return mark;
}

bool predict_the_same(const SizeGroup& a, const SizeGroup& b) { return a.unknown == b.unknown && a.cells == b.cells; }

}  // namespace

double gridded(Length size, SizeKind kind)
{
    const Interval& trade = law_of(kind).trade;
    return std::clamp(size.mm(), trade.low, trade.high);
}

std::vector<SizeGroup> size_groups(const std::vector<double>& probabilities, const std::vector<SizePrediction>& predictions, const SizeGrid& grid, SizeKind kind)
{
    std::vector<SizeGroup> groups;
    std::unordered_multimap<std::uint64_t, std::size_t> known;
    for (std::size_t k = 0; k < predictions.size(); ++k) {
        const double probability = probabilities[k];
        if (probability <= too_little) continue;
        SizeGroup group{cells_of(predictions[k], grid, kind), rounded(predictions[k].unknown), probability, probability};
        const std::uint64_t mark = mark_of(group);
        const auto [begin, end] = known.equal_range(mark);
        const auto same = std::find_if(begin, end, [&](const auto& one) { return predict_the_same(groups[one.second], group); });
        if (same == end) {
            known.emplace(mark, groups.size());
            groups.push_back(std::move(group));
        } else {
            SizeGroup& joined = groups[same->second];
            joined.probability += probability;
            joined.greatest = std::max(joined.greatest, probability);
        }
    }
    return groups;
}

SpreadPrediction spread_prediction(const std::vector<double>& weights, double factor, const std::vector<SizePrediction>& predictions, const SizeGrid& grid, SizeKind kind)
{
    SpreadPrediction made{std::vector<double>(grid.cells() - grid.table.size() + 1, 0), 0};
    for (std::size_t k = 0; k < weights.size(); ++k) {
        const double weight = weights[k] * factor;
        if (weight <= too_little) continue;
        made.unknown += weight * predictions[k].unknown;
        for (const SizeChance& one : predictions[k].sizes) made.weights[grid.first_cell(gridded(one.size, kind))] += weight * one.chance;
    }
    return made;
}

}  // namespace shaftcut::identifying
