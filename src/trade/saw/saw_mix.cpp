#include "saw/saw_mix.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace shaftcut::saw {
namespace {

constexpr std::int64_t nodes_before_tables = 20'000;
constexpr std::size_t work_between_asking = 1'000'000;  // kinds looked at for rows, before the clock is asked again
constexpr std::size_t most_tables = 4;
constexpr std::int64_t table_cells = 2'000'000;  // of each: 16 MB

// Bar kinds cheapest for their worth first; kinds that are worth nothing last.
std::vector<std::size_t> by_value_for_money(const Model& model, const PriceRow& row)
{
    std::vector<std::size_t> order(model.bars.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (row.bar_worth[a] == 0 || row.bar_worth[b] == 0) return row.bar_worth[a] > row.bar_worth[b];
        return static_cast<Worth>(model.bars[a].cost) * row.bar_worth[b] < static_cast<Worth>(model.bars[b].cost) * row.bar_worth[a];
    });
    return order;
}

std::int64_t ceil_div(Worth a, std::int64_t b)
{
    return static_cast<std::int64_t>((a + b - 1) / b);
}

class Enumeration {
public:
    Enumeration(const Model& model, const std::vector<PriceRow>& rows, const MixWanted& sought, const SawWatch& watch)
        : model_(model), rows_(rows), sought_(sought), watch_(watch), nodes_left_(nodes_before_tables), depth_of_(model.bars.size())
    {
        for (const PriceRow& row : rows) {
            orders_.push_back(by_value_for_money(model, row));
            missing_.push_back(row.needed);
        }
        for (std::size_t t = 0; t < orders_[0].size(); ++t) depth_of_[orders_[0][t]] = t;
        for (std::size_t r = 0; r < rows.size(); ++r) offers_.push_back(offers(r));
        mix_.assign(model.bars.size(), 0);
    }

    MixSearch run()
    {
        std::int64_t bound = 0;
        for (std::size_t r = 0; r < rows_.size(); ++r) bound = std::max(bound, std::min(sought_.limit, rest_cost(r, 0)));
        floor_ = std::max(bound, sought_.least);
        descend(0, 0);
        if (nodes_left_ < 0 && watch_.seconds_left() > 0) {
            fill_tables();
            nodes_left_ = sought_.most_nodes;
            descend(0, 0);
        }
        if (nodes_left_ >= 0) bound = edge();
        return {best_, bound};
    }

private:
    // All bars of one kind, as doubles.
    struct Offer {
        std::size_t depth;
        double worth;
        double cost_for_worth;
    };

    std::vector<Offer> offers(std::size_t r) const
    {
        std::vector<Offer> all;
        for (const std::size_t k : orders_[r]) {
            const auto worth = static_cast<double>(rows_[r].bar_worth[k]);
            if (worth <= 0) break;
            all.push_back({depth_of_[k], worth * static_cast<double>(model_.bars[k].available), static_cast<double>(model_.bars[k].cost) / worth});
        }
        return all;
    }

    // The cost of the still missing worth of row r, bought with fractions of the kinds from depth t on, rounded up;
    // the limit when they do not suffice.
    std::int64_t rest_cost(std::size_t r, std::size_t t) const
    {
        Worth missing = missing_[r];
        std::int64_t cost = 0;
        for (const std::size_t k : orders_[r]) {
            if (missing <= 0) return cost;
            if (depth_of_[k] < t) continue;
            const std::int64_t worth = rows_[r].bar_worth[k];
            if (worth == 0) break;
            const std::int64_t count = model_.bars[k].available;
            if (static_cast<Worth>(worth) * count >= missing) return cost + ceil_div(missing * model_.bars[k].cost, worth);
            missing -= static_cast<Worth>(worth) * count;
            cost += count * model_.bars[k].cost;
        }
        return missing > 0 ? sought_.limit : cost;
    }

