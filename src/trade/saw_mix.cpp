#include "shaftcut/trade/saw_mix.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

namespace shaftcut::saw {
namespace {

constexpr std::int64_t most_nodes = 3'000'000;
constexpr std::int64_t most_nodes_for_equals = 20'000;

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
    Enumeration(const Model& model, const std::vector<PriceRow>& rows, const std::vector<Mix>& tried, std::int64_t least,
                std::int64_t limit)
        : model_(model), rows_(rows), tried_(tried), least_(least), limit_(limit), depth_of_(model.bars.size())
    {
        for (const PriceRow& row : rows) {
            orders_.push_back(by_value_for_money(model, row));
            missing_.push_back(row.needed);
        }
        for (std::size_t t = 0; t < orders_[0].size(); ++t) depth_of_[orders_[0][t]] = t;
        mix_.assign(model.bars.size(), 0);
    }

    MixSearch run()
    {
        std::int64_t bound = 0;
        for (std::size_t r = 0; r < rows_.size(); ++r) bound = std::max(bound, std::min(limit_, rest_cost(r, 0)));
        descend(0, 0);
        if (nodes_ <= most_nodes) bound = best_ ? best_cost_ : limit_;
        return {best_, bound};
    }

private:
    // The cost of the still missing worth of row r, bought with fractions of the kinds from depth t on, rounded up;
    // a cost at the limit when they do not suffice.
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
        return missing > 0 ? limit_ : cost;
    }

    // Better, or for a while as cheap with perhaps more worth to spare.
    bool may_improve(std::int64_t cost) const
    {
        if (!best_) return cost < limit_;
        return nodes_ < most_nodes_for_equals ? cost <= best_cost_ : cost < best_cost_;
    }

    void leaf(std::int64_t cost)
    {
        if (cost < least_ || !may_improve(cost) || std::find(tried_.begin(), tried_.end(), mix_) != tried_.end()) return;
        if (best_ && cost == best_cost_ && missing_[0] >= best_missing_) return;
        best_ = mix_;
        best_cost_ = cost;
        best_missing_ = missing_[0];
    }

    // No more bars than the row that misses most needs, and no more than the limit pays for; when the cost must reach
    // `least`, more bars than needed are allowed.
    std::int64_t most_useful(std::size_t k, std::int64_t cost) const
    {
        std::int64_t most = 0;
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (missing_[r] <= 0) continue;
            const std::int64_t worth = rows_[r].bar_worth[k];
            most = std::max(most, worth == 0 ? 0 : ceil_div(missing_[r], worth));
        }
        const std::int64_t price = model_.bars[k].cost;
        const std::int64_t afford = price == 0 ? INT64_MAX : (limit_ - 1 - cost) / price;
        if (cost + most * price < least_ && price > 0) most = std::max(most, (least_ - cost + price - 1) / price);
        return std::min({most, afford, model_.bars[k].available});
    }

    void take(std::size_t k, std::int64_t count)
    {
        mix_[k] += count;
        for (std::size_t r = 0; r < rows_.size(); ++r) missing_[r] -= static_cast<Worth>(rows_[r].bar_worth[k]) * count;
    }

    void descend(std::size_t t, std::int64_t cost)
    {
        if (++nodes_ > most_nodes) return;
        if (std::all_of(missing_.begin(), missing_.end(), [](Worth missing) { return missing <= 0; })) leaf(cost);
        if (t == orders_[0].size()) return;
        const std::size_t k = orders_[0][t];
        for (std::int64_t count = most_useful(k, cost); count >= 0; --count) {
            take(k, count);
            const std::int64_t spent = cost + count * model_.bars[k].cost;
            const bool first_row_allows = may_improve(spent + rest_cost(0, t + 1));
            bool allowed = first_row_allows;
            for (std::size_t r = 1; allowed && r < rows_.size(); ++r) allowed = may_improve(spent + rest_cost(r, t + 1));
            if (allowed) descend(t + 1, spent);
            // Kind k is the cheapest left for the first row: while something is missing there, fewer of it only cost more.
            const bool fewer_is_worse = missing_[0] >= 0;
            take(k, -count);
            if ((!first_row_allows && fewer_is_worse) || nodes_ > most_nodes) break;
        }
    }

    const Model& model_;
    const std::vector<PriceRow>& rows_;
    const std::vector<Mix>& tried_;
    std::int64_t least_;
    std::int64_t limit_;
    std::vector<std::size_t> depth_of_;
    std::vector<std::vector<std::size_t>> orders_;
    std::vector<Worth> missing_;
    Mix mix_;
    std::int64_t nodes_ = 0;
    std::optional<Mix> best_;
    std::int64_t best_cost_ = 0;
    Worth best_missing_ = 0;
};

}  // namespace

PriceRow price_row(const Model& model, const std::vector<std::int64_t>& prices, const SawWatch& watch)
{
    PriceRow row{prices, {}, 0};
    for (std::size_t i = 0; i < prices.size(); ++i) row.needed += static_cast<Worth>(prices[i]) * model.sizes[i].count;
    for (const Filling& filling : best_fillings(model, available(model), wanted(model), prices, Effort::exact, watch))
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

MixSearch cheapest_mix(const Model& model, const std::vector<PriceRow>& rows, const std::vector<Mix>& tried,
                       std::int64_t least, std::int64_t limit)
{
    return Enumeration(model, rows, tried, least, limit).run();
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
