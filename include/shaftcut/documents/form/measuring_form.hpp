// What the blank measuring form is made for.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/words/length.hpp"

namespace shaftcut {

struct MeasuringForm {
    std::optional<Series> series;          // nothing: for a shaft of any series or of none
    std::vector<std::string> connections;  // the catalogue's, by name
    Units units = Units::mm;               // of every length written in a box
    Length plus_minus;                     // what counts where none is written
    std::string owner;                     // the file's author; may be empty
};

}  // namespace shaftcut
