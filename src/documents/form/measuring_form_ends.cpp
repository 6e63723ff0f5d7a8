// The two ends: lock by its drawing, joint and device to tick for each end, its connection and the stub that it is coupled to.
#include "drawing/lock_drawing.hpp"
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double picture_height = 13.5, second_tick = 9, after_ticks = 18;

// The squares of both ends, each behind its letter.
void draw_both_ticks(Canvas& canvas, Point at, const Wording& w)
{
    for (const EndCaption end : {EndCaption::tractor_tick, EndCaption::machine_tick}) {
        canvas.text(at, say(end, w), lettering::strong);
        draw_tick_box(canvas, {at.x + 3.2, at.y});
        at.x += second_tick;
    }
}

// Locks in one row: drawing, words over at most two lines, the squares of both ends.
double draw_locks(Canvas& canvas, Rect room, const Wording& w)
{
    const double width = room.width / static_cast<double>(Words<Lock>::all.size());
    for (std::size_t i = 0; i < Words<Lock>::all.size(); ++i) {
        const auto lock = static_cast<Lock>(i);
        const double x = room.x + static_cast<double>(i) * width;
        draw_lock(canvas, {x, room.y, width - 1.5, picture_height}, lock);
        canvas.paragraph({x, room.y + picture_height}, width - 1.5, tick_word(lock, w), lettering::close_note);
        draw_both_ticks(canvas, {x, room.y + picture_height + 11}, w);
    }
    return room.y + picture_height + 12;
}

// Words to tick for both ends, in one row.
template <class E>
void draw_row(Canvas& canvas, Point at, double width, const std::string& name, const Wording& w)
{
    canvas.text(at, name, lettering::strong);
    const double first = at.x + 13, column = (width - 13) / static_cast<double>(Words<E>::all.size());
    for (std::size_t i = 0; i < Words<E>::all.size(); ++i) {
        const Point place{first + static_cast<double>(i) * column, at.y};
        draw_both_ticks(canvas, place, w);
        canvas.fitted({place.x + after_ticks, at.y}, column - after_ticks - 1, tick_word(static_cast<E>(i), w), lettering::note);
    }
}

}  // namespace

double draw_ends(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    const double top = draw_heading(canvas, room, 3, say(EndCaption::heading, w), say(EndCaption::hint, w));
    double y = draw_locks(canvas, {room.x, top, room.width, 0}, w) + 3.4;
    draw_row<JointKind>(canvas, {room.x, y}, room.width, say(EndCaption::joint, w), w);
    y += tick_pitch;
    draw_row<Device>(canvas, {room.x, y}, room.width, say(EndCaption::device, w), w);
    y += 2;
    draw_entries(canvas, {room.x, y, room.width, box_height},
                 {{1, say(EndCaption::tractor_connection, w), ""}, {1, say(EndCaption::tractor_onto, w), ""}, {1, say(EndCaption::machine_connection, w), ""}, {1, say(EndCaption::machine_onto, w), ""}});
    return y + box_height;
}

}  // namespace shaftcut::measuring_form
