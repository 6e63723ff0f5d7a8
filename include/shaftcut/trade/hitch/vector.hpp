// Vectors of three numbers: points in millimetres, or directions.
// In a machine's frame x runs rearwards, y to the right of the direction of travel and z up.
#pragma once

#include <cmath>

namespace shaftcut {

struct Vector {
    double x = 0;
    double y = 0;
    double z = 0;
};

constexpr Vector operator+(Vector a, Vector b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
constexpr Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
constexpr Vector operator*(double factor, Vector a) { return {factor * a.x, factor * a.y, factor * a.z}; }

constexpr double dot(Vector a, Vector b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
constexpr Vector cross(Vector a, Vector b) { return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x}; }

inline double size(Vector a) { return std::sqrt(dot(a, a)); }

// `a` must not be zero.
inline Vector unit(Vector a) { return 1.0 / size(a) * a; }

// The angle between two directions, 0 to pi radians; as exact near 0 and pi as elsewhere.
inline double angle_between(Vector a, Vector b) { return std::atan2(size(cross(a, b)), dot(a, b)); }

}  // namespace shaftcut
