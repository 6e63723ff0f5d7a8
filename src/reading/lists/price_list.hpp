// A wholesaler's list of prices, prices.csv beside config/workshop.xml.
#pragma once

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/prices.hpp"
#include "source/faults.hpp"

namespace shaftcut {

inline constexpr std::size_t most_price_lines = 200'000;

// Adds the items of a list with the columns part, each or per_metre, and lead_days; amounts in the currency of `prices`. What `prices` has
// a price for already keeps it: an office's own goes before its wholesaler's. Returns all that is wrong with the list;
// then nothing is added. Checked in tests/reading/prices_reader_test.cpp.
FaultList add_price_list(const Source& source, Prices& prices);

}  // namespace shaftcut
