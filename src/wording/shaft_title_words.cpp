#include "shaft_title_words.hpp"

namespace shaftcut {

// A list of properties, no sentence.
std::string say(const ShaftTitle& title, const Wording& w)
{
    std::string words = title.series.empty() ? w("Unknown series") : title.series;
    const auto add = [&words](const std::string& property) { words += ", " + property; };
    if (title.shape && *title.shape != Shape::other) add(w("{shape:lemon tubes|star tubes|triangular tubes|square tubes|splined tubes}", {{"shape", *title.shape}}));
    add(w("{role:primary|secondary}", {{"role", title.role}}));
    if (title.speed) add(w("{speed} min⁻¹", {{"speed", *title.speed}}));
    if (title.built) add(w("built {year}", {{"year", *title.built}}));
    return words;
}

}  // namespace shaftcut
