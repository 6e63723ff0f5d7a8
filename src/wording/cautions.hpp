// Cautions that papers of every kind end with.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut {

inline std::string manuals_come_first(const Wording& w) { return w("Manuals and local rules come first; a qualified person checks and signs."); }

}  // namespace shaftcut
