#include "shaftcut/trade/extremes.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "quadratic.hpp"

namespace shaftcut {
namespace {

// Inside this file positions run from -1 to 1 in each movement, so that one step size suits degrees and millimetres.
constexpr double widest_probe = 1e-3;
constexpr double narrowest_reach = 1e-7;
constexpr double negligible_gain = 1e-12;  // of the value
constexpr int most_steps = 60;

// Carries the first position without an answer through the search.
class Search {
public:
    Search(const BoxFunction& function, const Box& box) : function_(function), box_(box) {}

    bool failed() const { return failed_; }
    const Point& failed_at() const { return failed_at_; }
    bool moves(std::size_t i) const { return box_.half[i] > 0; }

    Point position(const Point& scaled) const
    {
        Point at;
        for (std::size_t i = 0; i < 3; ++i) at[i] = box_.middle[i] + scaled[i] * box_.half[i];
        return at;
    }

    double operator()(const Point& scaled)
    {
        const auto value = function_(position(scaled));
        if (value) return *value;
        if (!failed_) failed_at_ = scaled;
        failed_ = true;
        return 0;
    }

private:
    const BoxFunction& function_;
    const Box& box_;
    bool failed_ = false;
    Point failed_at_{};
};

struct Hill {
    Point at{};
    double value = 0;
};

double tolerance(double value)
{
    return negligible_gain * std::abs(value) + 1e-16;
}

// From the positive end of each movement, so that of two mirrored hills the positive one comes first.
std::vector<Hill> grid(Search& search, const std::array<int, 3>& points)
{
    const auto coordinate = [&](std::size_t i, int step) { return points[i] < 2 ? 0.0 : 1.0 - 2.0 * step / (points[i] - 1); };
    std::vector<Hill> hills;
    for (int i = 0; i < points[0]; ++i)
        for (int j = 0; j < points[1]; ++j)
            for (int k = 0; k < points[2]; ++k) {
                const Point at{coordinate(0, i), coordinate(1, j), coordinate(2, k)};
                hills.push_back({at, search(at)});
            }
    return hills;
}

// No neighbour exceeds grid point `index`, and none before it equals it.
bool is_top(const std::vector<Hill>& hills, const std::array<int, 3>& points, int index)
{
    const int i = index / (points[1] * points[2]);
    const int j = index / points[2] % points[1];
    const int k = index % points[2];
    const double value = hills[static_cast<std::size_t>(index)].value;
    for (int a = std::max(i - 1, 0); a <= std::min(i + 1, points[0] - 1); ++a)
        for (int b = std::max(j - 1, 0); b <= std::min(j + 1, points[1] - 1); ++b)
            for (int c = std::max(k - 1, 0); c <= std::min(k + 1, points[2] - 1); ++c) {
                const int other = (a * points[1] + b) * points[2] + c;
                const double excess = hills[static_cast<std::size_t>(other)].value - value;
                if (excess > tolerance(value) || (other < index && excess >= -tolerance(value))) return false;
            }
    return true;
}

Point shifted(Point at, std::size_t i, double by)
{
    at[i] += by;
    return at;
}

// Central differences about `centre`, in the movements that move.
Quadratic fitted(Search& search, const Point& centre, double probe)
{
    Quadratic model;
    model.centre = centre;
    model.value = search(centre);
    Point ahead{};
    Point behind{};
    for (std::size_t i = 0; i < 3; ++i) {
        if (!search.moves(i)) continue;
        ahead[i] = search(shifted(centre, i, probe));
        behind[i] = search(shifted(centre, i, -probe));
        model.slope[i] = (ahead[i] - behind[i]) / (2 * probe);
        model.curvature[i][i] = (ahead[i] - 2 * model.value + behind[i]) / (probe * probe);
        for (std::size_t j = 0; j < i; ++j) {
            if (!search.moves(j)) continue;
            const double both = search(shifted(shifted(centre, i, probe), j, probe)) + search(shifted(shifted(centre, i, -probe), j, -probe));
            const double each = ahead[i] + behind[i] + ahead[j] + behind[j];
            model.curvature[i][j] = model.curvature[j][i] = (both - each + 2 * model.value) / (2 * probe * probe);
        }
    }
    return model;
}

Point clamped(const Search& search, Point at, double limit)
{
    for (std::size_t i = 0; i < 3; ++i) at[i] = search.moves(i) ? std::clamp(at[i], -limit, limit) : 0;
    return at;
}

// Steps to the top of quadratics fitted ever closer; the reach of a step grows while it gains and shrinks while not.
Hill climbed(Search& search, Hill hill, double reach)
{
    for (int step = 0; step < most_steps && reach > narrowest_reach && !search.failed(); ++step) {
        const double probe = std::min(widest_probe, reach);
        const Quadratic model = fitted(search, clamped(search, hill.at, 1 - probe), probe);
        Point low = hill.at;
        Point high = hill.at;
        for (std::size_t i = 0; i < 3; ++i) {
            low[i] -= reach;
            high[i] += reach;
        }
        const Point top = greatest_within(model, clamped(search, low, 1), clamped(search, high, 1));
        const double value = search(top);
        const double gain = value - hill.value;
        if (gain > 0) hill = {top, value};
        reach = gain > tolerance(value) ? std::min(2 * reach, 1.0) : reach / 8;
    }
    return hill;
}

// Brings a movement to its middle where that changes nothing.
Hill tidied(Search& search, Hill hill)
{
    for (std::size_t i = 0; i < 3; ++i) {
        Point at = hill.at;
        at[i] = 0;
        const double value = search(at);
        if (value >= hill.value - tolerance(value)) hill = {at, value};
    }
    return hill;
}

}  // namespace

Greatest greatest(const BoxFunction& function, const Box& box)
{
    Search search(function, box);
    const std::vector<Hill> hills = grid(search, box.points);
    const double spacing = 2.0 / (*std::max_element(box.points.begin(), box.points.end()) + 1);
    std::optional<Hill> best;
    for (int index = 0; index < static_cast<int>(hills.size()) && !search.failed(); ++index) {
        if (!is_top(hills, box.points, index)) continue;
        const Hill hill = climbed(search, hills[static_cast<std::size_t>(index)], spacing);
        if (!best || hill.value > best->value + 1e-9 * std::abs(best->value)) best = hill;
    }
    if (best) best = tidied(search, *best);
    if (search.failed()) return {search.position(search.failed_at()), std::nullopt};
    return {search.position(best->at), best->value};
}

}  // namespace shaftcut
