// Which tractors a form is for, who measured, and whose limits hold.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {

double draw_limits(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    canvas.begin(Part::table);
    draw_entries(canvas, {room.x, room.y, room.width, box_height},
                 {{1.15, say(LimitCaption::clearance, w), unit_word(form.units)}, {1, say(LimitCaption::limit, w), ""}, {1, say(LimitCaption::why, w), ""}, {0.7, say(LimitCaption::by_whom, w), ""}});
    return room.y + box_height;
}

double draw_tractors(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    canvas.begin(Part::table);
    const Rect words = canvas.text({room.x, room.y + 3.2}, say(WhoseCaption::other_tractors, w), lettering::note);
    draw_tick(canvas, {words.right() + 3, room.y + 3.2}, say(TitleCaption::none, w));
    draw_entries(canvas, {room.x, room.y + 4.6, room.width, box_height},
                 {{1, say(WhoseCaption::measured_tractor, w), ""}, {1, say(WhoseCaption::hole_and_hitch, w), ""}, {1, say(WhoseCaption::other_tractor, w), ""}, {1, say(WhoseCaption::other_tractor, w), ""}});
    return room.y + 4.6 + box_height;
}

double draw_measured_by(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    canvas.begin(Part::table);
    draw_entries(canvas, {room.x, room.y, room.width, box_height}, {{1.2, say(WhoseCaption::measured_by, w), ""}, {0.7, say(WhoseCaption::measured_on, w), ""}, {1, say(WhoseCaption::with, w), ""}});
    return room.y + box_height;
}

}  // namespace shaftcut::measuring_form
