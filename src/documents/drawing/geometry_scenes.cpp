// A machine and its shaft to scale: a trailed one from above and from the side, a mounted one from the side.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "hitch/geometry_figures.hpp"
#include "drawing/geometry_parts.hpp"
#include "drawing/labelled_drawing.hpp"
#include "order/instruction_words.hpp"

namespace shaftcut::geometry {
namespace {

constexpr double cell_gap = 4, head = 10, foot = 6, side_margin = 4, words_height = 9, labels_above = 10;
constexpr double label_margin = 1.2;  // of a cell's labels from its frame
constexpr double stub = 90;       // mm of the machine that a shaft's stub is drawn long
constexpr double most_arc_radius = 9, least_arc_radius = 4, arc_of_tubes = 0.4;  // mm on paper, and part of the tubes drawn

enum class View { plan, side };

// In plan y (to the right of travel) runs up the page, for travel is to the left; in side view z does.
struct Flat {
    double x, up;
};
Flat flat(View view, const Vector& point) { return {point.x, view == View::plan ? point.y : point.z}; }

struct Extent {
    double left = 1e9, right = -1e9, low = 1e9, high = -1e9;
    void hold(Flat point)
    {
        left = std::min(left, point.x);
        right = std::max(right, point.x);
        low = std::min(low, point.up);
        high = std::max(high, point.up);
    }
};

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

Extent extent_of(View seen, const std::vector<MachineScene>& scenes)
{
    Extent extent;
    for (const MachineScene& scene : scenes)
        for (const Vector& point : points_of(scene)) extent.hold(flat(seen, point));
    if (seen == View::side) extent.hold({extent.left, 0});
    return extent;
}

std::vector<MachineScene> scenes_of(const MachineFrames& machine)
{
    std::vector<MachineScene> scenes;
    for (const MachineFrame& frame : machine.frames) scenes.push_back(frame.scene);
    for (const ExtremeFrame& frame : machine.extremes) scenes.push_back(frame.scene);
    return scenes;
}

// The greatest of 1 : 5, 1 : 6, … at which `extent` fits.
double scale_for(const Extent& extent, double width, double height)
{
    return std::ceil(std::max({5.0, (extent.right - extent.left) / width, (extent.high - extent.low) / height}));
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

struct SeenIn {
    View view;
    Extent extent;
    double scale;
};

SeenIn seen_in(View view, const MachineView& machine, double width, double height)
{
    const Extent extent = extent_of(view, machine.scenes);
    return {view, extent, scale_for(extent, width - 2 * side_margin, height - head - foot - 3)};
}

void draw_cell(Canvas& canvas, Rect cell, const MachineScene& scene, const SeenIn& seen, const Wording& w)
{
    canvas.begin(Part::figure);
    canvas.box(cell, pen::axis);
    const Rect name = canvas.text({cell.x + 1.5, cell.y + 4}, name_of(scene, w), lettering::strong);
    canvas.text({name.right(), cell.y + 4}, seen_to_scale(seen.view == View::plan ? Seen::from_above : Seen::from_left, static_cast<int>(seen.scale), w), lettering::note);
    canvas.fitted({cell.x + 1.5, cell.y + 8.4}, cell.width - 3, in_words(scene.at, w), lettering::note);
    SceneDrawing(canvas, cell, seen.view, seen.extent, seen.scale, w).draw(scene);
}

// Cells side by side and below each other, counted along the rows.
struct Grid {
    std::size_t columns, rows;

    Rect cell(const Rect& room, std::size_t count) const
    {
        const auto across = static_cast<double>(columns), down = static_cast<double>(rows);
        const double width = (room.width - (across - 1) * cell_gap) / across, height = (room.height - (down - 1) * cell_gap) / down;
        const std::size_t row = count / columns, column = count % columns;
        return {room.x + static_cast<double>(column) * (width + cell_gap), room.y + static_cast<double>(row) * (height + cell_gap), width, height};
    }
};

// How high a cell must be at this scale, with room for labels above the machine.
double height_needed(const SeenIn& seen) { return head + foot + 3 + labels_above + (seen.extent.high - seen.extent.low) / seen.scale; }

// The one that shows the machine largest.
Grid best_grid(const MachineView& machine, const std::vector<View>& views, double width, double height)
{
    if (views.size() == 2) return {2, 2};
    const auto scale = [&](const Grid& grid) {
        const Rect cell = grid.cell({0, 0, width, height}, 0);
        return seen_in(views.front(), machine, cell.width, cell.height).scale;
    };
    const Grid abreast{3, 1}, stacked{2, 2};
    return scale(abreast) <= scale(stacked) ? abreast : stacked;
}

constexpr double screen_width = 120, tallest_on_screen = 130;

}  // namespace

ScreenScenes::ScreenScenes(const Fonts& fonts, const MachineFrames& machine, Seen from, const Wording& w) : fonts_(fonts), from_(from), w_(w)
{
    const View view = from == Seen::from_above ? View::plan : View::side;
    const SeenIn seen{view, extent_of(view, scenes_of(machine)), 0};
    const double across = (seen.extent.right - seen.extent.left) / (screen_width - 2 * side_margin);
    const double up = (seen.extent.high - seen.extent.low) / (tallest_on_screen - head - foot - labels_above);
    scale_ = std::max({1.0, across, up});
    left_ = seen.extent.left, right_ = seen.extent.right, low_ = seen.extent.low, high_ = seen.extent.high;
}

Page ScreenScenes::draw(const MachineScene& scene) const
{
    const double height = head + foot + labels_above + (high_ - low_) / scale_;
    Canvas canvas(fonts_, screen_width, height);
    canvas.begin(Part::figure);
    SceneDrawing(canvas, {0, 0, screen_width, height}, from_ == Seen::from_above ? View::plan : View::side, {left_, right_, low_, high_}, scale_, w_).draw(scene);
    return canvas.page();
}

void draw_scenes(Sheets& sheets, const MachineView& view, const Wording& w)
{
    std::vector<View> views{View::side};
    if (!view.mounted) views = {View::plan, View::side};
    const double top = sheets.y(), most = sheets.left_over() - plot_height - below_plot - words_height - cell_gap;
    const Grid grid = best_grid(view, views, sheets.room().width, most);
    const Rect first = grid.cell({0, 0, sheets.room().width, most}, 0);
    const double height = grid.rows == 1 ? std::min(most, height_needed(seen_in(views.front(), view, first.width, first.height))) : most;
    std::size_t count = 0;
    for (const MachineScene& scene : view.scenes)
        for (const View one : views) {
            const Rect cell = grid.cell({sheets.room().x, top, sheets.room().width, height}, count++);
            draw_cell(sheets.canvas(), cell, scene, seen_in(one, view, first.width, first.height), w);
        }
    place(sheets.canvas(), {sheets.room().x, top + height + cell_gap / 2, sheets.room().width, words_height}, {{Lead::none, about_scenes(view.mounted, w)}});
    sheets.move_to(top + height + words_height + cell_gap);
}

void draw_machines(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    std::size_t machine = 0;
    for (const FitReading& fit : order.fits) {
        if (!fit.geometry) continue;
        const MachineView& view = order.machines[machine++];
        sheets.next();
        sheets.flow({{Lead::heading, scale_heading(view.tractor, w)}});
        sheets.move_to(sheets.y() + 1);
        draw_scenes(sheets, view, w);
        draw_plot(sheets, order, view, fit.geometry->machine, w);
    }
}

}  // namespace shaftcut::geometry
