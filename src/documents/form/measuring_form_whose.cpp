// Which tractors a form is for, who measured, and whose limits hold.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double entry_height = 10;

}  // namespace

double draw_other_tractors(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    const double words = 52;
    canvas.begin(Part::paragraph);
    const Rect name = canvas.text({room.x, room.y + 3.6}, "other-tractors", lettering::strong);
    draw_tick(canvas, {name.right() + 2, room.y + 3.6}, "none");
    canvas.text({room.x, room.y + 8.6}, say(WhoseCaption::other_tractors, w), lettering::note);
    canvas.begin(Part::table);
    draw_entries(canvas, {room.x + words, room.y, room.width - words, entry_height}, {{1, say(WhoseCaption::other_tractor, w), ""}, {1, say(WhoseCaption::other_tractor, w), ""}});
    return room.y + entry_height;
}

double draw_tractor(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    draw_entry(canvas, {room.x, room.y, room.width, entry_height}, say(WhoseCaption::tractor_and_another, w));
    return room.y + entry_height;
}

double draw_limits(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    canvas.begin(Part::table);
    draw_entries(canvas, {room.x, room.y, room.width, entry_height},
                 {{1.3, say(WhoseCaption::clearance, w), unit_word(form.units)}, {1.1, say(WhoseCaption::limit, w), ""}, {1, say(WhoseCaption::why, w), ""}, {0.8, say(WhoseCaption::by_whom, w), ""}});
    return room.y + entry_height;
}

double draw_afterwards(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    canvas.begin(Part::paragraph);
    canvas.text({room.x, room.y + 3.4}, say(WhoseCaption::back_at_bench, w), lettering::note);
    draw_entries(canvas, {room.x, room.y + 5, room.width, entry_height}, {{1, say(WhoseCaption::measured_by, w), ""}, {0.7, "date", ""}, {1.3, say(WhoseCaption::with_gauge, w), ""}});
    return room.y + 5 + entry_height;
}

}  // namespace shaftcut::measuring_form
