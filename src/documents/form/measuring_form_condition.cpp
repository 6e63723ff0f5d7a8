// How the shaft came in: what is looked at together, before anything is loosened.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double words_at = 15;

// One thing to look at: its words to tick and what to look for.
struct Look {
    const char* name;
    std::vector<std::string> words;
    const char* hint;
};

std::vector<Look> left_looks()
{
    return {{"guard", words_of<Completeness>(), ""},
            {"chains", words_of<Completeness>(), ""},
            {"locks", words_of<LockState>(), "spring back?"},
            {"crosses", words_of<CrossWear>(), "play, a rough place?"},
            {"tubes", words_of<TubeState>(), ""}};
}

std::vector<Look> right_looks()
{
    return {{"weld", words_of<Weld>(), ""},
            {"device", words_of<DeviceState>(), "clutch, shear bolt"},
            {"phase", words_of<Phase>(), "tube yokes' forks"},
            {"slides", words_of<Slides>(), "by hand, once cleaned"}};
}

// The looks below one another; the baseline below the last.
double draw_looks(Canvas& canvas, Point at, const std::vector<Look>& looks)
{
    for (const Look& look : looks) {
        canvas.text(at, look.name, lettering::strong);
        const double after = draw_ticks(canvas, {at.x + words_at - 2, at.y}, "", look.words);
        canvas.text({after, at.y}, look.hint, lettering::note);
        at.y += tick_pitch;
    }
    return at.y;
}

}  // namespace

double draw_condition(Canvas& canvas, Rect room, const MeasuringForm&)
{
    const double top = draw_heading(canvas, room, 2, "condition", "as it came in, still together; what you did not look at stays empty");
    const double first = top + 3.2, below = draw_looks(canvas, {room.x, first}, left_looks());
    const double right = room.x + room.width / 2 + 4;
    const double note = draw_looks(canvas, {right, first}, right_looks());
    canvas.text({right, note}, "welded, cracked, bent, twisted, not sliding: do not cut", lettering::note);
    return below - tick_pitch + 1;
}

}  // namespace shaftcut::measuring_form
