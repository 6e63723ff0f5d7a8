#include "shaftcut/trade/saw_knapsack.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace shaftcut::saw {
namespace {

__extension__ typedef __int128 Wide;

constexpr std::int64_t quick_nodes = 20'000;
constexpr std::int64_t exact_nodes = 20'000'000;
constexpr std::int64_t most_cells = 6'000'000;
constexpr double most_value = 4503599627370496.0;  // 2^52: whole numbers below it are exact in a double

struct Item {
    std::size_t size_index;
    std::int64_t size;
    std::int64_t price;
    std::int64_t limit;
};

// What is worth taking, dearest for its length first.
std::vector<Item> items_by_density(const Model& model, const Counts& limits, const std::vector<std::int64_t>& prices)
{
    std::vector<Item> items;
    for (std::size_t i = 0; i < prices.size(); ++i)
        if (prices[i] > 0 && limits[i] > 0) items.push_back({i, model.sizes[i].size, prices[i], limits[i]});
    std::stable_sort(items.begin(), items.end(), [](const Item& a, const Item& b) {
        return static_cast<Wide>(a.price) * b.size > static_cast<Wide>(b.price) * a.size;
    });
    return items;
}

// bound(j, room): no choice among items j, j+1, ... in `room` is worth more. Rooms are counted in coarse steps, sizes rounded
// down to them, so it is safe for any step and exact for a step of 1. Doubles hold the whole numbers exactly and the
// compiler can work on several at once.
class BoundTable {
public:
    BoundTable(const std::vector<Item>& items, std::int64_t capacity)
        : step_((capacity + 1) * static_cast<std::int64_t>(items.size() + 1) / most_cells + 1),
          width_(static_cast<std::size_t>(capacity / step_) + 1),
          cells_((items.size() + 1) * width_, 0.0)
    {
        for (std::size_t j = items.size(); j-- > 0;) fill_row(items[j], j);
    }

    double at(std::size_t item, std::int64_t room) const
    {
        return cells_[item * width_ + static_cast<std::size_t>(room / step_)];
    }

private:
    // Row j is row j+1 with up to `limit` pieces of the item, taken in groups of 1, 2, 4, ... and a rest.
    void fill_row(const Item& item, std::size_t j)
    {
        double* row = &cells_[j * width_];
        std::copy_n(&cells_[(j + 1) * width_], width_, row);
        const auto coarse = static_cast<std::size_t>(item.size / step_);
        const auto room_for = static_cast<std::int64_t>(coarse == 0 ? width_ * static_cast<std::size_t>(step_) / static_cast<std::size_t>(item.size) + 1
                                                                    : (width_ - 1) / coarse);
        std::int64_t left = std::min(item.limit, room_for);
        for (std::int64_t group = 1; left > 0; group *= 2) {
            const std::int64_t take = std::min(group, left);
            left -= take;
            add_group(row, coarse * static_cast<std::size_t>(take), static_cast<double>(item.price * take));
        }
    }

    void add_group(double* row, std::size_t shift, double gain)
    {
        scratch_.assign(row, row + width_);
        const double* before = scratch_.data();
        for (std::size_t at = shift; at < width_; ++at) {
            const double with = before[at - shift] + gain;
            row[at] = with > before[at] ? with : before[at];
        }
    }

    std::int64_t step_;
    std::size_t width_;
    std::vector<double> cells_;
    std::vector<double> scratch_;
};

// Depth-first search for the best filling of one bar: at each level the next item to use and how many of it.
class Search {
public:
    Search(const std::vector<Item>& items, const BoundTable* table, std::int64_t nodes, const SawWatch& watch)
        : items_(items), table_(table), nodes_(nodes), watch_(watch), smallest_(items.size() + 1)
    {
        smallest_.back() = INT64_MAX;
        for (std::size_t j = items.size(); j-- > 0;) smallest_[j] = std::min(smallest_[j + 1], items[j].size);
    }

