// The best filling of a bar at given prices: a bounded knapsack, exact or with a bound that is safe.
// Checked against a plain dynamic programme in tests/trade/saw/saw_proof_test.cpp.
#pragma once

#include <memory>

#include "saw/saw_bound_table.hpp"
#include "saw/saw_model.hpp"

namespace shaftcut::saw {

struct Filling {
    std::int64_t value = 0;   // of the parts, at the prices
    std::int64_t most = 0;    // no filling is worth more; equal to value when the search was complete
    std::vector<Part> parts;  // in rising order of size index
};

// For each size those that no bar may hold beside it; itself: a bar holds at most one. Sizes beyond its end: none.
using Apart = std::vector<std::vector<std::size_t>>;

// How hard to look. quick: branch and bound over densities, cut off early, its `most` then weak.
// exact: with a table of bounds over room and remaining sizes; `most` exceeds `value` only where the search had to be cut off.
enum class Effort { quick, exact };

// Keeps its tables from search to search. The model and the watch must outlive it.
class Knapsack {
public:
    Knapsack(const Model& model, const SawWatch& watch);
    ~Knapsack();
    Knapsack(const Knapsack&) = delete;
    Knapsack& operator=(const Knapsack&) = delete;

    // From now on no filling holds what these sizes keep apart.
    void keep_apart(const Apart& apart) { apart_ = apart; }

    // One filling for each bar kind of the model with bars[k] > 0 (others are empty, worth 0), using at most limits[i] pieces
    // of size i. prices[i] is 0 or more and the prices must pass values_fit().
    std::vector<Filling> best_fillings(const Counts& bars, const Counts& limits, const std::vector<std::int64_t>& prices, Effort effort);

private:
    class Search;
    const Model& model_;
    const SawWatch& watch_;
    Apart apart_;
    std::unique_ptr<BoundTable> table_;
};

// The prices as whole numbers, rounded down, scaled as finely as the limit on values allows. Negative ones count as 0.
// The scale is the factor applied.
struct WholePrices {
    std::vector<std::int64_t> prices;
    double scale = 1.0;
};
WholePrices whole_prices(const Model& model, const std::vector<double>& prices);

// True where no filling of any bar can be worth 2^52 or more.
bool values_fit(const Model& model, const std::vector<std::int64_t>& prices);

}  // namespace shaftcut::saw
