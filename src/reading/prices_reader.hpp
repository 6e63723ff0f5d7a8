// What a workshop charges, `prices` of config/workshop.xml.
#pragma once

#include "shaftcut/trade/data/prices.hpp"
#include "xml/element.hpp"

namespace shaftcut {

inline constexpr int most_lead_days = 1'000;

// Reads a `prices` element. Faults beside those of form: an unknown currency, an item that is for nothing or for more than one thing, one that
// states no price or the wrong kind of price for it, and a second price for the same thing. Checked in tests/reading/prices_reader_test.cpp and by
// tests/reading/bad/.
Prices read_prices(Element& element);

}  // namespace shaftcut
