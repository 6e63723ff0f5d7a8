#include "identify/size_gain.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <optional>

#include "identify/size_groups.hpp"

namespace shaftcut::identifying {
namespace {

using Cells = std::vector<double>;

double sum_of(const Cells& cells) { return std::accumulate(cells.begin(), cells.end(), 0.0); }

double dot(const double* a, const double* b, std::size_t count)
{
    double sum = 0;
    for (std::size_t i = 0; i < count; ++i) sum += a[i] * b[i];
    return sum;
}

double times_log(double value) { return value * std::log2(value); }

// Σ v·log₂ v over all cells where a share of the sizes is unknown and all else are slips, by that share: between nodes that lie closer where the share is small
// it is read off a straight line, within 0.0001 bit.
class OutsideSum {
public:
    explicit OutsideSum(const SizeGrid& grid) : grid_(grid) {}

    double at(double share)
    {
        const double place = std::sqrt(share) * (nodes - 1);
        const auto below = std::min(static_cast<std::size_t>(place), nodes - 2);
        const double low = share_of(below), part = (share - low) / (share_of(below + 1) - low);
        if (part <= 0) return node(below);
        return part >= 1 ? node(below + 1) : (1 - part) * node(below) + part * node(below + 1);
    }

private:
    static constexpr std::size_t nodes = 129;

    static double share_of(std::size_t index)
    {
        const double root = static_cast<double>(index) / (nodes - 1);
        return root * root;
    }

    double node(std::size_t index)
    {
        if (known_[index]) return *known_[index];
        double sum = 0;
        for (const double one : grid_.unknown) sum += times_log(share_of(index) * one + grid_.slips);
        known_[index] = sum;
        return sum;
    }

    const SizeGrid& grid_;
    std::array<std::optional<double>, nodes> known_;
};

// One prediction after the other is added; what all of them predict together stands before.
class Integral {
public:
    Integral(const SizeGrid& grid, const SpreadPrediction& all)
        : grid_(grid), mix_(density_of(all)), log_mix_(mix_.size()), best_(mix_.size(), 0), outside_(grid)
    {
        for (std::size_t i = 0; i < mix_.size(); ++i) log_mix_[i] = std::log2(mix_[i]);
        sum_log_mix_ = sum_of(log_mix_);
        unknown_log_mix_ = dot(grid.unknown.data(), log_mix_.data(), mix_.size());
        for (const double density : grid.table) {
            alone_.push_back(density + grid.slips);
            alone_sum_ += times_log(alone_.back()) - times_log(grid.slips);
        }
    }

    void add(const SpreadPrediction& prediction, double probability)
    {
        const Cells density = density_of(prediction);
        for (std::size_t i = 0; i < density.size(); ++i) {
            bits_ += probability * density[i] * (std::log2(density[i]) - log_mix_[i]);
            best_[i] = std::max(best_[i], probability * density[i]);
        }
    }

    void add(const SizeGroup& group)
    {
        double sum = outside_.at(group.unknown) - group.unknown * unknown_log_mix_ - grid_.slips * sum_log_mix_;
        if (group.cells.size() == 1 && group.unknown == 0 && group.cells[0].chance == 1) sum += alone(group);
        else
            for (std::size_t from = 0; from < group.cells.size();) {
                const Overlapping these = overlapping(group, from);
                sum += these.sum;
                from = these.next;
            }
        bits_ += group.probability * sum;
        note_outside(group);
    }

    Gain gain()
    {
        Gain made{bits_ * grid_.step, 0, 0};
        for (const auto& [greatest, of_unknown] : outside_best_)
            for (std::size_t i = 0; i < best_.size(); ++i) best_[i] = std::max(best_[i], greatest * grid_.slips + of_unknown * grid_.unknown[i]);
        for (std::size_t i = 0; i < best_.size(); ++i)
            if (best_[i] >= certain * mix_[i]) made.settles += mix_[i] * grid_.step;
        made.best = sum_of(best_) * grid_.step;
        return made;
    }

private:
    Cells density_of(const SpreadPrediction& prediction) const
    {
        Cells density = grid_.spread(prediction.weights);
        for (std::size_t i = 0; i < density.size(); ++i) density[i] += prediction.unknown * grid_.unknown[i] + grid_.slips;
        return density;
    }

