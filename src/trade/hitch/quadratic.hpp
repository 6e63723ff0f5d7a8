// A quadratic in three variables and its greatest value on a box: a step of the search in extremes.cpp.
#pragma once

#include <array>

namespace shaftcut {

using Point = std::array<double, 3>;

// value + slope . d + d . curvature d / 2, with d = point - centre.
struct Quadratic {
    Point centre{};
    double value = 0;
    Point slope{};
    std::array<Point, 3> curvature{};
};

double value_at(const Quadratic& model, const Point& point);

// Where the quadratic is greatest between `low` and `high`, exactly: the stationary point of each of the box's faces, edges
// and corners and of its inside that lies on it is compared.
Point greatest_within(const Quadratic& model, const Point& low, const Point& high);

}  // namespace shaftcut
