// shaftcut build --learn: what an office's list means, asked and written into the configuration.
#pragma once

#include <optional>
#include <string>

#include "call/configuration.hpp"

namespace shaftcut {

// `folder`: of the configuration; `name`: of the map; `units`: of the lists' lengths, where the call says.
struct LearnWishes {
    std::string folder, name;
    std::optional<Units> units = {};
};

// Asks for each heading of the list that is unknown what it is; then, where nobody said so, what its lengths are in and whether day or month stands
// first; for each unknown value of a column of words or names what it means, and for each unknown article what it states; and writes that into the map, which is made where there is none. Nothing is written where answers end early: bad input.
Outcome learn(const Engine& engine, const Source& list, const LearnWishes& wishes, Console& console);

}  // namespace shaftcut
