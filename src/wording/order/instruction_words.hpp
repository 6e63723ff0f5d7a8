// Cautions, notes and the names of a machine's pictures, said.
#pragma once

#include <string>

#include "order/step_words.hpp"
#include "shaftcut/trade/order/findings.hpp"
#include "shaftcut/trade/order/machine_view.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string say(Caution caution, const Wording& w);
std::string say(const GuardWarning& warning, const Wording& w);
std::string say(const Note& note, const Wording& w);

// "Shortest", "Longest, standing", "Lowest", "Highest".
std::string name_of(const MachineScene& scene, const Wording& w);

}  // namespace shaftcut
