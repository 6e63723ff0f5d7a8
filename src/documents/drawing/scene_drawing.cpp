#include "drawing/scene_drawing.hpp"

#include <cmath>
#include <numbers>

#include "drawing/captions.hpp"
#include "drawing/labelled_drawing.hpp"

namespace shaftcut::geometry {
namespace {

constexpr double label_margin = 1.2;  // of a cell's labels from its frame
constexpr double stub = 90;       // mm of the machine that a shaft's stub is drawn long
constexpr double most_arc_radius = 9, least_arc_radius = 4, arc_of_tubes = 0.4;  // mm on paper, and part of the tubes drawn

Flat flat(View view, const Vector& point) { return {point.x, view == View::plan ? point.y : point.z}; }

std::vector<Vector> points_of(const MachineScene& scene)
{
    std::vector<Vector> points{scene.pto_groove - stub * Vector{1, 0, 0}, scene.input.groove + stub * scene.input.axis};
    for (const End end : both_ends) points.insert(points.end(), {scene.outer[end], scene.inner[end]});
    if (scene.linkage)
        points.insert(points.end(), {scene.linkage->lower_pivot, scene.linkage->top_pivot, scene.linkage->lower_hitch, scene.linkage->upper_hitch});
    else
        points.push_back(scene.pin);
    return points;
}

class SceneDrawing {
public:
    SceneDrawing(Canvas& canvas, Rect cell, View view, const Extent& extent, double scale, const Wording& w)
        : drawing_(canvas, {cell.x + label_margin, cell.y + head, cell.width - 2 * label_margin, cell.height - head - label_margin}), cell_(cell), view_(view), extent_(extent), scale_(scale), w_(w) {}

    void draw(const MachineScene& scene)
    {
        if (view_ == View::side) draw_ground();
        draw_axes(scene);
        if (scene.linkage) draw_linkage(*scene.linkage);
        else draw_drawbar(scene);
        draw_shaft(scene);
        draw_labels(scene);
    }

private:
    Point at(const Vector& point) const
    {
        const Flat seen = flat(view_, point);
        const double left = cell_.x + (cell_.width - (extent_.right - extent_.left) / scale_) / 2;
        const double bottom = cell_.bottom() - foot;
        return {left + (seen.x - extent_.left) / scale_, bottom - (seen.up - extent_.low) / scale_};
    }

    void draw_ground()
    {
        const double y = at({0, 0, 0}).y;
        drawing_.line({cell_.x + 1, y}, {cell_.right() - 1, y}, pen::guard);
    }

    void draw_axes(const MachineScene& scene)
    {
        const Vector ahead = scene.pto_groove + 3 * stub * Vector{1, 0, 0}, back = scene.input.groove - 3 * stub * scene.input.axis;
        drawing_.line(at(scene.pto_groove), at(ahead), pen::axis, {4, 1, 0.6, 1});
        drawing_.line(at(back), at(scene.input.groove), pen::axis, {4, 1, 0.6, 1});
    }

    void draw_linkage(const Linkage& links)
    {
        const Point lower = at(links.lower_pivot), top = at(links.top_pivot), hitch = at(links.lower_hitch), upper = at(links.upper_hitch);
        drawing_.line(lower, hitch, pen::outline);
        drawing_.line(top, upper, pen::outline);
        drawing_.line(hitch, upper, pen::outline);
        drawing_.line(hitch, at(links.input.groove), pen::dimension, {1.5, 1});
        for (const Point& pivot : {lower, top, hitch, upper}) drawing_.disc(pivot, 0.9, Fill::white, pen::dimension);
        drawing_.measure({hitch.x, at({0, 0, 0}).y}, {hitch.x, hitch.y + 0.9});
    }

    void draw_drawbar(const MachineScene& scene)
    {
        drawing_.line(at(scene.pin), at(scene.input.groove), pen::dimension, {1.5, 1});
        drawing_.disc(at(scene.pin), 1.2, Fill::white, pen::guard);
    }

    // A groove's line square to its shaft.
    void draw_groove(const Vector& groove, const Vector& axis)
    {
        const Point on = at(groove), beyond = at(groove + 100 * axis);
        const double length = std::hypot(beyond.x - on.x, beyond.y - on.y);
        if (length < 0.5) return;
        const Point across{-(beyond.y - on.y) / length * 2, (beyond.x - on.x) / length * 2};
        drawing_.line({on.x - across.x, on.y - across.y}, {on.x + across.x, on.y + across.y}, pen::guard);
    }

