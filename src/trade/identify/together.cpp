#include "identify/together.hpp"

#include <algorithm>

#include "identify/apart.hpp"

namespace shaftcut::identifying {
namespace {

std::vector<std::size_t> most_probable(const Posterior& posterior)
{
    std::vector<std::size_t> all;
    for (std::size_t k = 0; k < posterior.one.size(); ++k)
        if (posterior.one[k] >= together_from) all.push_back(k);
    std::stable_sort(all.begin(), all.end(), [&](std::size_t a, std::size_t b) { return posterior.one[a] > posterior.one[b]; });
    all.resize(std::min(all.size(), together_most));
    return all;
}

NotToldApart pair_of(const Series& a, const Series& b, bool has_wide_angle)
{
    NotToldApart made{{a.name, b.name}, WhyTogether::measured_between, {{IdentifiedPart::tubes, IdentifyingKind::shape, {}, CapPair::first, {}, false}}};
    if (a.shape != b.shape) return made;
    const StatedFigures one = stated_figures(a), two = stated_figures(b);
    made.by = apart(one, two, has_wide_angle).by;
    if (!made.by.empty()) return made;
    made.by = apart(one, two, true).by;
    if (!made.by.empty()) made.why = WhyTogether::only_wide_angle;
    else made.why = state_the_same(one, two) ? WhyTogether::same_figures : WhyTogether::catalogue_lacks_figures;
    return made;
}

}  // namespace

std::vector<NotToldApart> not_told_apart(const Catalogue& catalogue, const ShaftFigures& figures, const Posterior& posterior)
{
    const bool has_wide_angle = std::any_of(both_ends.begin(), both_ends.end(), [&](End end) { return figures.ends[end].joint == JointKind::wide_angle; });
    const std::vector<std::size_t> all = most_probable(posterior);
    std::vector<NotToldApart> pairs;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j) pairs.push_back(pair_of(catalogue.series[all[i]], catalogue.series[all[j]], has_wide_angle));
    return pairs;
}

}  // namespace shaftcut::identifying
