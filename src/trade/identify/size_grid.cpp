#include "identify/size_grid.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "identify/priors.hpp"

namespace shaftcut::identifying {
namespace {

constexpr double cells_a_deviation = 2.5, deviations_reached = 6;

// So that it adds up to the share of readings that are no slips. A density that is nothing everywhere here (a span beside a cap that no shaft has) is taken as even.
std::vector<double> whole(std::vector<double> density, double step)
{
    if (std::accumulate(density.begin(), density.end(), 0.0) <= 0) density.assign(density.size(), 1);
    const double sum = std::accumulate(density.begin(), density.end(), 0.0) * step;
    for (double& one : density) one *= (1 - slip) / sum;
    return density;
}

std::vector<double> table_of(const SizeLaw& law, double step, std::size_t reach)
{
    std::vector<double> table;
    for (std::size_t i = 0; i <= 2 * reach; ++i) table.push_back(reading_density((static_cast<double>(i) - static_cast<double>(reach)) * step, law.plus_minus, law));
    return whole(std::move(table), step);
}

}  // namespace

std::size_t SizeGrid::first_cell(double size) const { return static_cast<std::size_t>(std::lround((size - low) / step)) - reach; }

std::vector<double> SizeGrid::spread(const std::vector<double>& weights) const
{
    std::vector<double> sum(cells(), 0);
    for (std::size_t cell = 0; cell < weights.size(); ++cell) {
        if (weights[cell] == 0) continue;
        for (std::size_t i = 0; i < table.size(); ++i) sum[cell + i] += weights[cell] * table[i];
    }
    return sum;
}

SizeGrid make_grid(SizeKind kind, Interval sizes, const std::function<double(double)>& unknown)
{
    const SizeLaw& law = law_of(kind);
    const double deviation = reading_deviation(law.plus_minus, law.tolerance);
    SizeGrid grid;
    grid.step = deviation / cells_a_deviation;
    grid.reach = static_cast<std::size_t>(deviations_reached * (deviation + std::max(law.wear, law.dirt)) / grid.step) + 1;
    grid.table = table_of(law, grid.step, grid.reach);
    const double beyond = static_cast<double>(grid.reach) * grid.step;
    const bool any = sizes.low <= sizes.high;
    grid.low = any ? std::min(law.usual.low, sizes.low - beyond) : law.usual.low;
    const double high = any ? std::max(law.usual.high, sizes.high + beyond) : law.usual.high;
    const auto cells = static_cast<std::size_t>((high - grid.low) / grid.step) + 2;
    for (std::size_t i = 0; i < cells; ++i) grid.unknown.push_back(unknown(grid.low + static_cast<double>(i) * grid.step));
    grid.unknown = whole(std::move(grid.unknown), grid.step);
    grid.slips = slip / (static_cast<double>(cells) * grid.step);
    return grid;
}

}  // namespace shaftcut::identifying
