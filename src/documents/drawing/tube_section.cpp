// Sections of profile tubes, each between the jaws of a calliper: the habits of the trade, drawn by hand and to no maker's drawing.
#include "drawing/tube_section.hpp"

#include <cmath>
#include <numbers>


namespace shaftcut {
namespace {

constexpr double radius = 3.7;

// How far the outline is from the middle in this direction, as a part of the radius.
double outline_at(Shape shape, double angle)
{
    const double lobe = std::abs(std::cos(angle));
    switch (shape) {
    case Shape::lemon: return 0.78 + 0.22 * std::pow(lobe, 12);
    case Shape::star: return 0.84 + 0.16 * std::cos(4 * angle);
    case Shape::triangular: return 0.82 + 0.18 * std::cos(3 * angle);
    case Shape::square: return std::min(1 / std::max(lobe, std::abs(std::sin(angle))), 1.25);
    case Shape::splined: return std::cos(10 * angle) > -0.2 ? 1 : 0.82;
    case Shape::other: break;
    }
    return 1;
}

// From jaw to jaw: the widest of it, or from a flat to the corner that faces it.
struct Jaws {
    double left, right;
};
Jaws jaws_of(Shape shape) { return {-radius * outline_at(shape, std::numbers::pi), radius * outline_at(shape, 0)}; }

void draw_jaws(Canvas& canvas, Point middle, Jaws jaws)
{
    const double foot = middle.y + radius + 2.2;
    for (const double jaw : {jaws.left, jaws.right}) canvas.line({middle.x + jaw, middle.y - 1.8}, {middle.x + jaw, foot}, pen::guard);
    canvas.line({middle.x + jaws.left, foot - 0.8}, {middle.x + jaws.right, foot - 0.8}, pen::dimension);
    draw_arrow(canvas, {middle.x, foot - 0.8}, {middle.x + jaws.left, foot - 0.8});
    draw_arrow(canvas, {middle.x, foot - 0.8}, {middle.x + jaws.right, foot - 0.8});
}

}  // namespace

void draw_section(Canvas& canvas, Rect picture, Shape shape)
{
    const Point middle{picture.x + picture.width / 2, picture.y + radius * 1.3 + 0.6};
    std::vector<Point> outline;
    constexpr int steps = 120;
    for (int i = 0; i < steps; ++i) {
        const double angle = 2 * std::numbers::pi * i / steps, reach = radius * outline_at(shape, angle);
        outline.push_back({middle.x + reach * std::cos(angle), middle.y - reach * std::sin(angle)});
    }
    if (shape == Shape::other) {
        outline.push_back(outline.front());
        for (std::size_t i = 0; i + 1 < outline.size(); i += 6) canvas.path({outline[i], outline[i + 1], outline[i + 2], outline[i + 3]}, pen::dimension);
    } else {
        canvas.shape(outline, pen::outline, Fill::none);
    }
    draw_jaws(canvas, middle, jaws_of(shape));
}

}  // namespace shaftcut
