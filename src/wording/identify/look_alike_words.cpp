#include "identify/look_alike_words.hpp"

#include <algorithm>
#include <vector>

namespace shaftcut {
namespace {

// So many lines of a list, and names on each: more nobody reads, and of some thousands of series that are alike there would be millions.
constexpr std::size_t most_lines = 20, most_named = 8;

std::string line_of(const std::vector<LookAlike>& pairs, std::size_t from, std::size_t to, const Catalogue& catalogue, const Wording& w)
{
    std::vector<std::string> others;
    for (std::size_t i = from; i < std::min(to, from + most_named); ++i) others.push_back(catalogue.series[pairs[i].series[1]].name);
    const std::size_t more = to - from - others.size();
    if (more > 0) others.push_back(w("{count} more", {{"count", more}}));
    return w("  {series}: {others}\n", {{"series", catalogue.series[pairs[from].series[0]].name}, {"others", w.all_of(others)}});
}

// The pairs by their first series, in the catalogue's order.
std::string lines_of(const std::vector<LookAlike>& pairs, const Catalogue& catalogue, const Wording& w)
{
    std::string text;
    std::size_t lines = 0;
    for (std::size_t from = 0, to = 0; from < pairs.size(); from = to, ++lines) {
        while (to < pairs.size() && pairs[to].series[0] == pairs[from].series[0]) ++to;
        if (lines < most_lines) text += line_of(pairs, from, to, catalogue, w);
    }
    if (lines > most_lines) text += w("  and as much of {count} more series\n", {{"count", lines - most_lines}});
    return text;
}

}  // namespace

std::string look_alike_lines(const LookAlikes& found, const Catalogue& catalogue, const Wording& w)
{
    std::string lines;
    if (!found.never.empty()) lines += w("No measurement tells apart:\n") + lines_of(found.never, catalogue, w);
    if (!found.only_wide_angle.empty()) lines += w("Told apart at a wide-angle joint only:\n") + lines_of(found.only_wide_angle, catalogue, w);
    return lines;
}

}  // namespace shaftcut
