// What was measured and cannot be true.
#include "cut_sheet/refused_parts_words.hpp"
#include "hitch/hitch_problem_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

// As it was stated, to the micrometre, with the thing that it is the length of.
std::string thing(const StatedFigure& stated, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"tube", stated.tube}, {"range", stated.range}, {"end", stated.end}, {"length", w.length(Rounded::measured, stated.length, 3)}});
    };
    switch (stated.of) {
    case FigureOf::closed: return with("the closed length of {length}");
    case FigureOf::closed_between_inner_crosses: return with("the closed length of {length} between the inner crosses");
    case FigureOf::half: return with("the {tube:inner|outer} half of {length}");
    case FigureOf::guard_half: return with("the {tube:inner|outer} half's guard of {length}");
    case FigureOf::shoulder: return with("the {tube:inner|outer} half's stop at {length} from its cross");
    case FigureOf::shoulder_by_stop_depth: return with("the {tube:inner|outer} half's stop, by its depth {length} from its cross");
    case FigureOf::shoulder_by_closed: return with("the {tube:inner|outer} half's stop, by the closed length {length} from its cross");
    case FigureOf::seat: return with("the seat of {length} in its yoke");
    case FigureOf::cut_to: return with("what an earlier sheet kept of the {tube:inner|outer} half, {length}");
    case FigureOf::shortest: return with("the shortest of {length}");
    case FigureOf::longest: return with("the longest {range:at work|turning|standing} of {length}");
    case FigureOf::spacing: break;
    }
    return with("the {length} between the crosses of the {end:tractor|implement} joint");
}

std::string unreadable(const YokeNotKnown& why, const Wording& w)
{
    const NamedValue end{"end", why.end};
    if (why.of_geometry) return w("The machine's dimensions cannot be used: how far the locking groove of the {end:tractor|implement} yoke is from its cross is not known.", {end});
    return w("Lengths between grooves cannot be used: how far the locking groove of the {end:tractor|implement} yoke is from its cross is not known.", {end});
}

std::string unreadable(const GeometryImpossible& why, const Wording& w) { return w("The machine's dimensions cannot be used: {wrong}.", {{"wrong", say(why.problem.fault, w).wrong}}); }

}  // namespace

std::string refused(const Contradicting& found, const Wording& w)
{
    return w("Not both can be right: {one} is {is:more than|less than|not less than|not more than} {than}.", {{"one", thing(found.one, w)}, {"is", found.is}, {"than", thing(found.than, w)}});
}

std::string refused(const AnglesContradict& found, const Wording& w)
{
    return w("Not both can be right: the {end:tractor|implement} joint bends by {working} at work, but by only {turning} at most.",
             {{"end", found.end}, {"working", w.angle(found.working, 3)}, {"turning", w.angle(found.turning, 3)}});
}

std::string refused(const TubesDoNotMeet& found, const Wording& w)
{
    return w("The tubes would not meet: {closed} is not less than {inner} and {outer} together.", {{"closed", thing(found.closed, w)}, {"inner", thing(found.inner, w)}, {"outer", thing(found.outer, w)}});
}

std::string refused(const OutOfBounds& found, const Wording& w)
{
    const Length otherwise = found.if_inches.value_or(found.if_millimetres.value_or(Length()));
    const NamedValue figure{"figure", thing(found.figure, w)}, millimetres{"millimetres", figure_of_with_unit(Rounded::measured, otherwise, Units::mm)};
    if (found.if_inches) return w("No shaft has it: {figure}. Was it measured in inches? Then it is {millimetres}.", {figure, millimetres});
    if (found.if_millimetres) return w("No shaft has it: {figure}. Was it measured in millimetres? Then it is {millimetres}.", {figure, millimetres});
    return w("No shaft has it: {figure}; {least} to {greatest} can be.",
             {figure, {"least", w.length(Rounded::measured, found.least)}, {"greatest", w.length(Rounded::measured, found.greatest)}});
}

std::string refused(const LengthsUnreadable& found, const Wording& w)
{
    return std::visit([&](const auto& why) { return unreadable(why, w); }, found.why);
}

std::string refused(const StopImpossible& found, const Wording& w)
{
    return w("No tube stops nearer to a cross than {least}: {shoulder} is wrong.", {{"least", w.length(Rounded::measured, found.least, 3)}, {"shoulder", thing(found.shoulder, w)}});
}

std::string refused(const StopUnlikeSeries& found, const Wording& w)
{
    return w("Its series has {series}, and the closed length speaks for that: {shoulder} is wrong, or the half is of another kind.",
             {{"series", w.length(Rounded::measured, found.series, 3)}, {"shoulder", thing(found.shoulder, w)}});
}

std::string refused(const ReadAtOtherCross& found, const Wording& w)
{
    return w("By the halves {closed} is from the {meant:inner|outer} cross, not from the {meant:outer|inner} one as stated.", {{"closed", thing(found.closed, w)}, {"meant", found.meant}});
}

std::string refused(const ListedAtOtherCross& found, const Wording& w)
{
    return w("By its series {closed} is from the {meant:inner|outer} cross, not from the {meant:outer|inner} one as stated.", {{"closed", thing(found.closed, w)}, {"meant", found.meant}});
}

std::string refused(const HalvesExchanged& found, const Wording& w)
{
    if (!found.refuses) return "";
    return w("Exchanged, it seems: only the other way round do {inner} and {outer} give the closed length.", {{"inner", thing(found.inner, w)}, {"outer", thing(found.outer, w)}});
}

}  // namespace shaftcut::cut_sheet
