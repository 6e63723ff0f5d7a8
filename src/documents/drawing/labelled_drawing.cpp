#include "drawing/labelled_drawing.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace shaftcut {
namespace {

constexpr double padding = 0.9, leader_from = 3.2, beside_anchor = 0.8;
constexpr std::array distances{1.5, 2.5, 4.0, 6.0, 8.0, 10.5, 13.0, 16.0, 19.0, 23.0, 27.0, 32.0};
constexpr int directions = 24;

// Whether a straight line meets the inside of a box: clipped by each side in turn (Liang and Barsky).
bool meets(Point a, Point b, const Rect& box)
{
    double from = 0, to = 1;
    const auto clip = [&](double step, double room) {
        if (step == 0) return room > 0;
        const double at = room / step;
        if (step < 0) from = std::max(from, at);
        else to = std::min(to, at);
        return from < to;
    };
    return clip(a.x - b.x, a.x - box.x) && clip(b.x - a.x, box.right() - a.x) && clip(a.y - b.y, a.y - box.y) && clip(b.y - a.y, box.bottom() - a.y);
}

bool overlap(const Rect& a, const Rect& b)
{
    return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom();
}

Rect padded(const Rect& box, double by)
{
    return {box.x - by, box.y - by, box.width + 2 * by, box.height + 2 * by};
}

Point nearest_on(const Rect& box, Point to)
{
    return {std::clamp(to.x, box.x, box.right()), std::clamp(to.y, box.y, box.bottom())};
}

}  // namespace

void LabelledDrawing::line(Point from, Point to, double width, std::initializer_list<double> dashes)
{
    canvas_.line(from, to, width, dashes);
    lines_.emplace_back(from, to);
}

void LabelledDrawing::path(const std::vector<Point>& points, double width)
{
    canvas_.path(points, width);
    for (std::size_t i = 1; i < points.size(); ++i) lines_.emplace_back(points[i - 1], points[i]);
}

void LabelledDrawing::disc(Point centre, double radius, Fill fill, double width)
{
    canvas_.disc(centre, radius, fill, width);
    taken_.push_back({centre.x - radius, centre.y - radius, 2 * radius, 2 * radius});
}

void LabelledDrawing::measure(Point from, Point to)
{
    line(from, to, pen::dimension);
    draw_arrow(canvas_, to, from);
    draw_arrow(canvas_, from, to);
}

void LabelledDrawing::text(Point at, const std::string& text, Lettering lettering, Align align)
{
    const Rect box = canvas_.text(at, text, lettering, align);
    taken_.push_back(box);
    labels_.push_back(box);
}

bool LabelledDrawing::free(const Rect& box) const
{
    const Rect wide = padded(box, padding);
    if (box.x < room_.x || box.y < room_.y || box.right() > room_.right() || box.bottom() > room_.bottom()) return false;
    return std::none_of(taken_.begin(), taken_.end(), [&](const Rect& other) { return overlap(wide, other); }) &&
           std::none_of(lines_.begin(), lines_.end(), [&](const auto& one) { return meets(one.first, one.second, wide); });
}

bool LabelledDrawing::crosses_label(Point from, Point to) const
{
    return std::any_of(labels_.begin(), labels_.end(), [&](const Rect& box) { return meets(from, to, padded(box, padding / 2)); });
}

// Whether two lines cross between their ends.
bool LabelledDrawing::crosses_line(Point from, Point to) const
{
    const auto side = [](Point a, Point b, Point c) { return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 0; };
    return std::any_of(lines_.begin(), lines_.end(), [&](const auto& one) {
        return side(from, to, one.first) != side(from, to, one.second) && side(one.first, one.second, from) != side(one.first, one.second, to);
    });
}

bool LabelledDrawing::label_within(Point anchor, const std::string& text, Lettering lettering, bool over_lines, double furthest)
{
    const double width = canvas_.width_of(text, lettering), above = lettering.cap_height * 1.06, height = lettering.cap_height * 1.39;
    for (const double distance : distances) {
        if (distance > furthest) return false;
        for (int i = 0; i < directions; ++i) {
            const double turn = 2 * std::numbers::pi * i / directions - std::numbers::pi / 2;
            const Point to{std::cos(turn), std::sin(turn)};
            const Rect box{anchor.x + to.x * (distance + width / 2) - width / 2, anchor.y + to.y * (distance + height / 2) - height / 2, width, height};
            const Point end = nearest_on(padded(box, 0.5), anchor);
            const double apart = std::hypot(end.x - anchor.x, end.y - anchor.y);
            const bool leader = apart > leader_from;
            if (!free(box) || (leader && crosses_label(anchor, end))) continue;
            // What the label belongs to may pass through its anchor.
            const Point start{anchor.x + (end.x - anchor.x) * beside_anchor / apart, anchor.y + (end.y - anchor.y) * beside_anchor / apart};
            if (!over_lines && apart > beside_anchor && crosses_line(start, end)) continue;
            if (leader) line(anchor, end, pen::axis);
            this->text({box.x, box.y + above}, text, lettering);
            return true;
        }
    }
    return false;
}

bool LabelledDrawing::label(Point anchor, const std::string& text, Lettering lettering)
{
    constexpr double near = 10.5, far = distances.back();
    for (const double furthest : {near, far})
        if (label_within(anchor, text, lettering, false, furthest) || label_within(anchor, text, lettering, true, furthest)) return true;
    return false;
}

}  // namespace shaftcut