    Filling run(std::int64_t capacity)
    {
        const std::int64_t ceiling = table_ == nullptr ? density_bound(0, capacity) : static_cast<std::int64_t>(table_->at(0, capacity));
        descend(0, capacity, 0);
        Filling filling{best_, nodes_ < 0 ? std::max(ceiling, best_) : best_, best_parts_};
        std::sort(filling.parts.begin(), filling.parts.end(), [](const Part& a, const Part& b) { return a.size < b.size; });
        return filling;
    }

private:
    std::int64_t density_bound(std::size_t j, std::int64_t room) const
    {
        if (j >= items_.size()) return 0;
        return static_cast<std::int64_t>(static_cast<Wide>(room) * items_[j].price / items_[j].size);
    }

    bool hopeless(std::size_t j, std::int64_t room, std::int64_t value) const
    {
        if (static_cast<Wide>(best_ - value) * items_[j].size >= static_cast<Wide>(room) * items_[j].price) return true;
        return table_ != nullptr && value + static_cast<std::int64_t>(table_->at(j, room)) <= best_;
    }

    void descend(std::size_t j, std::int64_t room, std::int64_t value)
    {
        if (value > best_) {
            best_ = value;
            best_parts_ = taken_;
        }
        for (; j < items_.size() && smallest_[j] <= room && !hopeless(j, room, value); ++j) {
            const Item& item = items_[j];
            if (item.size > room) continue;
            taken_.push_back({item.size_index, 0});
            for (std::int64_t count = std::min(item.limit, room / item.size); count > 0 && spend_node(); --count) {
                taken_.back().count = count;
                descend(j + 1, room - count * item.size, value + count * item.price);
            }
            taken_.pop_back();
            if (nodes_ < 0) return;
        }
    }

    bool spend_node()
    {
        if (--nodes_ % 65'536 == 0 && watch_.seconds_left() <= 0) nodes_ = -1;
        return nodes_ >= 0;
    }

    const std::vector<Item>& items_;
    const BoundTable* table_;
    std::int64_t nodes_;
    const SawWatch& watch_;
    std::vector<std::int64_t> smallest_;
    std::int64_t best_ = 0;
    std::vector<Part> taken_;
    std::vector<Part> best_parts_;
};

// The greatest value any filling could have: the room at the best price for its length.
double greatest_value(const Model& model, const std::vector<double>& prices)
{
    std::int64_t capacity = 0;
    for (const BarKind& bar : model.bars) capacity = std::max(capacity, bar.capacity);
    double density = 0;
    for (std::size_t i = 0; i < prices.size(); ++i) density = std::max(density, prices[i] / static_cast<double>(model.sizes[i].size));
    return density * static_cast<double>(capacity);
}

}  // namespace

std::vector<Filling> best_fillings(const Model& model, const Counts& bars, const Counts& limits,
                                   const std::vector<std::int64_t>& prices, Effort effort, const SawWatch& watch)
{
    std::vector<Filling> fillings(model.bars.size());
    const std::vector<Item> items = items_by_density(model, limits, prices);
    std::int64_t capacity = 0;
    for (std::size_t k = 0; k < bars.size(); ++k)
        if (bars[k] > 0) capacity = std::max(capacity, model.bars[k].capacity);
    std::optional<BoundTable> table;
    if (effort == Effort::exact) table.emplace(items, capacity);
    const std::int64_t nodes = effort == Effort::exact ? exact_nodes : quick_nodes;
    for (std::size_t k = 0; k < bars.size(); ++k)
        if (bars[k] > 0) fillings[k] = Search(items, table ? &*table : nullptr, nodes, watch).run(model.bars[k].capacity);
    return fillings;
}

WholePrices whole_prices(const Model& model, const std::vector<double>& prices)
{
    const double greatest = greatest_value(model, prices);
    WholePrices whole;
    if (greatest > 0) whole.scale = std::exp2(std::floor(std::log2(most_value / 16 / greatest)));
    for (const double price : prices) whole.prices.push_back(price > 0 ? static_cast<std::int64_t>(std::floor(price * whole.scale)) : 0);
    return whole;
}

bool values_fit(const Model& model, const std::vector<std::int64_t>& prices)
{
    std::vector<double> exact;
    for (const std::int64_t price : prices) exact.push_back(static_cast<double>(price));
    return greatest_value(model, exact) < most_value / 2;
}

}  // namespace shaftcut::saw
