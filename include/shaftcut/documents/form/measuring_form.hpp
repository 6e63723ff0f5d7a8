// What the blank measuring form is made for.
#pragma once

#include <array>
#include <optional>
#include <string>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/words/length.hpp"

namespace shaftcut {

// What the back asks for on the machine: its lengths, or the dimensions of a trailed or of a mounted machine in their place.
enum class OnMachine { lengths, trailed, mounted };
template <> struct Words<OnMachine> { static constexpr std::array all{"lengths", "trailed", "mounted"}; };

struct MeasuringForm {
    std::optional<Series> series;          // nothing: for a shaft of any series or of none
    OnMachine machine = OnMachine::lengths;
    Units units = Units::mm;               // of every length written in a box
    Length plus_minus;                     // what counts where none is written
    std::string owner;                     // the file's author; may be empty
    bool to_identify = false;              // asks for what tells the series, in the place of all else; of no series
};

}  // namespace shaftcut
