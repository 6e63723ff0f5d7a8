#include "shaftcut/trade/identify/look_alikes.hpp"

#include "identify/apart.hpp"

namespace shaftcut {
namespace {

void compare(LookAlikes& found, const std::array<std::uint32_t, 2>& pair, const identifying::StatedFigures& a, const identifying::StatedFigures& b)
{
    if (identifying::are_apart(a, b, false)) return;
    const identifying::Apart all = identifying::apart(a, b, true);
    (all.by.empty() ? found.never : found.only_wide_angle).push_back({pair, all.distance});
}

}  // namespace

LookAlikes look_alikes(const Catalogue& catalogue)
{
    LookAlikes found;
    const std::vector<Series>& all = catalogue.series;
    std::vector<identifying::StatedFigures> figures;
    for (const Series& series : all) figures.push_back(identifying::stated_figures(series));
    const auto count = static_cast<std::uint32_t>(all.size());
    for (std::uint32_t i = 0; i < count; ++i)
        for (std::uint32_t j = i + 1; j < count; ++j)
            if (all[i].shape == all[j].shape) compare(found, {i, j}, figures[i], figures[j]);
    return found;
}

}  // namespace shaftcut