    // rest_cost() before rounding, in doubles.
    double rough_rest_cost(std::size_t r, std::size_t t) const
    {
        auto missing = static_cast<double>(missing_[r]);
        double cost = 0;
        for (const Offer& offer : offers_[r]) {
            if (missing <= 0) return cost;
            if (offer.depth < t) continue;
            if (offer.worth >= missing) return cost + missing * offer.cost_for_worth;
            missing -= offer.worth;
            cost += offer.worth * offer.cost_for_worth;
        }
        return missing > 0 ? std::numeric_limits<double>::infinity() : cost;
    }

    // What an affordable choice of the kinds from each depth on can be worth: a knapsack with the costs as sizes.
    void fill_tables()
    {
        for (std::size_t r = 0; r < std::min(rows_.size(), most_tables); ++r) {
            std::vector<KnapsackItem> items;
            for (const std::size_t k : orders_[0]) items.push_back({k, model_.bars[k].cost, rows_[r].bar_worth[k], model_.bars[k].available});
            tables_.emplace_back().fill(items, edge(), table_cells);
        }
    }

    bool table_allows(std::size_t r, std::size_t t, std::int64_t spent) const
    {
        if (r >= tables_.size()) return true;
        const std::int64_t budget = edge() - 1 - spent;
        return budget >= 0 && static_cast<double>(missing_[r]) * (1 - 1e-11) <= tables_[r].at(t, budget);
    }

    // Whether row r leaves a chance. Doubles decide where they are far from the edge, whole numbers where they are not.
    bool row_allows(std::size_t r, std::size_t t, std::int64_t spent) const
    {
        const double rough = static_cast<double>(spent) + rough_rest_cost(r, t);
        const auto limit = static_cast<double>(edge());
        if (rough > limit * (1 + 1e-9) + 1) return false;
        if (!table_allows(r, t, spent)) return false;
        if (rough < limit * (1 - 1e-9) - 2) return true;
        return may_improve(spent + rest_cost(r, t));
    }

    // What a mix must cost less than.
    std::int64_t edge() const { return best_ ? best_cost_ : sought_.limit; }

    bool may_improve(std::int64_t cost) const { return cost < edge(); }

    void leaf(std::int64_t cost)
    {
        if (cost < sought_.least || !may_improve(cost)) return;
        if (std::find(sought_.tried.begin(), sought_.tried.end(), mix_) != sought_.tried.end()) return;
        best_ = mix_;
        best_cost_ = cost;
    }

