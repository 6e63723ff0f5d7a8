// One sentence a way out. Private to the advice's wording.
#pragma once

#include <string>

#include "shaftcut/trade/advice/findings.hpp"
#include "wording.hpp"

namespace shaftcut::advice {

std::string said(Remedy way, const Wording& w);

// Lengths: other positions, other shafts.
std::string said(const LongestServed& way, const Wording& w);
std::string said(const GuardsReach& way, const Wording& w);
std::string said(const ShortestServed& way, const Wording& w);
std::string said(const SeriesLengths& way, const Wording& w);
std::string said(const NewShaft& way, const Wording& w);
std::string said(const NoNewShaft& way, const Wording& w);

// What is fitted, and the movement of the machine.
std::string said(const MatchConnection& way, const Wording& w);
std::string said(const LimitMovement& way, const Wording& w);
std::string said(const SeriesThatCarries& way, const Wording& w);
std::string said(const TurnServed& way, const Wording& w);
std::string said(const PitchServed& way, const Wording& w);
std::string said(const LiftRangeServed& way, const Wording& w);
std::string said(const PinMoveServed& way, const Wording& w);

}  // namespace shaftcut::advice
