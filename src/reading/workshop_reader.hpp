// The workshop's own settings, config/workshop.xml.
#pragma once

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/firm.hpp"
#include "shaftcut/trade/data/prices.hpp"
#include "source/read.hpp"

namespace shaftcut {

// A workshop, the firm that its papers for customers name, and what it charges; nothing where it states no prices.
struct StatedWorkshop : Workshop {
    Firm firm;
    std::optional<Prices> prices;
};

// Reads `workshop` with its firm, limits, saw, measuring tolerance, stock bars and prices, in any order. config/workshop.xsd says the same for
// editors. Checked in tests/reading/workshop_reader_test.cpp and by tests/reading/bad/.
Read<StatedWorkshop> read_workshop(const Source& source);

}  // namespace shaftcut
