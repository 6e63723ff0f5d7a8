// The catalogue of connection types and series, config/series.xml.
#pragma once

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "source/read.hpp"

namespace shaftcut {

// Reads `catalogue` with its connections and series, in any order. Faults beside those of form: two connections or two
// series of one name, a yoke of a connection that the catalogue does not hold, two yokes for one connection and joint,
// two halves for one tube, a pin hole that is not beyond its half's seat, two ratings at one speed, a
// shoulder, a wide-angle spacing or a closed length outside the bounds of bounds.hpp, a shoulder that lies short of its half's seat (of an outer half
// by more than 30 mm), and those of its parts (read_parts). config/series.xsd says the same for editors.
// Checked in tests/reading/catalogue_reader_test.cpp and by tests/reading/bad/.
Read<Catalogue> read_catalogue(const Source& source);

// What is wrong with `added`, a catalogue of at least one series that is to stand in `to` beside what stands there: the same, names and connections of both
// taken together (a connection that says the same as one there is that one), and units other than `units`, those of the other file.
FaultList faults_of_added(const Source& added, const Catalogue& to, Units units);

}  // namespace shaftcut
