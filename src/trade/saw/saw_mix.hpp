// How many bars of each kind: what prices prove about it, and the cheapest numbers that no prices forbid.
#pragma once

#include "saw/saw_knapsack.hpp"

namespace shaftcut::saw {

using Mix = Counts;  // bars of each kind

__extension__ typedef __int128 Worth;  // prices times counts pass 64 bits

// At these prices a bar of kind k is worth at most bar_worth[k] and all pieces are worth `needed`: any plan's mix n
// satisfies sum of bar_worth[k] · n[k] >= needed.
struct PriceRow {
    std::vector<std::int64_t> prices;
    std::vector<std::int64_t> bar_worth;
    Worth needed = 0;
};

// The row for prices that have their values within values_fit(). Exact knapsacks.
PriceRow price_row(const Model& model, Knapsack& knapsack, const std::vector<std::int64_t>& prices);
// For so many pieces of each size instead of all of the model's.
PriceRow price_row(const Model& model, Knapsack& knapsack, const Counts& counts, const std::vector<std::int64_t>& prices);

bool satisfies(const PriceRow& row, const Mix& mix);
std::int64_t cost_of_mix(const Model& model, const Mix& mix);

struct MixSearch {
    std::optional<Mix> mix;  // the cheapest one, nothing when there is none below the limit
    std::int64_t bound = 0;  // no mix that satisfies the rows costs less (the limit when none was found); weaker when the
                             // search was cut off; not meaningful when some mixes were excluded as tried
};

// What to look for: the cheapest mix that satisfies every row (at least one), is not among `tried`, costs at least `least` and
// less than `limit`. The search starts from mixes near `near`, empty: from the most of what is cheapest for its worth.
struct MixWanted {
    std::vector<Mix> tried = {};
    std::int64_t least = 0;
    std::int64_t limit = 0;
    std::vector<double> near = {};
    std::int64_t most_nodes = 5'000'000;  // of the search
};

MixSearch cheapest_mix(const Model& model, const std::vector<PriceRow>& rows, const MixWanted& sought, const SawWatch& watch);

// What the cheapest fractions of bars that satisfy the row cost, about: to compare rows, not to prove with.
// Infinite when all bars together do not satisfy it.
double linear_value(const Model& model, const PriceRow& row);

}  // namespace shaftcut::saw
