// The angles of the joints, each in one figure or in two views of it.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double entry_height = 10;

// The two views in the place of one angle of each side, and of which.
double draw_views(Canvas& canvas, Rect room, const Wording& w)
{
    canvas.text({room.x, room.y + 2.5}, say(AngleCaption::two_views, w), lettering::note);
    const double y = room.y + 4, half = (room.width - gap) / 2;
    for (const End end : both_ends) {
        const double x = room.x + (end == End::tractor ? 0 : half + gap);
        draw_entries(canvas, {x, y, half, entry_height}, {{1, side_view_name(end, w), "°"}, {1, plan_name(end, w), "°"}});
        draw_ticks(canvas, {x, y + entry_height + tick_pitch - 0.2}, "when", words_of<Range>());
    }
    return y + entry_height + tick_pitch + 0.6;
}

}  // namespace

double draw_angles(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    const double top = draw_heading(canvas, room, 8, "angle", say(AngleCaption::hint, w));
    const double column = (room.width - 3 * gap) / 4;
    draw_angle_picture(canvas, {room.x, top, column, 2 * entry_height + gap}, w);
    double y = top;
    for (const End end : both_ends) {
        draw_entries(canvas, {room.x + column + gap, y, room.width - column - gap, entry_height},
                     {{1, angle_name(end, Range::working, w), "°"}, {1, angle_name(end, Range::turning, w), "°"}, {1, angle_name(end, Range::standing, w), "°"}});
        y += entry_height + gap;
    }
    canvas.text({room.x, y + 1.6}, say(AngleCaption::needed_for, w), lettering::note);
    return draw_views(canvas, {room.x, y + 3.2, room.width, 0}, w);
}

}  // namespace shaftcut::measuring_form
