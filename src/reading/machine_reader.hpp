// A machine's geometry in a job.
#pragma once

#include <optional>

#include "shaftcut/trade/data/machine.hpp"
#include "xml/element.hpp"

namespace shaftcut {

// What a `trailed` or `mounted` element states; nothing where a fault was found in it. Every dimension is required, and of
// the three ranges each at most once; `plus-minus` holds for the lengths of the element that it stands on. Whether such a
// machine can be is for geometry_problems().
// Checked in tests/reading/machine_reader_test.cpp and by tests/reading/bad/.
std::optional<Machine> read_trailed(Element& element);
std::optional<Machine> read_mounted(Element& element);

}  // namespace shaftcut
