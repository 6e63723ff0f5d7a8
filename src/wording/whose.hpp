// Whose a figure is, where there are several.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut {

// "Maple 80: shortest": a name or a heading with the tractor before it; without one where `tractor` is empty.
inline std::string of_tractor(const std::string& tractor, const std::string& what, const Wording& w)
{
    return tractor.empty() ? what : w("{tractor}: {what}", {{"tractor", tractor}, {"what", what}});
}

}  // namespace shaftcut
