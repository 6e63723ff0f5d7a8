#include "saw/saw_knapsack.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace shaftcut::saw {
namespace {

__extension__ typedef __int128 Wide;

constexpr std::int64_t least_quick_nodes = 5'000;
constexpr std::int64_t cells_for_a_node = 200;  // measured: looking longer before filling the table does not pay
constexpr std::int64_t exact_nodes = 20'000'000;
constexpr std::int64_t most_cells = 6'000'000;  // of the table: 48 MB
constexpr double most_value = 4503599627370496.0;  // 2^52: whole numbers below it are exact in a double

// What is worth taking, dearest for its length first.
std::vector<KnapsackItem> items_by_density(const Model& model, const Counts& limits, const std::vector<std::int64_t>& prices, const Apart& apart)
{
    const auto one_in_a_bar = [&](std::size_t i) { return i < apart.size() && std::find(apart[i].begin(), apart[i].end(), i) != apart[i].end(); };
    std::vector<KnapsackItem> items;
    for (std::size_t i = 0; i < prices.size(); ++i)
        if (prices[i] > 0 && limits[i] > 0) items.push_back({i, model.sizes[i].size, prices[i], one_in_a_bar(i) ? 1 : limits[i]});
    std::stable_sort(items.begin(), items.end(), [](const KnapsackItem& a, const KnapsackItem& b) {
        return static_cast<Wide>(a.price) * b.size > static_cast<Wide>(b.price) * a.size;
    });
    return items;
}

}  // namespace

// Depth-first search for the best filling of one bar: at each level the next item to use and how many of it. The bounds know
// nothing of what is kept apart: they are only weaker for it.
class Knapsack::Search {
public:
    Search(const std::vector<KnapsackItem>& items, const BoundTable* table, std::int64_t nodes, const Apart& apart, const SawWatch& watch)
        : items_(items), table_(table), nodes_(nodes), apart_(apart), watch_(watch), barred_(apart.size(), 0), smallest_(items.size() + 1)
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
            const KnapsackItem& item = items_[j];
            if (item.size > room || is_barred(item.index)) continue;
            bar_others(item.index, 1);
            taken_.push_back({item.index, 0});
            for (std::int64_t count = std::min(item.limit, room / item.size); count > 0 && spend_node(); --count) {
                taken_.back().count = count;
                descend(j + 1, room - count * item.size, value + count * item.price);
            }
            taken_.pop_back();
            bar_others(item.index, -1);
            if (nodes_ < 0) return;
        }
    }

    bool is_barred(std::size_t size) const { return size < barred_.size() && barred_[size] > 0; }

    void bar_others(std::size_t size, int more)
    {
        if (size >= apart_.size()) return;
        for (const std::size_t other : apart_[size]) barred_[other] += more;
    }

    bool spend_node()
    {
        if (--nodes_ % 65'536 == 0 && watch_.seconds_left() <= 0) nodes_ = -1;
        return nodes_ >= 0;
    }

    const std::vector<KnapsackItem>& items_;
    const BoundTable* table_;
    std::int64_t nodes_;
    const Apart& apart_;
    const SawWatch& watch_;
    std::vector<int> barred_;  // of each size, how many taken ones keep apart from it
    std::vector<std::int64_t> smallest_;
    std::int64_t best_ = 0;
    std::vector<Part> taken_;
    std::vector<Part> best_parts_;
};

namespace {

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

Knapsack::Knapsack(const Model& model, const SawWatch& watch) : model_(model), watch_(watch), table_(std::make_unique<BoundTable>()) {}

Knapsack::~Knapsack() = default;

std::vector<Filling> Knapsack::best_fillings(const Counts& bars, const Counts& limits, const std::vector<std::int64_t>& prices, Effort effort)
{
    std::vector<Filling> fillings(model_.bars.size());
    const std::vector<KnapsackItem> items = items_by_density(model_, limits, prices, apart_);
    std::int64_t capacity = 0;
    for (std::size_t k = 0; k < bars.size(); ++k)
        if (bars[k] > 0) capacity = std::max(capacity, model_.bars[k].capacity);
    if (effort == Effort::exact) table_->fill(items, capacity, most_cells);
    const std::int64_t cells = std::min(BoundTable::cells_needed(items.size(), capacity), most_cells);
    std::int64_t nodes = effort == Effort::exact ? exact_nodes : least_quick_nodes + cells / cells_for_a_node;
    for (std::size_t k = 0; k < bars.size(); ++k) {
        if (bars[k] <= 0) continue;
        if (watch_.seconds_left() <= 0) nodes = 0;
        fillings[k] = Search(items, effort == Effort::exact ? table_.get() : nullptr, nodes, apart_, watch_).run(model_.bars[k].capacity);
    }
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
