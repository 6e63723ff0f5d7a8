#include "saw/saw_bound_table.hpp"

#include <algorithm>

namespace shaftcut::saw {
namespace {

// One step of the knapsack: the better of leaving `shift` room for the gain and not.
void add_group(const double* __restrict from, double* __restrict to, std::size_t width, std::size_t shift, double gain)
{
    std::copy_n(from, shift, to);
    for (std::size_t at = shift; at < width; ++at) {
        const double with = from[at - shift] + gain;
        to[at] = with > from[at] ? with : from[at];
    }
}

}  // namespace

std::int64_t BoundTable::cells_needed(std::size_t items, std::int64_t capacity)
{
    return (capacity + 1) * static_cast<std::int64_t>(items + 1);
}

void BoundTable::fill(const std::vector<KnapsackItem>& items, std::int64_t capacity, std::int64_t most_cells)
{
    const auto rows = static_cast<std::int64_t>(items.size() + 1);
    step_ = capacity / std::max<std::int64_t>(1, most_cells / rows) + 1;
    width_ = static_cast<std::size_t>(capacity / step_) + 1;
    reserve((items.size() + 3) * width_);
    std::fill_n(row(items.size()), width_, 0.0);
    for (std::size_t j = items.size(); j-- > 0;) fill_row(items[j], j, row(items.size() + 1), row(items.size() + 2));
}

void BoundTable::reserve(std::size_t cells)
{
    if (cells <= reserved_) return;
    cells_ = std::make_unique_for_overwrite<double[]>(cells);
    reserved_ = cells;
}

// Row j is row j+1 with up to `limit` pieces of the item, taken in groups of 1, 2, 4, ... and a rest. The groups in between
// go to two spare rows in turn.
void BoundTable::fill_row(const KnapsackItem& item, std::size_t j, double* spare, double* other)
{
    const double* from = row(j + 1);
    const std::int64_t most = item.size == 0 ? item.limit : static_cast<std::int64_t>(width_) * step_ / item.size + 1;
    std::int64_t left = std::min(item.limit, most);
    for (std::int64_t group = 1; left > 0; group *= 2) {
        const std::int64_t take = std::min(group, left);
        left -= take;
        double* to = left > 0 ? spare : row(j);
        const std::int64_t shift = std::min<std::int64_t>(item.size / step_ * take, static_cast<std::int64_t>(width_));
        add_group(from, to, width_, static_cast<std::size_t>(shift), static_cast<double>(item.price) * static_cast<double>(take));
        from = to;
        std::swap(spare, other);
    }
}

}  // namespace shaftcut::saw
