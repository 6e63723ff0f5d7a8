// A machine's dimensions as the job states them, each by its word in the job file and in the order of the measuring form: so that
// whoever measured can hold a paper against the form, and see a lost sign or a swapped figure.
// Checked: every word of machine_words.hpp once, each beside the figure that a job file gave for it (machine_dimensions_test.cpp).
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "data/machine_words.hpp"
#include "shaftcut/trade/data/machine.hpp"

namespace shaftcut {

// The lengths of one kind of machine by their words.
template <class Kind>
struct NamedLength {
    const char* name;
    Dimension Kind::*dimension;
};
inline constexpr std::array<NamedLength<Trailed>, 6> trailed_lengths{{
    {to_word(TrailedDimension::pto_height), &Trailed::pto_height},
    {to_word(TrailedDimension::pin_behind), &Trailed::pin_behind},
    {to_word(TrailedDimension::pin_height), &Trailed::pin_height},
    {to_word(TrailedDimension::input_behind), &Trailed::input_behind},
    {to_word(TrailedDimension::input_height), &Trailed::input_height},
    {to_word(TrailedDimension::input_left), &Trailed::input_left},
}};
inline constexpr std::array<NamedLength<Mounted>, 10> mounted_lengths{{
    {to_word(MountedDimension::pto_height), &Mounted::pto_height},
    {to_word(MountedDimension::lower_pivot_behind), &Mounted::lower_pivot_behind},
    {to_word(MountedDimension::lower_pivot_height), &Mounted::lower_pivot_height},
    {to_word(MountedDimension::lower_link), &Mounted::lower_link},
    {to_word(MountedDimension::top_pivot_behind), &Mounted::top_pivot_behind},
    {to_word(MountedDimension::top_pivot_height), &Mounted::top_pivot_height},
    {to_word(MountedDimension::top_link), &Mounted::top_link},
    {to_word(MountedDimension::mast), &Mounted::mast},
    {to_word(MountedDimension::input_behind), &Mounted::input_behind},
    {to_word(MountedDimension::input_above), &Mounted::input_above},
}};

// What the sign of a dimension says: where it lies, or how an input shaft is tilted.
enum class Side { behind, in_front, above, below, left, right, rises, falls };

struct StatedDimension {
    std::string name;                             // "lower-pivot-behind"
    std::variant<Dimension, AngleDimension> stated;
    std::optional<Side> lies;                     // nothing where it has no sign, or is 0
};

// What a figure below 0 means for the dimension of this name; nothing for one that has no sign.
std::optional<Side> negative_side(std::string_view name);

// "trailed" or "mounted": the element of the job file.
const char* kind_word(const Machine& machine);

// All but the ranges.
std::vector<StatedDimension> dimensions_of(const Machine& machine);

// How far it moves in this range; empty where the job does not state the range.
std::vector<StatedDimension> movements_of(const Machine& machine, Range range);

}  // namespace shaftcut
