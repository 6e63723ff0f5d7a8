// How the shaft came in: what is looked at together, before anything is loosened.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double words_at = 15;

// One thing to look at: its words to tick and what to look for.
struct Look {
    const char* name;
    std::vector<std::string> words;
    std::string hint;
};

std::vector<Look> left_looks(const Wording& w)
{
    return {{"guard", words_of<Completeness>(), ""},
            {"chains", words_of<Completeness>(), ""},
            {"locks", words_of<LockState>(), say(ConditionCaption::locks, w)},
            {"crosses", words_of<CrossWear>(), say(ConditionCaption::crosses, w)},
            {"tubes", words_of<TubeState>(), ""}};
}

std::vector<Look> right_looks(const Wording& w)
{
    return {{"weld", words_of<Weld>(), ""},
            {"device", words_of<DeviceState>(), say(ConditionCaption::device, w)},
            {"phase", words_of<Phase>(), say(ConditionCaption::phase, w)},
            {"slides", words_of<Slides>(), say(ConditionCaption::slides, w)}};
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

double draw_condition(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    const double top = draw_heading(canvas, room, 2, "condition", say(ConditionCaption::hint, w));
    const double first = top + 3.2, below = draw_looks(canvas, {room.x, first}, left_looks(w));
    const double right = room.x + room.width / 2 + 4;
    const double note = draw_looks(canvas, {right, first}, right_looks(w));
    canvas.text({right, note}, say(ConditionCaption::do_not_cut, w), lettering::note);
    return below - tick_pitch + 1;
}

}  // namespace shaftcut::measuring_form
