#include "hitch/quadratic.hpp"

#include <cmath>
#include <optional>
#include <utility>

namespace shaftcut {
namespace {

// Where each variable is held while the others are free.
enum class Held { low, high, free };

using Rows = std::array<std::array<double, 4>, 3>;

// Gauss elimination with pivots; empty where the rows do not decide.
std::optional<Point> solved(Rows rows)
{
    for (std::size_t i = 0; i < 3; ++i) {
        std::size_t pivot = i;
        for (std::size_t r = i + 1; r < 3; ++r)
            if (std::abs(rows[r][i]) > std::abs(rows[pivot][i])) pivot = r;
        if (std::abs(rows[pivot][i]) < 1e-300) return std::nullopt;
        std::swap(rows[i], rows[pivot]);
        for (std::size_t r = 0; r < 3; ++r) {
            if (r == i) continue;
            const double factor = rows[r][i] / rows[i][i];
            for (std::size_t c = i; c < 4; ++c) rows[r][c] -= factor * rows[i][c];
        }
    }
    return Point{rows[0][3] / rows[0][0], rows[1][3] / rows[1][1], rows[2][3] / rows[2][2]};
}

// The stationary point with some variables held; empty where it lies outside the box.
std::optional<Point> stationary(const Quadratic& model, const std::array<Held, 3>& held, const Point& low, const Point& high)
{
    Rows rows{};
    for (std::size_t i = 0; i < 3; ++i) {
        if (held[i] == Held::free) {
            for (std::size_t j = 0; j < 3; ++j) rows[i][j] = model.curvature[i][j];
            rows[i][3] = -model.slope[i];
        } else {
            rows[i][i] = 1;
            rows[i][3] = (held[i] == Held::low ? low[i] : high[i]) - model.centre[i];
        }
    }
    const auto step = solved(rows);
    if (!step) return std::nullopt;
    Point point{};
    for (std::size_t i = 0; i < 3; ++i) {
        point[i] = held[i] == Held::low ? low[i] : held[i] == Held::high ? high[i] : model.centre[i] + (*step)[i];
        if (!(point[i] >= low[i] && point[i] <= high[i])) return std::nullopt;
    }
    return point;
}

}  // namespace

double value_at(const Quadratic& model, const Point& point)
{
    double value = model.value;
    for (std::size_t i = 0; i < 3; ++i) {
        const double d = point[i] - model.centre[i];
        value += model.slope[i] * d;
        for (std::size_t j = 0; j < 3; ++j) value += model.curvature[i][j] * d * (point[j] - model.centre[j]) / 2;
    }
    return value;
}

Point greatest_within(const Quadratic& model, const Point& low, const Point& high)
{
    Point best = low;
    for (int face = 0; face < 27; ++face) {
        const std::array<Held, 3> held{Held(face % 3), Held(face / 3 % 3), Held(face / 9)};
        bool repeated = false;  // a variable that cannot move is held low only
        for (std::size_t i = 0; i < 3; ++i) repeated = repeated || (low[i] == high[i] && held[i] != Held::low);
        if (repeated) continue;
        const auto point = stationary(model, held, low, high);
        if (point && value_at(model, *point) > value_at(model, best)) best = *point;
    }
    return best;
}

}  // namespace shaftcut
