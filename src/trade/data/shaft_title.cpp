#include "data/shaft_title.hpp"

namespace shaftcut {

std::string shaft_title(const JobShaft& shaft, const Series* series)
{
    std::string title = series ? series->name : "Unknown series";
    const auto shape = series ? std::optional(series->shape) : shaft.shape;
    if (shape && *shape != Shape::other) title += std::string(", ") + to_word(*shape) + " tubes";
    title += std::string(", ") + to_word(shaft.role);
    if (shaft.speed) title += ", " + std::to_string(*shaft.speed) + " min⁻¹";
    if (shaft.built) title += ", built " + std::to_string(*shaft.built);
    return title;
}

}  // namespace shaftcut
