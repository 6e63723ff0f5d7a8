// What hangs on the wall for those who come with a tablet: where the bench page is.
#pragma once

#include <string>

#include "shaftcut/words/length.hpp"

namespace shaftcut {

// `address`: "http://192.168.1.20:8117/", at most 100 ASCII characters.
struct BenchCard {
    std::string address;
    Units units = Units::mm;
};

}  // namespace shaftcut
