// What a machine's drawings and tables say with figures.
#pragma once

#include <string>

#include "shaftcut/trade/order/machine_view.hpp"
#include "wording.hpp"

namespace shaftcut::geometry {

// Headings. `tractor`: whose machine it is where there are several; may be empty.
std::string stated_heading(const std::string& tractor, bool mounted, const Wording& w);
std::string extremes_heading(const std::string& tractor, const Wording& w);
std::string scale_heading(const std::string& tractor, const Wording& w);

// Names of extremes.
std::string shortest_name(const Wording& w);
std::string longest_name(Range range, const Wording& w);
std::string joint_name(End end, Range range, const Wording& w);
// Where an extreme lies, and how far it can be trusted.
std::string position_and_doubt(const std::string& position, const std::string& doubt, const Wording& w);

// Behind a scene's name: from where it is seen and how large it is drawn, "1 : 20".
enum class Seen { from_above, from_left };
std::string seen_to_scale(Seen from, int scale, const Wording& w);
std::string about_scenes(bool mounted, const Wording& w);

// Of the plot: its axes in the paper's unit, its ranges, its limits, its extremes, and what its lines are.
std::string height_axis(const Wording& w);
std::string length_axis(const Wording& w);
std::string overlap_axis(const Wording& w);
std::string range_name(Range range, const Wording& w);
std::string longest_allowed(Range range, const Wording& w);
std::string extreme(const std::string& name, const std::string& length, const Wording& w);
// `level_range`: whose pitch and roll the thin lines have; nothing for a mounted machine. `cut`: limits of a cut are shown.
std::string about_plot(const std::optional<Range>& level_range, bool cut, const Wording& w);

}  // namespace shaftcut::geometry
