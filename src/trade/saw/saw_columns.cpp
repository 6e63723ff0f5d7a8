#include "saw/saw_columns.hpp"

#include <algorithm>
#include <cmath>

namespace shaftcut::saw {
namespace {

constexpr double improvement = 1e-7;        // of the objective's unit: less does not pay while a quick search finds more
constexpr double least_improvement = 1e-9;  // of an exact search: less is the LP's rounding
constexpr int most_in_chain = 4;
constexpr double most_smoothing = 0.6;    // of the best prices so far in those searched with (Wentges, ITOR 4 (1997))
constexpr double whole_tolerance = 1e-6;
constexpr double useful_reduced_cost = 0.02;  // of the objective's unit: what costs more hardly enters a rounded answer

std::size_t hash_of(const Pattern& pattern)
{
    std::size_t hash = pattern.bar + 0x9E3779B97F4A7C15U;
    for (const Part& part : pattern.parts) {
        hash = (hash ^ part.size) * 0x100000001B3U;
        hash = (hash ^ static_cast<std::size_t>(part.count)) * 0x100000001B3U;
    }
    return hash ^ (hash >> 29);
}

double value_at(const std::vector<double>& prices, const std::vector<Part>& parts)
{
    double value = 0;
    for (const Part& part : parts) value += prices[part.size] * static_cast<double>(part.count);
    return value;
}

// Takes all that the parts can take as often as they fit in the limits, so that the next search finds other pieces.
Counts without(Counts limits, const std::vector<Part>& parts)
{
    std::int64_t times = INT64_MAX;
    for (const Part& part : parts) times = std::min(times, limits[part.size] / part.count);
    for (const Part& part : parts) limits[part.size] -= times * part.count;
    return limits;
}

std::size_t most_valuable(const std::vector<Filling>& fillings, const Pricing& judge)
{
    std::size_t best = 0;
    double gain = -1e300;
    for (std::size_t k = 0; k < fillings.size(); ++k) {
        if (fillings[k].parts.empty()) continue;
        const double here = value_at(judge.prices, fillings[k].parts) - judge.thresholds[k];
        if (here > gain) {
            gain = here;
            best = k;
        }
    }
    return best;
}

}  // namespace

bool ColumnPool::add(const Pattern& pattern)
{
    std::vector<std::size_t>& bucket = buckets_[hash_of(pattern) % buckets_.size()];
    if (std::any_of(bucket.begin(), bucket.end(), [&](std::size_t i) { return patterns_[i] == pattern; })) return false;
    bucket.push_back(patterns_.size());
    patterns_.push_back(pattern);
    return true;
}

void ColumnPool::keep_first(std::size_t count)
{
    patterns_.resize(std::min(count, patterns_.size()));
    for (auto& bucket : buckets_) std::erase_if(bucket, [&](std::size_t i) { return i >= count; });
}

PricedPatterns price_patterns(const Model& model, Knapsack& knapsack, const Counts& bars, const Counts& limits,
                              const std::vector<double>& search, const Pricing& judge, Effort effort)
{
    PricedPatterns priced;
    const double least = effort == Effort::quick ? improvement : least_improvement;
    priced.whole = whole_prices(model, search);
    Counts left = limits;
    for (int round = 0; round < (effort == Effort::quick ? most_in_chain : 1); ++round) {
        const std::vector<Filling> fillings = knapsack.best_fillings(bars, left, priced.whole.prices, effort);
        if (round == 0)
            for (const Filling& filling : fillings) priced.most.push_back(filling.most);
        const std::size_t before = priced.improving.size();
        for (std::size_t k = 0; k < fillings.size(); ++k)
            if (!fillings[k].parts.empty() && value_at(judge.prices, fillings[k].parts) > judge.thresholds[k] + least)
                priced.improving.push_back({k, fillings[k].parts});
        if (priced.improving.size() == before) break;
        left = without(left, fillings[most_valuable(fillings, judge)].parts);
    }
    return priced;
}

namespace {

// One run of column generation for the least-cost master.
class Generation {
public:
    Generation(const Model& model, Knapsack& knapsack, ColumnPool& pool, double enough, const SawWatch& watch)
        : model_(model), knapsack_(knapsack), pool_(pool), enough_(enough), watch_(watch), master_(model, Aim::least_cost, watch)
    {
        master_.add_all(pool.patterns(), 0);
        for (const BarKind& bar : model.bars) unit_ = std::max(unit_, static_cast<double>(bar.cost));
    }