    // One size and no other: what it adds to the sum of slips alone has no logarithm but of what all predict.
    double alone(const SizeGroup& group)
    {
        const std::size_t first = group.cells[0].first;
        for (std::size_t i = 0; i < alone_.size(); ++i) best_[first + i] = std::max(best_[first + i], group.greatest * alone_[i]);
        return alone_sum_ - dot(grid_.table.data(), log_mix_.data() + first, alone_.size());
    }

    // What sizes whose tables overlap add to the sum, and the number of the one after them.
    struct Overlapping {
        std::size_t next;
        double sum;
    };

    Overlapping overlapping(const SizeGroup& group, std::size_t from)
    {
        const std::size_t first = group.cells[from].first;
        Cells density;
        std::size_t next = from;
        for (; next < group.cells.size() && (next == from || group.cells[next].first < first + density.size()); ++next) {
            const CellChance& cell = group.cells[next];
            density.resize(cell.first - first + grid_.table.size(), 0);
            for (std::size_t i = 0; i < grid_.table.size(); ++i) density[cell.first - first + i] += cell.chance * grid_.table[i];
        }
        double sum = 0;
        for (std::size_t i = 0; i < density.size(); ++i) {
            const double outside = group.unknown * grid_.unknown[first + i] + grid_.slips, inside = density[i] + outside;
            sum += times_log(inside) - times_log(outside) - density[i] * log_mix_[first + i];
            best_[first + i] = std::max(best_[first + i], group.greatest * inside);
        }
        return {next, sum};
    }

    // Only those count that no other beats both in what is slips and in what is unknown.
    void note_outside(const SizeGroup& group)
    {
        const Outside made{group.greatest, group.greatest * group.unknown};
        const auto beats = [](const Outside& a, const Outside& b) { return a.greatest >= b.greatest && a.of_unknown >= b.of_unknown; };
        for (const Outside& one : outside_best_)
            if (beats(one, made)) return;
        std::erase_if(outside_best_, [&](const Outside& one) { return beats(made, one); });
        outside_best_.push_back(made);
    }

    struct Outside {
        double greatest, of_unknown;
    };

    const SizeGrid& grid_;
    Cells mix_, log_mix_, best_, alone_;
    OutsideSum outside_;
    double sum_log_mix_ = 0, unknown_log_mix_ = 0, alone_sum_ = 0, bits_ = 0;
    std::vector<Outside> outside_best_;
};

Interval sizes_of(const std::vector<SizePrediction>& predictions, SizeKind kind)
{
    Interval all{1, 0};
    for (const SizePrediction& prediction : predictions)
        for (const SizeChance& one : prediction.sizes) {
            const double size = gridded(one.size, kind);
            all = all.low > all.high ? Interval{size, size} : Interval{std::min(all.low, size), std::max(all.high, size)};
        }
    return all;
}

void add_weighted(SpreadPrediction& sum, const SpreadPrediction& one, double weight)
{
    for (std::size_t i = 0; i < sum.weights.size(); ++i) sum.weights[i] += weight * one.weights[i];
    sum.unknown += weight * one.unknown;
}

}  // namespace

Gain size_gain(const Posterior& posterior, const PartLikelihood& likelihood, IdentifiedPart part, const std::vector<SizePrediction>& predictions, SizeKind kind,
               const std::function<double(double)>& unknown)
{
    const SizeGrid grid = make_grid(kind, sizes_of(predictions, kind), unknown);
    SpreadPrediction none = spread_prediction(likelihood.of_series, likelihood.none_shared / likelihood.sum, predictions, grid, kind);
    none.unknown += 1 - likelihood.none_shared;
    SpreadPrediction mixed = spread_prediction(posterior.mixed_part[part], 1 / posterior.mixed, predictions, grid, kind);
    add_weighted(mixed, none, posterior.mixed_part_none[part] / posterior.mixed);
    SpreadPrediction all = spread_prediction(posterior.one, 1, predictions, grid, kind);
    add_weighted(all, none, posterior.none);
    add_weighted(all, mixed, posterior.mixed);
    Integral integral(grid, all);
    for (const SizeGroup& group : size_groups(posterior.one, predictions, grid, kind)) integral.add(group);
    integral.add(none, posterior.none);
    integral.add(mixed, posterior.mixed);
    return integral.gain();
}

}  // namespace shaftcut::identifying
