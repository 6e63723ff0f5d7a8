// The parts of a series, by the names that the workshop calls them.
#pragma once

#include "shaftcut/trade/data/catalogue.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// Every `part` of a `series` element. Faults beside those of form: a connection that the catalogue does not hold, something that
// parts of this kind do not depend on, and a second part for the very same place.
// Checked in tests/reading/catalogue_reader_test.cpp and by tests/reading/bad/.
std::vector<CataloguePart> read_parts(Element& series, const KnownNames& connections);

}  // namespace shaftcut
