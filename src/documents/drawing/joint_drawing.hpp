// A joint as every document draws it. `Frame` turns distances from the joint's end of a half into places on the page.
#pragma once

#include "page/canvas.hpp"

namespace shaftcut {

inline constexpr double cross_radius = 3;
// From the inner cross to where the tube leaves its yoke.
inline constexpr double yoke = 11;

// A half that lies from left to right, or, mirrored, from right to left.
struct Frame {
    double left = 0, width = 0, top = 0;
    double axis_at = 0;  // below the top
    bool mirrored = false;

    double x(double along) const { return mirrored ? left + width - along : left + along; }
    double axis() const { return top + axis_at; }
    Point at(double along, double above_axis) const { return {x(along), axis() - above_axis}; }
};

// A joint whose crosses lie at these distances along the frame: both the same on a standard joint.
void draw_joint(Canvas& canvas, const Frame& frame, double outer_cross, double inner_cross);

// A guard tube as its two walls in section, opening into a bell over its joint: from the joint's inner cross to its end, `out`
// from the axis to its outside.
inline constexpr double guard_wall = 1.8;
void draw_guard_walls(Canvas& canvas, const Frame& frame, double inner_cross, double end, double out, double wall = guard_wall);

// Two slanted lines across everything within `reach` of the axis: here a length is left out.
void draw_break(Canvas& canvas, const Frame& frame, double along, double reach);

// A box around the axis: how far its top and its bottom are above it.
Rect along_axis(const Frame& frame, double from, double to, double above, double below);

}  // namespace shaftcut
