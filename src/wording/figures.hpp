// Figures beside or below others, as papers print them.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut {

// On paper in inches the millimetres that stand beside: "93.7 mm"; empty on paper in millimetres.
inline std::string millimetres_beside(const Wording& w, Rounded as, Length length)
{
    return w.units() == Units::in ? figure_of_with_unit(as, length, Units::mm) : std::string();
}

// The figure without its unit: "742", "29-3/16".
inline std::string bare_figure(const Wording& w, Rounded as, Length length) { return figure_of(as, length, w.units()); }

}  // namespace shaftcut
