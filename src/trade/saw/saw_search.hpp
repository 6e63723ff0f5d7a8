// The search for the cheapest packing: bound, mix, packing, round and round until the bound meets the plan.
#pragma once

#include "saw/saw_packer.hpp"

namespace shaftcut::saw {

struct Found {
    Packing packing;
    std::int64_t bound = 0;      // in the model's unit of cost
    std::vector<PriceRow> rows;  // prove the bound
    std::vector<SawProofNode> cases;  // where the rows alone do not
    ColumnPool pool;             // patterns that were useful on the way
};

// `start` packs all pieces. Stops when the bound is met, when time is up, or after a fixed number of rounds without either.
Found search_cheapest(const Model& model, Packing start, const SawWatch& watch);

}  // namespace shaftcut::saw
