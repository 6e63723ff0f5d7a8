// The angles of the joints, each in one figure or in two views of it.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {

double draw_angles(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    double y = draw_heading(canvas, room, 7, say(AngleCaption::heading, w), say(AngleCaption::hint, w));
    std::vector<Entry> angles, views;
    for (const End end : both_ends) {
        for (const Range range : all_ranges) angles.push_back({1, angle_name(end, range, w), "°"});
        views.push_back({1, side_view_name(end, w), "°"});
        views.push_back({1, plan_name(end, w), "°"});
    }
    draw_entries(canvas, {room.x, y, room.width, box_height}, angles);
    y += box_height + 4.2;
    for (const End end : both_ends) draw_ticks(canvas, {room.x + (end == End::tractor ? 0 : (room.width + gap) / 2), y}, say(AngleCaption::two_views, w), tick_words<Range>(w));
    draw_entries(canvas, {room.x, y + 1.2, room.width, box_height}, views);
    return y + 1.2 + box_height;
}

}  // namespace shaftcut::measuring_form
