// The workshop's own settings, config/workshop.xml.
#pragma once

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/firm.hpp"
#include "source/read.hpp"

namespace shaftcut {

// A workshop, and the firm that its papers for customers name.
struct StatedWorkshop : Workshop {
    Firm firm;
};

// Reads `workshop` with its firm, limits, saw, measuring tolerance and stock bars, in any order. config/workshop.xsd says the same for
// editors. Checked in tests/reading/workshop_reader_test.cpp and by tests/reading/bad/.
Read<StatedWorkshop> read_workshop(const Source& source);

}  // namespace shaftcut
