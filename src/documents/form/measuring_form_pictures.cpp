// Small pictures, not to scale: a mounted machine from the side, a trailed one from above, and the angle of a joint.
//
// What a range of positions spans is drawn solid at the one end and dashed at the others.
#include <cmath>

#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double solid = 0.5, dashed = 0.35, shaft_width = 0.9, pi = 3.14159265358979323846;

struct Stroke {
    double width;
    bool dashes;
};
constexpr Stroke full{solid, false}, other_end{dashed, true};

// Places in a picture, turned by `degrees` clockwise about `origin`.
struct Pose {
    Point origin;
    double degrees = 0;

    Point at(double x, double y) const
    {
        const double angle = degrees * pi / 180;
        return {origin.x + x * std::cos(angle) - y * std::sin(angle), origin.y + x * std::sin(angle) + y * std::cos(angle)};
    }
};

void draw_outline(Canvas& canvas, const std::vector<Point>& corners, Stroke stroke)
{
    if (!stroke.dashes) {
        canvas.shape(corners, stroke.width, Fill::none);
        return;
    }
    for (std::size_t i = 0; i < corners.size(); ++i) canvas.line(corners[i], corners[(i + 1) % corners.size()], stroke.width, {1.2, 0.9});
}

std::vector<Point> box_in(const Pose& pose, double left, double top, double right, double bottom)
{
    return {pose.at(left, top), pose.at(right, top), pose.at(right, bottom), pose.at(left, bottom)};
}

void draw_link(Canvas& canvas, Point from, Point to, Stroke stroke)
{
    if (stroke.dashes) canvas.line(from, to, stroke.width, {1.2, 0.9});
    else canvas.line(from, to, stroke.width);
}

// The shaft with its two crosses.
void draw_drive(Canvas& canvas, Point from, Point to, Stroke stroke)
{
    draw_link(canvas, from, to, stroke.dashes ? stroke : Stroke{shaft_width, false});
    if (stroke.dashes) return;
    for (const Point& cross : {from, to}) canvas.disc(cross, 1, Fill::white, solid);
}

// From the side: the machine on its links, its input `height` above the PTO stub.
void draw_mounted_at(Canvas& canvas, Point stub, double height, Stroke stroke)
{
    const Pose machine{{stub.x + 14, stub.y - height}, 0};
    draw_outline(canvas, box_in(machine, 1.5, -4, 14, 3.2), stroke);
    draw_link(canvas, machine.at(4, 3.2), machine.at(4, 5.8), stroke);
    draw_link(canvas, machine.at(11.5, 3.2), machine.at(11.5, 5.8), stroke);
    draw_link(canvas, {stub.x - 2.5, stub.y + 3}, machine.at(1.5, 2.6), stroke);
    draw_drive(canvas, stub, machine.at(0.4, 0), stroke);
}

// From above: the machine turned about the pin, which lies behind the stub.
void draw_trailed_at(Canvas& canvas, Point stub, double turn, Stroke stroke)
{
    const Pose machine{{stub.x + 4.5, stub.y}, turn};
    draw_link(canvas, machine.at(0, 0), machine.at(7, -3.4), stroke);
    draw_link(canvas, machine.at(0, 0), machine.at(7, 3.4), stroke);
    draw_outline(canvas, box_in(machine, 7, -5, 17, 5), stroke);
    draw_outline(canvas, box_in(machine, 11, -7.4, 15.5, -5.6), stroke);
    draw_outline(canvas, box_in(machine, 11, 5.6, 15.5, 7.4), stroke);
    draw_drive(canvas, stub, machine.at(6, 0), stroke);
}

