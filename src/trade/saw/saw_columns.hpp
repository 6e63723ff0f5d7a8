// Column generation: the patterns worth knowing, found by pricing them against the linear master.
#pragma once

#include "saw/saw_master.hpp"
#include "saw/saw_mix.hpp"

namespace shaftcut::saw {

// Patterns, each once.
class ColumnPool {
public:
    // False when it was known already.
    bool add(const Pattern& pattern);
    void keep_first(std::size_t count);
    const std::vector<Pattern>& patterns() const { return patterns_; }

private:
    std::vector<Pattern> patterns_;
    std::vector<std::vector<std::size_t>> buckets_ = std::vector<std::vector<std::size_t>>(4096);
};

// What a bar must be worth more than, at the prices, for its pattern to improve the master.
struct Pricing {
    std::vector<double> prices;      // of each size, 0 or more
    std::vector<double> thresholds;  // of each bar
};

struct PricedPatterns {
    std::vector<Pattern> improving;
    WholePrices whole;              // of the prices searched with
    std::vector<std::int64_t> most;  // no filling of bar k is worth more at the whole prices
};

// Patterns found at the prices `search` (a good one for each bar with bars[k] > 0, and after a quick search a few that share
// no pieces with it) that improve the master by `judge`.
PricedPatterns price_patterns(const Model& model, Knapsack& knapsack, const Counts& bars, const Counts& limits,
                              const std::vector<double>& search, const Pricing& judge, Effort effort);

struct GeneratedColumns {
    std::optional<PriceRow> row;  // the strongest row of prices met
    std::vector<double> bars;     // of each kind, fractions, in the last master; empty when none was solved
};

// Fills the pool with what the least-cost master needs, starting from the patterns in it (which must cover all pieces within
// the stock), and leaves out what it does not. Stops early when the row's linear value passes `enough`, when it rounds up
// to the master's cost, or when time is up.
GeneratedColumns generate_columns(const Model& model, Knapsack& knapsack, ColumnPool& pool, double enough, const SawWatch& watch);

}  // namespace shaftcut::saw
