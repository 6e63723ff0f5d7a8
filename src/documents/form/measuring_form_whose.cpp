// Which tractors a form is for, who measured, and whose limits hold.
#include "form/measuring_form_parts.hpp"
#include "text.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double entry_height = 10;

}  // namespace

double draw_other_tractors(Canvas& canvas, Rect room, const MeasuringForm&)
{
    const double words = 52;
    canvas.begin(Part::paragraph);
    const Rect name = canvas.text({room.x, room.y + 3.6}, "other-tractors", lettering::strong);
    draw_tick(canvas, {name.right() + 2, room.y + 3.6}, "none");
    canvas.text({room.x, room.y + 8.6}, "that drive this machine", lettering::note);
    canvas.begin(Part::table);
    draw_entries(canvas, {room.x + words, room.y, room.width - words, entry_height}, {{1, "other-tractor, not measured", ""}, {1, "other-tractor, not measured", ""}});
    return room.y + entry_height;
}

double draw_tractor(Canvas& canvas, Rect room, const MeasuringForm&)
{
    draw_entry(canvas, {room.x, room.y, room.width, entry_height}, "tractor (for another tractor or machine fill in another sheet 3)");
    return room.y + entry_height;
}

double draw_limits(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    canvas.begin(Part::table);
    draw_entries(canvas, {room.x, room.y, room.width, entry_height},
                 {{1.3, "closing-clearance (manual)", unit_word(form.units)}, {1.1, "limit loosened, to", ""}, {1, "why", ""}, {0.8, "by whom", ""}});
    return room.y + entry_height;
}

double draw_afterwards(Canvas& canvas, Rect room, const MeasuringForm&)
{
    canvas.begin(Part::paragraph);
    canvas.text({room.x, room.y + 3.4}, "Back at the bench: each word here is an attribute of the job file; write it, then shaftcut cut makes the cut sheet.", lettering::note);
    draw_entries(canvas, {room.x, room.y + 5, room.width, entry_height}, {{1, "measured-by: name", ""}, {0.7, "date", ""}, {1.3, "with (tape, rod, angle gauge)", ""}});
    return room.y + 5 + entry_height;
}

}  // namespace shaftcut::measuring_form