void draw_tractor_from_side(Canvas& canvas, Rect picture, Point stub)
{
    const double ground = picture.bottom() - 0.6, wheel = 7.6;
    canvas.line({picture.x, ground}, {picture.right(), ground}, dashed);
    canvas.shape({{picture.x, stub.y - 12}, {picture.x + 5, stub.y - 12}, {picture.x + 6, stub.y - 4}, {stub.x - 2, stub.y - 3}, {stub.x - 2, stub.y + 3},
                  {picture.x, stub.y + 3}}, solid, Fill::white);
    canvas.disc({picture.x + wheel, ground - wheel}, wheel - 0.3, Fill::white, solid);
    canvas.disc({picture.x + wheel, ground - wheel}, 2.6, Fill::none, solid);
}

void draw_tractor_from_above(Canvas& canvas, Rect picture, Point stub)
{
    canvas.box({picture.x, stub.y - 2.6, stub.x - 1.6 - picture.x, 5.2}, solid);
    canvas.box({picture.x + 2, stub.y - 7, 8.5, 3.2}, solid, Fill::black);
    canvas.box({picture.x + 2, stub.y + 3.8, 8.5, 3.2}, solid, Fill::black);
}

}  // namespace

void draw_mounted(Canvas& canvas, Rect picture, Position position)
{
    canvas.begin(Part::figure);
    const Point stub{picture.x + 17.5, picture.bottom() - 9};
    draw_tractor_from_side(canvas, picture, stub);
    switch (position) {
    case Position::shortest:
        draw_mounted_at(canvas, stub, 11, other_end);
        draw_mounted_at(canvas, stub, -2, other_end);
        draw_mounted_at(canvas, stub, 0, full);
        break;
    case Position::working: draw_mounted_at(canvas, stub, -1, full); break;
    case Position::turning:
        draw_mounted_at(canvas, stub, -2, other_end);
        draw_mounted_at(canvas, stub, 6, full);
        break;
    case Position::standing:
        draw_mounted_at(canvas, stub, -2, other_end);
        draw_mounted_at(canvas, stub, 11, full);
        break;
    }
}

void draw_trailed(Canvas& canvas, Rect picture, Position position)
{
    canvas.begin(Part::figure);
    const Point stub{picture.x + 14.5, picture.y + 8};
    draw_tractor_from_above(canvas, picture, stub);
    switch (position) {
    case Position::shortest:
        draw_trailed_at(canvas, stub, 0, other_end);
        draw_trailed_at(canvas, stub, 65, full);
        break;
    case Position::working: draw_trailed_at(canvas, stub, 0, full); break;
    case Position::turning:
        draw_trailed_at(canvas, stub, 40, other_end);
        draw_trailed_at(canvas, stub, 0, full);
        break;
    case Position::standing:
        draw_trailed_at(canvas, stub, 65, other_end);
        draw_trailed_at(canvas, stub, 0, full);
        break;
    }
    canvas.disc({stub.x + 4.5, stub.y}, 0.9, Fill::black);
}

void draw_angle_picture(Canvas& canvas, Rect picture, const Wording& w)
{
    canvas.begin(Part::figure);
    const Point cross{picture.x + 15, picture.bottom() - 8};
    const Pose stub{cross, 0}, tube{cross, -28};
    canvas.shape(box_in(stub, -15, -2.2, -1, 2.2), pen::outline, Fill::white);
    canvas.shape(box_in(tube, 1, -2.6, 27, 2.6), pen::outline, Fill::white);
    canvas.disc(cross, cross_radius, Fill::white, pen::outline);
    canvas.line(stub.at(4, 0), stub.at(28, 0), pen::axis, {6, 1.2, 0.8, 1.2});
    std::vector<Point> arc;
    for (int degrees = 0; degrees >= -28; degrees -= 4) arc.push_back(Pose{cross, static_cast<double>(degrees)}.at(21, 0));
    canvas.path(arc, pen::dimension);
    canvas.text({cross.x + 23, cross.y - 3.4}, say(AngleCaption::angle, w), lettering::note);
    canvas.text({picture.x, cross.y + 5.6}, say(AngleCaption::stub, w), lettering::note);
    canvas.text({cross.x + 6, cross.y - 9.5}, say(AngleCaption::tube, w), lettering::note, Align::right);
}

}  // namespace shaftcut::measuring_form
