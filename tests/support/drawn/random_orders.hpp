// Random orders with the catalogue and the workshop that they need, the same for the same number on every machine.
#pragma once

#include "shaftcut/trade/data/build_order.hpp"
#include "support/drawn/random_jobs.hpp"

namespace shaftcut::test {

struct OrderWorld {
    BuildOrder order;
    Catalogue catalogue;
    Workshop workshop;
    Units units = Units::mm;
};

// Anything that the readers let through: contradictions and missing figures included. About a third is ordered by its closed length.
OrderWorld random_order(std::uint64_t number);

}  // namespace shaftcut::test
