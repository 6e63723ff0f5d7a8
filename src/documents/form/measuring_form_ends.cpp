// The two ends: joint, lock and device to tick for each side, its connection and the stub that it is coupled to.
#include "form/measuring_form_parts.hpp"
#include "text.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double second_tick = 6.5, after_ticks = 8, word_width = 33, entry_height = 10.5;

// In the order of the words.
constexpr std::array<const char*, Words<JointKind>::all.size()> joint_hints{"one cross", "two crosses"};
constexpr std::array<const char*, Words<Lock>::all.size()> lock_hints{
    "collar to pull, bare", "collar to pull, under a cover", "pin to press, stands out", "pin to press, sunk in",
    "bolt across the stub's groove", "bolt with a cone, drawn tight", "bolted face to face", "cannot be told"};
constexpr std::array<const char*, Words<Device>::all.size()> device_hints{
    "springs press plates", "lets the machine run on", "a bolt that breaks", "plain yoke"};

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
double draw_options(Canvas& canvas, Point at, const std::string& name, const std::array<const char*, Words<E>::all.size()>& hints)
{
    canvas.text({at.x + 0.8, at.y}, "T", lettering::strong);
    canvas.text({at.x + second_tick + 1.4, at.y}, "I", lettering::strong);
    canvas.text({at.x + second_tick + after_ticks - 2, at.y}, name, lettering::strong);
    for (std::size_t i = 0; i < hints.size(); ++i) {
        at.y += tick_pitch;
        draw_option(canvas, at, Words<E>::all[i], hints[i]);
    }
    return at.y + tick_pitch;
}

// The names that a connection may have, where they fit on one line.
std::string connection_words(const Canvas& canvas, const MeasuringForm& form, double width)
{
    const std::string where = "a connection's name, as shaftcut catalogue lists them";
    const std::string all = form.connections.empty() ? where : "connection and onto: " + listed(form.connections);
    return canvas.width_of(all, lettering::note) <= width ? all : "connection and onto: " + where;
}

}  // namespace

double draw_ends(Canvas& canvas, Rect room, const MeasuringForm& form)
{
    const double top = draw_heading(canvas, room, 4, "end", "side T: tractor, the end nearer the power source · side I: implement, the other");
    const double column = room.width / 2 + 2, first = top + 3.2;
    const double below_locks = draw_options<Lock>(canvas, {room.x, first}, "lock: holds the yoke on its stub", lock_hints);
    const double below_joints = draw_options<JointKind>(canvas, {room.x + column, first}, "joint", joint_hints);
    draw_options<Device>(canvas, {room.x + column, below_joints + 0.8}, "device: built into the end", device_hints);
    const double y = below_locks - 2;
    canvas.text({room.x, y + 2}, connection_words(canvas, form, room.width), lettering::note);
    draw_entries(canvas, {room.x, y + 3.6, room.width, entry_height},
                 {{1, "tractor: connection", ""}, {1, "tractor: onto (stub)", ""}, {1.08, "implement: connection", ""}, {1.08, "implement: onto (stub)", ""}});
    return y + 3.6 + entry_height;
}

}  // namespace shaftcut::measuring_form
