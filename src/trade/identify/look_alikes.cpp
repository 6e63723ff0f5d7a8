#include "shaftcut/trade/identify/look_alikes.hpp"

#include "identify/apart.hpp"

namespace shaftcut {
namespace {

void compare(LookAlikes& found, const std::array<std::string, 2>& names, const identifying::StatedFigures& a, const identifying::StatedFigures& b)
{
    if (identifying::are_apart(a, b, false)) return;
    const identifying::Apart all = identifying::apart(a, b, true);
    (all.by.empty() ? found.never : found.only_wide_angle).push_back({names, all.distance, all.by});
}

}  // namespace

LookAlikes look_alikes(const Catalogue& catalogue)
{
    LookAlikes found;
    const std::vector<Series>& all = catalogue.series;
    std::vector<identifying::StatedFigures> figures;
    for (const Series& series : all) figures.push_back(identifying::stated_figures(series));
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j)
            if (all[i].shape == all[j].shape) compare(found, {all[i].name, all[j].name}, figures[i], figures[j]);
    return found;
}

}  // namespace shaftcut