    void draw_shaft(const MachineScene& scene)
    {
        const Vector forwards{-1, 0, 0};
        drawing_.line(at(scene.pto_groove), at(scene.pto_groove + stub * forwards), 1.6);
        drawing_.line(at(scene.input.groove), at(scene.input.groove + stub * scene.input.axis), 1.6);
        draw_groove(scene.pto_groove, forwards);
        draw_groove(scene.input.groove, scene.input.axis);
        drawing_.line(at(scene.pto_groove), at(scene.outer[End::tractor]), pen::outline);
        drawing_.line(at(scene.input.groove), at(scene.outer[End::implement]), pen::outline);
        for (const End end : both_ends) drawing_.line(at(scene.outer[end]), at(scene.inner[end]), pen::outline);
        drawing_.line(at(scene.inner[End::tractor]), at(scene.inner[End::implement]), pen::cut_mark);
        for (const End end : both_ends)
            for (const Vector& cross : {scene.outer[end], scene.inner[end]}) drawing_.disc(at(cross), 1.1, Fill::white, pen::guard);
    }

    // From the shaft's axis to the tubes as this view shows them; its middle.
    Point draw_arc(const MachineScene& scene, End end)
    {
        const Point centre = at(scene.outer[end]), inner = at(scene.inner[end]), far = at(scene.inner[other(end)]);
        const Vector axis = end == End::tractor ? Vector{1, 0, 0} : -1 * scene.input.axis;
        const Point axis_point = at(scene.outer[end] + 100 * axis);
        const double from = std::atan2(axis_point.y - centre.y, axis_point.x - centre.x);
        double sweep = std::atan2(far.y - inner.y, far.x - inner.x) - from;
        while (sweep > std::numbers::pi) sweep -= 2 * std::numbers::pi;
        while (sweep < -std::numbers::pi) sweep += 2 * std::numbers::pi;
        const double arc_radius = std::clamp(arc_of_tubes * std::hypot(far.x - inner.x, far.y - inner.y), least_arc_radius, most_arc_radius);
        std::vector<Point> arc;
        constexpr int steps = 12;
        for (int i = 0; i <= steps; ++i) {
            const double turn = from + sweep * i / steps;
            arc.push_back({centre.x + arc_radius * std::cos(turn), centre.y + arc_radius * std::sin(turn)});
        }
        if (std::abs(sweep) > 0.03) drawing_.path(arc, pen::dimension);
        return arc[steps / 2];
    }

    void draw_labels(const MachineScene& scene)
    {
        const bool says_angles = view_ == View::plan || scene.linkage;
        PerEach<End, Point> arcs;
        for (const End end : both_ends)
            if (says_angles) arcs[end] = draw_arc(scene, end);
        const Point one = at(scene.inner[End::tractor]), two = at(scene.inner[End::implement]);
        for (const End end : both_ends)
            if (says_angles) drawing_.label(arcs[end], w_.angle(scene.angles[end]), lettering::note);
        drawing_.label({(one.x + two.x) / 2, (one.y + two.y) / 2}, w_.length(scene.printed_as, scene.length), lettering::figure);
        if (scene.linkage) {
            const Point hitch = at(scene.linkage->lower_hitch), ground = at({0, 0, 0});
            drawing_.label({hitch.x, (hitch.y + ground.y) / 2}, w_.length(Rounded::measured, std::get<MountedPosture>(scene.at).height), lettering::note);
        } else {
            drawing_.label(at(scene.pin), say(FigureCaption::pin, w_), lettering::note);
        }
        drawing_.label(at(scene.pto_groove - stub * Vector{1, 0, 0}), say(FigureCaption::pto, w_), lettering::note);
    }

    LabelledDrawing drawing_;
    Rect cell_;
    View view_;
    Extent extent_;
    double scale_;
    const Wording& w_;
};

}  // namespace

Extent extent_of(View seen, const std::vector<MachineScene>& scenes)
{
    Extent extent;
    for (const MachineScene& scene : scenes)
        for (const Vector& point : points_of(scene)) extent.hold(flat(seen, point));
    if (seen == View::side) extent.hold({extent.left, 0});
    return extent;
}

void draw_scene(Canvas& canvas, Rect cell, View view, const Extent& extent, double scale, const MachineScene& scene, const Wording& w)
{
    SceneDrawing(canvas, cell, view, extent, scale, w).draw(scene);
}

}  // namespace shaftcut::geometry
