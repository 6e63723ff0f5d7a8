#include "drawing/joint_drawing.hpp"

#include <algorithm>
#include <cmath>

namespace shaftcut {
namespace {

void draw_cross(Canvas& canvas, const Frame& frame, double along)
{
    const Point centre = frame.at(along, 0);
    canvas.disc(centre, cross_radius, Fill::white, pen::outline);
    canvas.line({centre.x - cross_radius, centre.y}, {centre.x + cross_radius, centre.y}, pen::guard);
    canvas.line({centre.x, centre.y - cross_radius}, {centre.x, centre.y + cross_radius}, pen::guard);
}

}  // namespace

void draw_joint(Canvas& canvas, const Frame& frame, double outer, double inner)
{
    canvas.shape({frame.at(outer - 12, 4), frame.at(outer - 6, 4), frame.at(outer + 1, 2.6), frame.at(outer + 1, -2.6),
                  frame.at(outer - 6, -4), frame.at(outer - 12, -4)}, pen::outline, Fill::white);
    canvas.shape({frame.at(inner - 1, 2.6), frame.at(inner + 6, 4), frame.at(inner + yoke, 4), frame.at(inner + yoke, -4),
                  frame.at(inner + 6, -4), frame.at(inner - 1, -2.6)}, pen::outline, Fill::white);
    if (inner > outer)
        canvas.shape({frame.at(outer - 4, 6), frame.at(inner + 4, 6), frame.at(inner + 4, -6), frame.at(outer - 4, -6)},
                     pen::outline, Fill::white);
    draw_cross(canvas, frame, outer);
    if (inner > outer) draw_cross(canvas, frame, inner);
}

void draw_guard_walls(Canvas& canvas, const Frame& frame, double inner_cross, double end, double out, double wall)
{
    const double in = out - wall, bell = inner_cross + 4, neck = inner_cross + yoke + 5;
    for (const double side : {1.0, -1.0})
        canvas.shape({frame.at(bell, side * (out + 1.6)), frame.at(neck, side * out), frame.at(end, side * out), frame.at(end, side * in),
                      frame.at(neck, side * in), frame.at(bell, side * (in + 1.6))}, pen::guard, Fill::white);
}

void draw_break(Canvas& canvas, const Frame& frame, double along, double reach)
{
    const auto edge = [&](double offset) {
        return std::vector<Point>{frame.at(along + offset + 1.5, reach), frame.at(along + offset, reach / 3),
                                  frame.at(along + offset + 1.5, -reach / 3), frame.at(along + offset, -reach)};
    };
    std::vector<Point> gap = edge(0);
    std::vector<Point> far = edge(3.2);
    canvas.path(gap, pen::dimension);
    canvas.path(far, pen::dimension);
    gap.insert(gap.end(), far.rbegin(), far.rend());
    canvas.shape(gap, 0, Fill::white);
    canvas.path(edge(0), pen::dimension);
    canvas.path(edge(3.2), pen::dimension);
}

Rect along_axis(const Frame& frame, double from, double to, double above, double below)
{
    const double left = std::min(frame.x(from), frame.x(to));
    return {left, frame.axis() - above, std::abs(to - from), above - below};
}

}  // namespace shaftcut
