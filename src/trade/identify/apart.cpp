#include "identify/apart.hpp"

#include <algorithm>
#include <cmath>

#include "identify/candidates.hpp"
#include "identify/priors.hpp"

namespace shaftcut::identifying {
namespace {

// Standard deviation of measured − stated at the usual ±, wear and dirt with it.
double spread_of(const SizeLaw& law)
{
    const double mean = law.wear_sign * (law.worn * law.wear - law.dirty * law.dirt);
    const double reading = (law.plus_minus * law.plus_minus + law.tolerance * law.tolerance) / 4;
    return std::sqrt(reading + 2 * law.worn * law.wear * law.wear + 2 * law.dirty * law.dirt * law.dirt - mean * mean);
}

void add(StatedFigures& all, const IdentifyingFigure& what, std::optional<Length> size) { all.push_back({what, size, spread_of(law_of(size_kind(what)))}); }

void add_cross(StatedFigures& all, const Cross* cross, std::optional<CrossPlace> place)
{
    IdentifyingFigure what{IdentifiedPart::tractor, IdentifyingKind::cap, place, CapPair::first, {}, false};
    add(all, what, cross ? std::optional(cross->cap) : std::nullopt);
    what.kind = IdentifyingKind::span;
    add(all, what, cross ? std::optional(cross->span) : std::nullopt);
}

struct Distance {
    IdentifyingFigure what;
    double by;
};

// v of a figure; nothing where they cannot be compared by it.
std::optional<double> distance_by(const StatedFigure& a, const StatedFigure& b, bool with_wide_angle)
{
    if (!a.size || !b.size || (!with_wide_angle && only_wide_angle(a.what))) return std::nullopt;
    return std::abs((*a.size - *b.size).mm()) / a.deviation;
}

std::vector<Distance> distances(const StatedFigures& a, const StatedFigures& b, bool with_wide_angle)
{
    std::vector<Distance> all;
    for (std::size_t i = 0; i < a.size(); ++i)
        if (const auto by = distance_by(a[i], b[i], with_wide_angle)) all.push_back({a[i].what, *by});
    return all;
}

// The easiest to measure of those that tell them apart by themselves, of these the farthest apart; else the fewest together.
std::vector<IdentifyingFigure> fewest(std::vector<Distance> all)
{
    const auto minutes = [](const Distance& one) { return minutes_of(effort_of(one.what)); };
    std::stable_sort(all.begin(), all.end(), [](const Distance& a, const Distance& b) { return a.by > b.by; });
    const auto alone = std::find_if(all.begin(), all.end(), [](const Distance& one) { return one.by < told_apart; });
    if (alone != all.begin())
        return {std::min_element(all.begin(), alone, [&](const Distance& a, const Distance& b) { return minutes(a) < minutes(b); })->what};
    std::vector<IdentifyingFigure> by;
    double sum = 0;
    for (const Distance& one : all) {
        by.push_back(one.what);
        sum += one.by * one.by;
        if (sum >= told_apart * told_apart) return by;
    }
    return {};
}

}  // namespace

bool only_wide_angle(const IdentifyingFigure& figure) { return figure.cross || figure.kind == IdentifyingKind::spacing; }

StatedFigures stated_figures(const Series& series)
{
    StatedFigures all;
    add_cross(all, series.crosses.size() == 1 ? &series.crosses[0] : nullptr, {});
    const auto& wide = series.wide_angle;
    add(all, {IdentifiedPart::tractor, IdentifyingKind::spacing, {}, CapPair::first, {}, false}, wide ? std::optional(wide->spacing) : std::nullopt);
    const bool crosses = wide && !wide->crosses.empty();
    add_cross(all, crosses ? &wide->crosses.front() : nullptr, CrossPlace::inner);
    add_cross(all, crosses ? &wide->crosses.back() : nullptr, CrossPlace::outer);
    for (const Tube tube : both_tubes) {
        add(all, {IdentifiedPart::tubes, IdentifyingKind::width, {}, CapPair::first, tube, false}, series.halves[tube].width);
        add(all, {IdentifiedPart::tubes, IdentifyingKind::wall, {}, CapPair::first, tube, false}, series.halves[tube].wall);
    }
    return all;
}

Apart apart(const StatedFigures& a, const StatedFigures& b, bool with_wide_angle)
{
    const auto all = distances(a, b, with_wide_angle);
    double sum = 0;
    for (const Distance& one : all) sum += one.by * one.by;
    return {std::sqrt(sum), sum < told_apart * told_apart ? std::vector<IdentifyingFigure>{} : fewest(all)};
}

bool are_apart(const StatedFigures& a, const StatedFigures& b, bool with_wide_angle)
{
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        const double by = distance_by(a[i], b[i], with_wide_angle).value_or(0);
        sum += by * by;
        if (sum >= told_apart * told_apart) return true;
    }
    return false;
}

bool state_the_same(const StatedFigures& a, const StatedFigures& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const StatedFigure& one, const StatedFigure& two) { return one.size.has_value() == two.size.has_value(); });
}

}  // namespace shaftcut::identifying
