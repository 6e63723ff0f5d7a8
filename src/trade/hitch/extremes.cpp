#include "shaftcut/trade/hitch/extremes.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "hitch/quadratic.hpp"
#include "hitch/shafts_on_grid.hpp"

namespace shaftcut {
namespace {

// Inside this file positions run from -1 to 1 in each movement, so that one step size suits degrees and millimetres.
constexpr double widest_probe = 1e-3;
constexpr double narrowest_reach = 1e-7;
constexpr double negligible_gain = 1e-12;  // of the value
constexpr double worth_climbing = 0.1;     // of the difference between the grid's greatest and least values
constexpr double same_height = 1e-9;       // of the value: of two such hills the first is taken
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

    double operator()(const Point& scaled) { return taken(scaled, function_(position(scaled))); }

    double taken(const Point& scaled, const std::optional<double>& value)
    {
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

// A grid point's steps along the three movements, or how many there are.
using Steps = std::array<int, 3>;

struct Hill {
    Point at{};
    double value = 0;
};

double tolerance(double value)
{
    return negligible_gain * std::abs(value) + 1e-16;
}

// Steps from 1 to -1: from the positive end of each movement, so that of two mirrored hills the positive one comes first.
std::vector<Point> scaled_grid(const Steps& points)
{
    const auto coordinate = [&](std::size_t i, int step) { return points[i] < 2 ? 0.0 : 1.0 - 2.0 * step / (points[i] - 1); };
    std::vector<Point> grid;
    for (int i = 0; i < points[0]; ++i)
        for (int j = 0; j < points[1]; ++j)
            for (int k = 0; k < points[2]; ++k) grid.push_back({coordinate(0, i), coordinate(1, j), coordinate(2, k)});
    return grid;
}

std::vector<Hill> hills_on(Search& search, const Steps& points, const std::vector<std::optional<double>>& values)
{
    const std::vector<Point> grid = scaled_grid(points);
    std::vector<Hill> hills;
    for (std::size_t i = 0; i < grid.size(); ++i) hills.push_back({grid[i], search.taken(grid[i], values[i])});
    return hills;
}

int index_of(const Steps& steps, const Steps& points)
{
    return (steps[0] * points[1] + steps[1]) * points[2] + steps[2];
}

Steps steps_of(int index, const Steps& points)
{
    return {index / (points[1] * points[2]), index / points[2] % points[1], index % points[2]};
}

// From a step's neighbour before to its neighbour after; at an end of the movement only itself.
struct Neighbours {
    int first;
    int last;
    Neighbours(int step, int points) : first(step), last(step)
    {
        if (step == 0 || step == points - 1) return;
        first = step - 1;
        last = step + 1;
    }
};

// No neighbour on the same face, edge or corner exceeds grid point `index`, and none before it equals it. A ridge that runs
// askew to the grid can have a second hill at the other end of a movement, which only the neighbours on that end tell.
bool is_top(const std::vector<Hill>& hills, const Steps& points, int index)
{
    const Steps steps = steps_of(index, points);
    const double value = hills[static_cast<std::size_t>(index)].value;
    const Neighbours a(steps[0], points[0]), b(steps[1], points[1]), c(steps[2], points[2]);
    for (int i = a.first; i <= a.last; ++i)
        for (int j = b.first; j <= b.last; ++j)
            for (int k = c.first; k <= c.last; ++k) {
                const int other = index_of({i, j, k}, points);
                const double excess = hills[static_cast<std::size_t>(other)].value - value;
                if (excess > tolerance(value) || (other < index && excess >= -tolerance(value))) return false;
            }
    return true;
}

bool lower(const Hill& a, const Hill& b)
{
    return a.value < b.value;
}

// The highest grid point, and every top that is not so far below it that it cannot hide a higher hill between the points.
std::vector<Hill> worth_a_climb(const std::vector<Hill>& hills, const Steps& points)
{
    const auto [least, most] = std::minmax_element(hills.begin(), hills.end(), lower);
    const double enough = most->value - worth_climbing * (most->value - least->value);
    std::vector<Hill> starts;
    for (int index = 0; index < static_cast<int>(hills.size()); ++index) {
        const Hill& hill = hills[static_cast<std::size_t>(index)];
        if (&hill == &*most || (hill.value >= enough && is_top(hills, points, index))) starts.push_back(hill);
    }
    return starts;
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
            const double both = search(shifted(shifted(centre, i, probe), j, probe)) +
                                search(shifted(shifted(centre, i, -probe), j, -probe));
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

// Steps to the top of quadratics fitted ever closer; the reach of a step grows while it gains and shrinks while not. It ends where neither the
// function nor the quadratic has anything to gain within the reach: a closer fit is no surer of that than this one, whose probes are small.
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
        const double gain = value - hill.value, promised = value_at(model, top) - value_at(model, hill.at);
        if (gain > 0) hill = {top, value};
        if (gain <= tolerance(value) && promised <= tolerance(value)) break;
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

std::vector<Point> grid_of(const Box& box)
{
    std::vector<Point> grid = scaled_grid(box.points);
    for (Point& at : grid)
        for (std::size_t i = 0; i < 3; ++i) at[i] = box.middle[i] + at[i] * box.half[i];
    return grid;
}

Greatest greatest(const BoxFunction& function, const Box& box)
{
    std::vector<std::optional<double>> on_grid;
    for (const Point& at : grid_of(box)) on_grid.push_back(function(at));
    return greatest(function, box, on_grid);
}

Greatest greatest(const BoxFunction& function, const Box& box, const std::vector<std::optional<double>>& on_grid)
{
    Search search(function, box);
    const std::vector<Hill> starts = worth_a_climb(hills_on(search, box.points, on_grid), box.points);
    const double spacing = 2.0 / (*std::max_element(box.points.begin(), box.points.end()) + 1);
    Hill best = climbed(search, starts.front(), spacing);
    for (std::size_t i = 1; i < starts.size() && !search.failed(); ++i) {
        const Hill hill = climbed(search, starts[i], spacing);
        if (hill.value > best.value + same_height * std::abs(best.value)) best = hill;
    }
    best = tidied(search, best);
    if (search.failed()) return {search.position(search.failed_at()), std::nullopt};
    return {search.position(best.at), best.value};
}

}  // namespace shaftcut
