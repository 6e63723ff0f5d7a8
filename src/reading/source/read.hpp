// What comes of reading a file: its value, or all that is wrong with it.
#pragma once

#include <optional>

#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// `value` is there exactly where `problems` is empty. `problems` is in the order of their places.
template <class T>
struct Read {
    std::optional<T> value;
    Problems problems;
};

}  // namespace shaftcut
