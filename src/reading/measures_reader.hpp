// What was measured of a shaft to tell its series.
#pragma once

#include "shaftcut/reading/source/source.hpp"
#include "shaftcut/trade/data/measures.hpp"
#include "source/read.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// Reads a file of `measures`, whose parts may stand in any order and be left out. Faults beside those of form: a length or a ± that comes to nothing; a
// span that is no more than its spacers; a side, a stated tube or a stated cross twice; a third cross or tube; a fourth reading; a standard joint with
// spacing, `at` or two crosses; readings of one cap in the bore and on the cap. A figure that no shaft has is none: identify() says so.
// config/measures.xsd says the same for editors. Checked in tests/reading/measures_reader_test.cpp and by tests/reading/bad/measures.
Read<Measures> read_measures(const Source& source);

// Those within a job's shaft, where neither name nor units stand on it.
Measures read_measures_of_job(Element& element);

}  // namespace shaftcut
