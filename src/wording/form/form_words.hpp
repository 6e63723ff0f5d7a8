// What the measuring form says with figures and names.
#pragma once

#include <optional>
#include <string>

#include "data/machine_words.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "wording.hpp"

namespace shaftcut::measuring_form {

// Of the file: its title, and what it is for.
std::string document_title(const Wording& w);
std::string document_subject(const std::optional<Series>& series, const Wording& w);

// What needs not be measured of this series. `reference`: the cross that counts where none is ticked.
std::string series_states(const Series& series, const std::optional<Reference>& reference, const Wording& w);
// What a box of a series should come to.
std::string expected(Length length, const Wording& w);

// Behind the heading of the closed length: how it is measured; and, where the series has a list of them, which are made.
std::string closed_hint(Length plus_minus, const Wording& w);
std::string closed_as_made(const std::vector<Length>& lengths, const Wording& w);

// A position to measure: its name, what of all it is, and where a mounted and a trailed machine stand in it.
enum class Position { shortest, working, turning, standing };
std::string position_name(Position position, const Wording& w);
std::string position_meaning(Position position, const Wording& w);
std::string mounted_positions(Position position, const Wording& w);
std::string trailed_positions(Position position, const Wording& w);

// An angle's boxes: "tractor, working", and its two views.
std::string angle_name(End end, Range range, const Wording& w);
std::string side_view_name(End end, const Wording& w);
std::string plan_name(End end, const Wording& w);

// A machine's dimensions and movements, each with its letter in the drawing.
std::string dimension_name(TrailedDimension dimension, const std::string& letter, const Wording& w);
std::string dimension_name(MountedDimension dimension, const std::string& letter, const Wording& w);
std::string dimension_name(TrailedMovement movement, const std::string& letter, const Wording& w);
std::string dimension_name(MountedMovement movement, const std::string& letter, const Wording& w);
std::string range_heading(Range range, const Wording& w);

}  // namespace shaftcut::measuring_form
