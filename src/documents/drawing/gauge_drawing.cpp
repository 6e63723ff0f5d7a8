#include "drawing/gauge_drawing.hpp"

#include "drawing/tube_section.hpp"

namespace shaftcut {
namespace {

constexpr double arm_height = 3.2, cap_depth = 3, cap_height = 5, spacer = 3.2;

// Two jaws at these x, from `from` to `to`, and the beam between them at `to`, its arrows towards the jaws.
void draw_jaws(Canvas& canvas, double left, double right, double from, double to)
{
    for (const double x : {left, right}) canvas.line({x, from}, {x, to}, pen::guard);
    const double beam = to > from ? to - 0.8 : to + 0.8;
    canvas.line({left, beam}, {right, beam}, pen::dimension);
    if (right - left < 7) return;
    for (const double x : {left, right}) draw_arrow(canvas, {(left + right) / 2, beam}, {x, beam});
}

// A cross from above: its four arms, a cap on each of the two that are measured.
void draw_cross(Canvas& canvas, Point middle, double half_span)
{
    canvas.box({middle.x - arm_height / 2, middle.y - 6.5, arm_height, 13}, pen::dimension, Fill::white);
    canvas.box({middle.x - half_span, middle.y - arm_height / 2, 2 * half_span, arm_height}, pen::dimension, Fill::white);
    for (const double side : {-1.0, 1.0}) {
        const double outer = middle.x + side * half_span;
        canvas.box({side < 0 ? outer : outer - cap_depth, middle.y - cap_height / 2, cap_depth, cap_height}, pen::outline, Fill::white);
    }
    canvas.disc(middle, 2.6, Fill::white, pen::outline);
}

void draw_span(Canvas& canvas, Point middle)
{
    constexpr double half_span = 9;
    draw_cross(canvas, middle, half_span);
    for (const double side : {-1.0, 1.0}) {
        const double inner = middle.x + side * half_span;
        canvas.box({side < 0 ? inner - spacer : inner, middle.y - spacer / 2, spacer, spacer}, pen::dimension, Fill::black);
    }
    draw_jaws(canvas, middle.x - half_span - spacer, middle.x + half_span + spacer, middle.y - 2.5, middle.y + 9.5);
}

// A cap from its end, the jaws on its outside.
void draw_cap(Canvas& canvas, Point middle)
{
    canvas.disc(middle, 5, Fill::white, pen::outline);
    draw_jaws(canvas, middle.x - 5, middle.x + 5, middle.y - 2, middle.y + 9.5);
}

// A yoke's ear with its bore, the ring that holds the cap deep in it; the inside jaws at the bore's mouth.
void draw_bore(Canvas& canvas, Point middle)
{
    canvas.box({middle.x - 8, middle.y - 1, 16, 10}, pen::outline, Fill::white);
    canvas.disc(middle, 8, Fill::white, pen::outline);
    canvas.disc(middle, 5, Fill::white, pen::outline);
    canvas.disc(middle, 4, Fill::none, pen::axis);
    draw_jaws(canvas, middle.x - 4.6, middle.x + 4.6, middle.y + 1.5, middle.y - 10);
}

void draw_spacing(Canvas& canvas, Point middle)
{
    constexpr double half = 8;
    canvas.box({middle.x - half - 4, middle.y - 5, 2 * half + 8, 10}, pen::outline, Fill::white);
    for (const double side : {-1.0, 1.0}) {
        const Point cross{middle.x + side * half, middle.y};
        canvas.disc(cross, 2.6, Fill::white, pen::outline);
        canvas.line({cross.x, cross.y - 3.6}, {cross.x, cross.y + 9.5}, pen::axis);
        canvas.line({cross.x - 3.4, cross.y}, {cross.x + 3.4, cross.y}, pen::axis);
        draw_arrow(canvas, {middle.x, middle.y + 8.7}, {cross.x, middle.y + 8.7});
    }
    canvas.line({middle.x - half, middle.y + 8.7}, {middle.x + half, middle.y + 8.7}, pen::dimension);
}

// At a free end: one jaw in the tube, one on it.
void draw_wall(Canvas& canvas, Point middle)
{
    canvas.disc(middle, 6.5, Fill::white, pen::outline);
    canvas.disc(middle, 4.6, Fill::white, pen::outline);
    draw_jaws(canvas, middle.x + 4.6, middle.x + 6.5, middle.y - 1.5, middle.y + 9.5);
}

}  // namespace

bool has_gauge_drawing(IdentifyingKind kind)
{
    switch (kind) {
    case IdentifyingKind::cap:
    case IdentifyingKind::cap_in_bore:
    case IdentifyingKind::span:
    case IdentifyingKind::spacing:
    case IdentifyingKind::width:
    case IdentifyingKind::wall: return true;
    default: return false;
    }
}

void draw_gauge(Canvas& canvas, Rect picture, IdentifyingKind kind, std::optional<Shape> shape)
{
    const Point middle{picture.x + picture.width / 2, picture.y + gauge_height / 2};
    switch (kind) {
    case IdentifyingKind::span: return draw_span(canvas, middle);
    case IdentifyingKind::cap: return draw_cap(canvas, middle);
    case IdentifyingKind::cap_in_bore: return draw_bore(canvas, middle);
    case IdentifyingKind::spacing: return draw_spacing(canvas, middle);
    case IdentifyingKind::wall: return draw_wall(canvas, middle);
    case IdentifyingKind::width: return draw_section(canvas, {picture.x, picture.y + 3, picture.width, 14}, shape.value_or(Shape::other));
    default: return;
    }
}

}  // namespace shaftcut
