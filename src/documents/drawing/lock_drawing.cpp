#include "drawing/lock_drawing.hpp"

#include <string>

#include "drawing/joint_drawing.hpp"

namespace shaftcut {
namespace {

constexpr double hub_half = 3.4, stub_half = 1.5, hub_from = -3, hub_to = 7, groove = 1.5;

// Places by their distance from the middle of the picture, right and up.
class LockDrawing {
public:
    LockDrawing(Canvas& canvas, Rect picture) : canvas_(canvas), middle_{picture.x + picture.width / 2, picture.y + picture.height / 2 + 1} {}

    Point at(double right, double up) const { return {middle_.x + right, middle_.y - up}; }
    void block(double from, double to, double up, double down, Fill fill = Fill::white) { canvas_.shape({at(from, up), at(to, up), at(to, down), at(from, down)}, pen::guard, fill); }
    void disc(double right, double up, double radius, Fill fill = Fill::white) { canvas_.disc(at(right, up), radius, fill, pen::guard); }
    void wedge(double right, double half_top, double half_foot, double up, double down) { canvas_.shape({at(right - half_top, up), at(right + half_top, up), at(right + half_foot, down), at(right - half_foot, down)}, pen::guard, Fill::black); }
    void line(Point from, Point to) { canvas_.line(from, to, pen::dimension); }
    void dashed(Point from, Point to) { canvas_.line(from, to, pen::guard, {1, 0.7}); }
    void arrow(Point from, Point tip) { line(from, tip); draw_arrow(canvas_, from, tip); }
    void question(const std::string& mark) { canvas_.text(at(2, hub_half + 1), mark, lettering::name, Align::centre); }

    // The stub, and the hub on it with its fork to the right.
    void coupled()
    {
        block(-9, hub_from, stub_half, -stub_half);
        block(hub_from, hub_to, hub_half, -hub_half);
        block(hub_to, hub_to + 2.5, hub_half + 1, hub_half - 1.2);
        block(hub_to, hub_to + 2.5, -hub_half + 1.2, -hub_half - 1);
        for (const double side : {1.0, -1.0}) dashed(at(hub_from, side * stub_half), at(hub_to - 1, side * stub_half));
    }

private:
    Canvas& canvas_;
    Point middle_;
};

void draw_collar(LockDrawing& drawing, bool covered)
{
    drawing.block(hub_from - 0.6, groove + 0.6, hub_half + 1.1, -hub_half - 1.1);
    for (const double along : {-2.0, -0.4, 1.0}) drawing.line(drawing.at(along, hub_half + 0.6), drawing.at(along, -hub_half - 0.6));
    if (!covered) {
        drawing.arrow(drawing.at(groove + 1, hub_half + 2.6), drawing.at(groove - 5, hub_half + 2.6));
        return;
    }
    for (const double side : {1.0, -1.0}) drawing.dashed(drawing.at(hub_from - 1.6, side * (hub_half + 2.2)), drawing.at(hub_to + 2.5, side * (hub_half + 2.2)));
    drawing.dashed(drawing.at(hub_from - 1.6, hub_half + 2.2), drawing.at(hub_from - 1.6, -hub_half - 2.2));
}

void draw_push_pin(LockDrawing& drawing, bool sunk)
{
    if (sunk) for (const double side : {-1.0, 1.0}) drawing.block(groove + side * 2.2 - 0.7, groove + side * 2.2 + 0.7, hub_half + 2.2, hub_half);
    drawing.block(groove - 1, groove + 1, hub_half + (sunk ? 1.4 : 2.6), -0.4, Fill::black);
}

void draw_flange(LockDrawing& drawing)
{
    drawing.block(-9, -0.8, stub_half, -stub_half);
    drawing.block(-1.6, 0, 5, -5);
    drawing.block(0, 1.6, 5, -5);
    drawing.block(1.6, 6, hub_half - 1, -hub_half + 1);
    for (const double side : {1.0, -1.0}) drawing.block(-2.8, 2.8, side * 3.6 + 0.7, side * 3.6 - 0.7, Fill::black);
}

}  // namespace

void draw_lock(Canvas& canvas, Rect picture, Lock lock)
{
    LockDrawing drawing(canvas, picture);
    if (lock == Lock::flange) {
        draw_flange(drawing);
        return;
    }
    drawing.coupled();
    switch (lock) {
    case Lock::exposed_collar: draw_collar(drawing, false); break;
    case Lock::covered_collar: draw_collar(drawing, true); break;
    case Lock::exposed_push_pin: draw_push_pin(drawing, false); break;
    case Lock::shrouded_push_pin: draw_push_pin(drawing, true); break;
    case Lock::clamp_bolt:
        drawing.line(drawing.at(hub_from, -2.4), drawing.at(hub_to, -2.4));
        drawing.disc(groove, -1.6, 1.5, Fill::black);
        break;
    case Lock::tapered_clamp: drawing.wedge(groove, 2.2, 0.9, hub_half + 1.4, -hub_half - 0.8); break;
    case Lock::flange:
    case Lock::unknown: drawing.question("?"); break;
    }
}

}  // namespace shaftcut