    // No more bars than the row that misses most needs, and no more than the limit pays for; when the cost must reach
    // `least`, more bars than needed are allowed.
    std::int64_t most_useful(std::size_t k, std::int64_t cost) const
    {
        std::int64_t most = 0;
        const std::int64_t there = model_.bars[k].available;
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            const std::int64_t worth = rows_[r].bar_worth[k];
            if (missing_[r] <= 0 || worth == 0) continue;
            most = std::max(most, missing_[r] >= static_cast<Worth>(worth) * there ? there : ceil_div(missing_[r], worth));
        }
        const std::int64_t price = model_.bars[k].cost;
        const std::int64_t afford = price == 0 ? INT64_MAX : (edge() - 1 - cost) / price;
        if (cost + most * price < sought_.least && price > 0) most = std::max(most, (sought_.least - cost + price - 1) / price);
        return std::min({most, afford, there});
    }

    void take(std::size_t k, std::int64_t count)
    {
        mix_[k] += count;
        for (std::size_t r = 0; r < rows_.size(); ++r) missing_[r] -= static_cast<Worth>(rows_[r].bar_worth[k]) * count;
    }

    // False when the search is over: cut off, or nothing cheaper can exist.
    bool going()
    {
        if (best_ && best_cost_ <= floor_) return false;
        --nodes_left_;
        work_since_asked_ += rows_.size() * model_.bars.size();
        if (nodes_left_ >= 0 && work_since_asked_ > work_between_asking) {
            work_since_asked_ = 0;
            if (watch_.seconds_left() <= 0) nodes_left_ = -1;
        }
        return nodes_left_ >= 0;
    }

    void descend(std::size_t t, std::int64_t cost)
    {
        if (std::all_of(missing_.begin(), missing_.end(), [](Worth missing) { return missing <= 0; })) leaf(cost);
        if (t == orders_[0].size()) return;
        const std::size_t k = orders_[0][t];
        const std::int64_t most = most_useful(k, cost);
        const std::int64_t start = sought_.near.empty() ? most : std::clamp(std::llround(sought_.near[k]), 0LL, static_cast<long long>(most));
        for (std::int64_t count = start; count >= 0 && going(); --count)
            if (!try_count(t, count, cost)) break;
        for (std::int64_t count = start + 1; count <= most && going(); ++count) try_count(t, count, cost);
    }

    // False when still fewer bars of the kind at depth t cannot help: it is the cheapest left for the first row, and while
    // something is missing there, fewer of it only cost more. (A table refuses for another reason, so not with tables.)
    bool try_count(std::size_t t, std::int64_t count, std::int64_t cost)
    {
        const std::size_t k = orders_[0][t];
        const std::int64_t spent = cost + count * model_.bars[k].cost;
        take(k, count);
        const bool first_row_allows = row_allows(0, t + 1, spent);
        bool allowed = first_row_allows;
        for (std::size_t r = 1; allowed && r < rows_.size(); ++r) allowed = row_allows(r, t + 1, spent);
        if (allowed) descend(t + 1, spent);
        const bool fewer_is_worse = !first_row_allows && missing_[0] >= 0 && rows_[0].bar_worth[k] > 0 && tables_.empty();
        take(k, -count);
        return !fewer_is_worse;
    }

    const Model& model_;
    const std::vector<PriceRow>& rows_;
    const MixWanted& sought_;
    const SawWatch& watch_;
    std::int64_t nodes_left_;
    std::size_t work_since_asked_ = 0;
    std::int64_t floor_ = 0;  // nothing cheaper than this exists
    std::vector<std::size_t> depth_of_;
    std::vector<std::vector<std::size_t>> orders_;
    std::vector<std::vector<Offer>> offers_;
    std::vector<BoundTable> tables_;  // of the first rows, once the search has turned out long
    std::vector<Worth> missing_;
    Mix mix_;
    std::optional<Mix> best_;
    std::int64_t best_cost_ = 0;
};

}  // namespace

PriceRow price_row(const Model& model, Knapsack& knapsack, const std::vector<std::int64_t>& prices)
{
    return price_row(model, knapsack, wanted(model), prices);
}

PriceRow price_row(const Model& model, Knapsack& knapsack, const Counts& counts, const std::vector<std::int64_t>& prices)
{
    PriceRow row{prices, {}, 0};
    for (std::size_t i = 0; i < prices.size(); ++i) row.needed += static_cast<Worth>(prices[i]) * counts[i];
    for (const Filling& filling : knapsack.best_fillings(available(model), counts, prices, Effort::exact))
        row.bar_worth.push_back(filling.most);
    return row;
}

bool satisfies(const PriceRow& row, const Mix& mix)
{
    Worth worth = 0;
    for (std::size_t k = 0; k < mix.size(); ++k) worth += static_cast<Worth>(row.bar_worth[k]) * mix[k];
    return worth >= row.needed;
}

std::int64_t cost_of_mix(const Model& model, const Mix& mix)
{
    std::int64_t cost = 0;
    for (std::size_t k = 0; k < mix.size(); ++k) cost += mix[k] * model.bars[k].cost;
    return cost;
}

MixSearch cheapest_mix(const Model& model, const std::vector<PriceRow>& rows, const MixWanted& sought, const SawWatch& watch)
{
    return Enumeration(model, rows, sought, watch).run();
}

double linear_value(const Model& model, const PriceRow& row)
{
    Worth missing = row.needed;
    double cost = 0;
    for (const std::size_t k : by_value_for_money(model, row)) {
        const std::int64_t worth = row.bar_worth[k];
        if (missing <= 0 || worth == 0) break;
        const Worth all = static_cast<Worth>(worth) * model.bars[k].available;
        const double share = all >= missing ? static_cast<double>(missing) / static_cast<double>(worth)
                                            : static_cast<double>(model.bars[k].available);
        cost += share * static_cast<double>(model.bars[k].cost);
        missing -= all;
    }
    return missing > 0 ? std::numeric_limits<double>::infinity() : cost;
}

}  // namespace shaftcut::saw