    GeneratedColumns run()
    {
        MasterAnswer answer;
        while (watch_.seconds_left() > 0 && best_value_ <= enough_) {
            const MasterAnswer next = master_.solve(watch_);
            if (!next.solved) break;
            answer = next;
            // Costs are whole: a bound that rounds up past the master's value cannot be raised by improving it.
            const bool rounds_up = std::ceil(best_value_ - whole_tolerance) >= answer.objective * unit_;
            if (rounds_up || !improve(answer)) break;
        }
        if (!answer.solved) return {best_, {}};
        const std::vector<double> bars = bars_in(answer);
        keep_useful(answer);
        return {best_, bars};
    }

private:
    Pricing judge(const MasterAnswer& answer) const
    {
        Pricing pricing{answer.prices, answer.bar_prices};
        for (std::size_t k = 0; k < model_.bars.size(); ++k) pricing.thresholds[k] += static_cast<double>(model_.bars[k].cost) / unit_;
        return pricing;
    }

    std::vector<double> bars_in(const MasterAnswer& answer) const
    {
        std::vector<double> bars(model_.bars.size(), 0.0);
        for (std::size_t c = 0; c < answer.amounts.size(); ++c) bars[pool_.patterns()[c].bar] += answer.amounts[c];
        return bars;
    }

    void keep_useful(const MasterAnswer& answer)
    {
        const Pricing pricing = judge(answer);
        ColumnPool useful;
        for (const Pattern& pattern : pool_.patterns())
            if (pricing.thresholds[pattern.bar] - value_at(pricing.prices, pattern.parts) <= useful_reduced_cost) useful.add(pattern);
        pool_ = std::move(useful);
    }

    std::vector<double> smoothed(const std::vector<double>& prices) const
    {
        std::vector<double> mixed = prices;
        for (std::size_t i = 0; i < mixed.size(); ++i) mixed[i] += smoothing_ * (best_prices_[i] - mixed[i]);
        return mixed;
    }

    // False when the master cannot be improved any more.
    bool improve(const MasterAnswer& answer)
    {
        const Pricing pricing = judge(answer);
        if (smoothing_ > 0.01 && !best_prices_.empty()) {
            if (search(smoothed(pricing.prices), pricing, Effort::quick)) {
                smoothing_ = std::min(most_smoothing, smoothing_ + 0.05);
                return true;
            }
            smoothing_ *= 0.7;
        }
        return search(pricing.prices, pricing, Effort::quick) || search(pricing.prices, pricing, Effort::exact);
    }

    bool search(const std::vector<double>& prices, const Pricing& pricing, Effort effort)
    {
        const PricedPatterns priced = price_patterns(model_, knapsack_, available(model_), wanted(model_), prices, pricing, effort);
        remember(priced, prices);
        bool any = false;
        for (const Pattern& pattern : priced.improving) {
            if (!pool_.add(pattern)) continue;
            master_.add(pattern);
            any = true;
        }
        return any;
    }

    void remember(const PricedPatterns& priced, const std::vector<double>& prices)
    {
        PriceRow row{priced.whole.prices, priced.most, 0};
        for (std::size_t i = 0; i < row.prices.size(); ++i) row.needed += static_cast<Worth>(row.prices[i]) * model_.sizes[i].count;
        const double value = linear_value(model_, row);
        if (best_ && value <= best_value_) return;
        best_value_ = value;
        best_prices_ = prices;
        best_ = std::move(row);
    }

    const Model& model_;
    Knapsack& knapsack_;
    ColumnPool& pool_;
    double enough_;
    const SawWatch& watch_;
    Master master_;
    double unit_ = 1;
    double smoothing_ = most_smoothing;
    double best_value_ = -1;
    std::vector<double> best_prices_;
    std::optional<PriceRow> best_;
};

}  // namespace

GeneratedColumns generate_columns(const Model& model, Knapsack& knapsack, ColumnPool& pool, double enough, const SawWatch& watch)
{
    return Generation(model, knapsack, pool, enough, watch).run();
}

}  // namespace shaftcut::saw
