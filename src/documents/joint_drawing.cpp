#include "joint_drawing.hpp"

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

Rect along_axis(const Frame& frame, double from, double to, double above, double below)
{
    const double left = std::min(frame.x(from), frame.x(to));
    return {left, frame.axis() - above, std::abs(to - from), above - below};
}

}  // namespace shaftcut
