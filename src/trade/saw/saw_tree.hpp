// Branch and bound on which pieces share a bar: for tasks whose optimum lies above what prices alone can prove.
#pragma once

#include "saw/saw_packer.hpp"

namespace shaftcut::saw {

struct TreeSearch {
    std::optional<Packing> packing;  // one that costs less than the limit
    std::vector<SawProofNode> proof;  // complete when no such packing exists; else empty
};

// Looks for a packing that costs less than `limit`, in branches of the task that `rows` (each valid for the whole task) leave open,
// until one is found, none is left, `most_tests` linear tests of a mix are used up or time is. `known`: patterns to start from.
TreeSearch search_tree(const Model& model, const std::vector<PriceRow>& rows, const ColumnPool& known, std::int64_t limit, std::int64_t most_tests,
                       const SawWatch& watch);

}  // namespace shaftcut::saw
