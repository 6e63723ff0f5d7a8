// Whose a figure is, where there are several.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut {

// "Maple 80: shortest": a name, a heading or a whole sentence with the tractor before it that it is about; without one where `tractor` is empty.
inline std::string of_tractor(const std::string& tractor, const std::string& what, const Wording& w)
{
    return tractor.empty() ? what : w("{tractor}: {what}", {{"tractor", tractor}, {"what", what}});
}

}  // namespace shaftcut
