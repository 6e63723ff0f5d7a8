// A machine that moves, a picture a position, for a screen.
#include "drawing/geometry_parts.hpp"
#include "drawing/scene_drawing.hpp"

namespace shaftcut::geometry {
namespace {

constexpr double screen_width = 120, tallest_on_screen = 130;

View view_from(Seen from) { return from == Seen::from_above ? View::plan : View::side; }

std::vector<MachineScene> scenes_of(const MachineFrames& machine)
{
    std::vector<MachineScene> scenes;
    for (const MachineFrame& frame : machine.frames) scenes.push_back(frame.scene);
    for (const ExtremeFrame& frame : machine.extremes) scenes.push_back(frame.scene);
    return scenes;
}

}  // namespace

ScreenScenes::ScreenScenes(const Fonts& fonts, const MachineFrames& machine, Seen from, const Wording& w) : fonts_(fonts), from_(from), w_(w)
{
    const Extent extent = extent_of(view_from(from), scenes_of(machine));
    left_ = extent.left, right_ = extent.right, low_ = extent.low, high_ = extent.high;
    scale_ = std::max({1.0, (right_ - left_) / (screen_width - 2 * side_margin), (high_ - low_) / (tallest_on_screen - head - foot - labels_above)});
}

Page ScreenScenes::draw(const MachineScene& scene) const
{
    const double height = head + foot + labels_above + (high_ - low_) / scale_;
    Canvas canvas(fonts_, screen_width, height);
    canvas.begin(Part::figure);
    draw_scene(canvas, {0, 0, screen_width, height}, view_from(from_), {left_, right_, low_, high_}, scale_, scene, w_);
    return canvas.page();
}

}  // namespace shaftcut::geometry
