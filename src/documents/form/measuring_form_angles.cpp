// The angles of the joints, each in one figure or in two views of it.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double entry_height = 10;

// The two views in the place of one angle of each side, and of which.
double draw_views(Canvas& canvas, Rect room)
{
    canvas.text({room.x, room.y + 2.5}, "Where one view does not show the whole angle: two views of it instead, at the same position.", lettering::note);
    const double y = room.y + 4, half = (room.width - gap) / 2;
    for (const End end : both_ends) {
        const std::string side = to_word(end);
        const double x = room.x + (end == End::tractor ? 0 : half + gap);
        draw_entries(canvas, {x, y, half, entry_height}, {{1, side + " side-view", "°"}, {1, side + " plan (above)", "°"}});
        draw_ticks(canvas, {x, y + entry_height + tick_pitch - 0.2}, "when", words_of<Range>());
    }
    return y + entry_height + tick_pitch + 0.6;
}

}  // namespace

double draw_angles(Canvas& canvas, Rect room, const MeasuringForm&)
{
    const double top = draw_heading(canvas, room, 8, "angle", "the greatest of each joint, between stub and tube; on a wide-angle joint over both its crosses");
    const double column = (room.width - 3 * gap) / 4;
    draw_angle_picture(canvas, {room.x, top, column, 2 * entry_height + gap});
    double y = top;
    for (const End end : both_ends) {
        const std::string side = to_word(end);
        draw_entries(canvas, {room.x + column + gap, y, room.width - column - gap, entry_height},
                     {{1, side + " working", "°"}, {1, side + " turning", "°"}, {1, side + " standing", "°"}});
        y += entry_height + gap;
    }
    canvas.text({room.x, y + 1.6}, "Lengths from an outer cross or between grooves need them: the joints bend on the way.", lettering::note);
    return draw_views(canvas, {room.x, y + 3.2, room.width, 0});
}

}  // namespace shaftcut::measuring_form
