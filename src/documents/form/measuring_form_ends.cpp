// The two ends: joint, lock and device to tick for each side, its connection and the stub that it is coupled to.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double second_tick = 6.5, after_ticks = 8, word_width = 33, entry_height = 10.5;

// A word to tick for either side.
void draw_option(Canvas& canvas, Point at, const std::string& word, const std::string& hint)
{
    draw_tick_box(canvas, at);
    draw_tick_box(canvas, {at.x + second_tick, at.y});
    canvas.text({at.x + second_tick + after_ticks - 2, at.y}, word, lettering::strong);
    canvas.text({at.x + second_tick + after_ticks + word_width, at.y}, hint, lettering::note);
}

// A column of words to tick; the baseline below the last.
template <class E>
double draw_options(Canvas& canvas, Point at, const std::string& name, const Wording& w)
{
    canvas.text({at.x + 0.8, at.y}, "T", lettering::strong);
    canvas.text({at.x + second_tick + 1.4, at.y}, "I", lettering::strong);
    canvas.text({at.x + second_tick + after_ticks - 2, at.y}, name, lettering::strong);
    for (std::size_t i = 0; i < Words<E>::all.size(); ++i) {
        at.y += tick_pitch;
        draw_option(canvas, at, Words<E>::all[i], meaning(static_cast<E>(i), w));
    }
    return at.y + tick_pitch;
}

// The names that a connection may have, where they fit on one line.
std::string connection_words(const Canvas& canvas, const MeasuringForm& form, double width, const Wording& w)
{
    const std::string all = form.connections.empty() ? say(EndCaption::where_connections, w) : connection_names(form.connections, w);
    return canvas.width_of(all, lettering::note) <= width ? all : say(EndCaption::connection_and_where, w);
}

}  // namespace

double draw_ends(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    const double top = draw_heading(canvas, room, 4, "end", say(EndCaption::hint, w));
    const double column = room.width / 2 + 2, first = top + 3.2;
    const double below_locks = draw_options<Lock>(canvas, {room.x, first}, say(EndCaption::lock, w), w);
    const double below_joints = draw_options<JointKind>(canvas, {room.x + column, first}, "joint", w);
    draw_options<Device>(canvas, {room.x + column, below_joints + 0.8}, say(EndCaption::device, w), w);
    const double y = below_locks - 2;
    canvas.text({room.x, y + 2}, connection_words(canvas, form, room.width, w), lettering::note);
    draw_entries(canvas, {room.x, y + 3.6, room.width, entry_height},
                 {{1, say(EndCaption::tractor_connection, w), ""}, {1, say(EndCaption::tractor_onto, w), ""}, {1.08, say(EndCaption::implement_connection, w), ""}, {1.08, say(EndCaption::implement_onto, w), ""}});
    return y + 3.6 + entry_height;
}

}  // namespace shaftcut::measuring_form
