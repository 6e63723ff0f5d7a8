#include "identify/look_alike_words.hpp"

#include <vector>

namespace shaftcut {
namespace {

// The pairs by their first series, in the catalogue's order.
std::string lines_of(const std::vector<LookAlike>& pairs, const Wording& w)
{
    std::string lines;
    for (std::size_t i = 0; i < pairs.size();) {
        const std::string& first = pairs[i].series[0];
        std::vector<std::string> others;
        for (; i < pairs.size() && pairs[i].series[0] == first; ++i) others.push_back(pairs[i].series[1]);
        lines += w("  {series}: {others}\n", {{"series", first}, {"others", w.all_of(others)}});
    }
    return lines;
}

}  // namespace

std::string look_alike_lines(const LookAlikes& found, const Wording& w)
{
    std::string lines;
    if (!found.never.empty()) lines += w("No measurement tells apart:\n") + lines_of(found.never, w);
    if (!found.only_wide_angle.empty()) lines += w("Told apart at a wide-angle joint only:\n") + lines_of(found.only_wide_angle, w);
    return lines;
}

}  // namespace shaftcut
