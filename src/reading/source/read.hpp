// What comes of reading a file: its value, or all that is wrong with it.
#pragma once

#include <optional>

#include "source/faults.hpp"

namespace shaftcut {

// `value` is there exactly where `faults` is empty. `faults` is in the order of their places.
template <class T>
struct Read {
    std::optional<T> value;
    FaultList faults;
};

}  // namespace shaftcut
