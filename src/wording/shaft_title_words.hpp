// What a shaft is called on paper.
#pragma once

#include <string>

#include "shaftcut/trade/data/shaft_title.hpp"
#include "wording.hpp"

namespace shaftcut {

// "Alder 2, lemon tubes, primary, 540 min⁻¹, built 2018".
std::string say(const ShaftTitle& title, const Wording& w);

}  // namespace shaftcut
