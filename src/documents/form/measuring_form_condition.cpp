// How the shaft came in: what is looked at together, before anything is loosened.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

// One thing to look at, and its words to tick.
struct Look {
    ConditionCaption name;
    std::vector<std::string> words;
};

std::vector<Look> left_looks(const Wording& w)
{
    return {{ConditionCaption::guard, tick_words<Completeness>(w)},
            {ConditionCaption::chains, tick_words<Completeness>(w)},
            {ConditionCaption::locks, tick_words<LockState>(w)},
            {ConditionCaption::crosses, tick_words<CrossWear>(w)},
            {ConditionCaption::weld, tick_words<Weld>(w)}};
}

std::vector<Look> right_looks(const Wording& w)
{
    return {{ConditionCaption::tubes, tick_words<TubeState>(w)},
            {ConditionCaption::phase, tick_words<Phase>(w)},
            {ConditionCaption::slides, tick_words<Slides>(w)},
            {ConditionCaption::device, tick_words<DeviceState>(w)}};
}

// The looks below one another, their words from `words_at` on; the baseline below the last.
double draw_looks(Canvas& canvas, Point at, double words_at, const std::vector<Look>& looks, const Wording& w)
{
    for (const Look& look : looks) {
        canvas.text(at, say(look.name, w), lettering::strong);
        draw_ticks(canvas, {at.x + words_at, at.y}, "", look.words);
        at.y += tick_pitch;
    }
    return at.y;
}

}  // namespace

double draw_condition(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    const double first = draw_heading(canvas, room, 2, say(ConditionCaption::heading, w), say(ConditionCaption::hint, w)) + 3;
    const double below = draw_looks(canvas, {room.x, first}, 17, left_looks(w), w), right = room.x + 80;
    const double note = draw_looks(canvas, {right, first}, 37.5, right_looks(w), w);
    canvas.text({right, note}, say(ConditionCaption::do_not_cut, w), lettering::strong);
    return below - tick_pitch + 1;
}

}  // namespace shaftcut::measuring_form
