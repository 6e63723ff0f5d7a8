// Whether what was measured can be true at all, and what of it is doubtful.
#include "checks/finding_sentences.hpp"
#include "checks/limit_words.hpp"
#include "hitch/geometry_figures.hpp"
#include "hitch/hitch_problem_words.hpp"
#include "whose.hpp"

namespace shaftcut {
namespace {

// The file's name without its folder: documents of one job are the same wherever it lies.
std::string place_text(const Place& place, const Wording& w)
{
    return w("line {line}, column {column} of {file}", {{"line", place.line}, {"column", place.column}, {"file", place.file.substr(place.file.find_last_of('/') + 1)}});
}

// To the micrometre: what was stated is shown as it was stated.
std::string exact(Length length, const Wording& w) { return w.length(Rounded::measured, length, 3); }

std::string figure_text(const StatedFigure& stated, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"tube", stated.tube}, {"range", stated.range}, {"end", stated.end}, {"length", exact(stated.length, w)}});
    };
    switch (stated.of) {
    case FigureOf::closed: return with("closed length {length}");
    case FigureOf::closed_between_inner_crosses: return with("closed length between the inner crosses {length}");
    case FigureOf::half: return with("{tube:inner|outer} half {length}");
    case FigureOf::guard_half: return with("{tube:inner|outer} guard half {length}");
    case FigureOf::shoulder: return with("{tube:inner|outer} half's shoulder {length}");
    case FigureOf::shoulder_by_stop_depth: return with("{tube:inner|outer} half's shoulder (half − stop-depth) {length}");
    case FigureOf::shoulder_by_closed: return with("{tube:inner|outer} half's shoulder, closed length less {tube:outer|inner} half, {length}");
    case FigureOf::seat: return with("its seat in the series {length}");
    case FigureOf::cut_to: return with("what an earlier sheet kept of it (cut-to) {length}");
    case FigureOf::shortest: return with("shortest {length}");
    case FigureOf::longest: return with("longest {range:working|turning|standing} {length}");
    case FigureOf::spacing: break;
    }
    return with("wide-angle spacing of the {end:tractor|implement} end {length}");
}

// "inner half 690 mm (line 7, column 12 of job.xml)".
std::string text(const StatedFigure& stated, const Wording& w)
{
    if (stated.place.file.empty()) return figure_text(stated, w);
    return w("{figure} ({place})", {{"figure", figure_text(stated, w)}, {"place", place_text(stated.place, w)}});
}

std::string unreadable(const YokeNotKnown& why, const Wording& w)
{
    if (why.of_geometry)
        return w("Refused: the machine's geometry cannot be used: the distance from cross to locking groove of the {end:tractor|implement} end's yoke is not known.", {{"end", why.end}});
    return w("Refused: lengths between grooves cannot be used: the distance from cross to locking groove of the {end:tractor|implement} end's yoke is not known; measure between crosses.",
             {{"end", why.end}});
}

std::string unreadable(const GeometryImpossible& why, const Wording& w) { return w("Refused: the machine's geometry cannot be used: {wrong}.", {{"wrong", say(why.problem.fault, w).wrong}}); }

enum class LengthOfFit { shortest, longest_working, longest_turning, longest_standing };

LengthOfFit which(const DisputedLength& disputed)
{
    if (!disputed.range) return LengthOfFit::shortest;
    return *disputed.range == Range::working ? LengthOfFit::longest_working : *disputed.range == Range::turning ? LengthOfFit::longest_turning : LengthOfFit::longest_standing;
}

std::string disputed_text(const DisputedLength& one, const Wording& w)
{
    const ExtremeLength& reached = one.reached;
    const bool less = one.measured.value < reached.length;
    const Length apart = less ? reached.length - one.measured.value : one.measured.value - reached.length;
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"which", which(one)},
                           {"measured", w.length(Rounded::measured, one.measured.value)},
                           {"apart", w.length(Rounded::measured, apart)},
                           {"less", less},
                           {"reached", w.length(one.range ? Rounded::longest : Rounded::shortest, reached.length)},
                           {"doubt", w.length(Rounded::doubt, reached.plus_minus)},
                           {"posture", in_words(reached.at, w)}});
    };
    return one.goes_past() ? with("The machine's geometry goes past the measured {which:shortest|longest working|longest turning|longest standing}, {measured} between the inner crosses, "
                                  "by {apart}: it comes to {reached} (± {doubt}), {posture}. Measure in that position; the measurement is used.")
                           : with("The measured {which:shortest|longest working|longest turning|longest standing}, {measured} between the inner crosses, is {apart} {less:more|less} than "
                                  "the machine's geometry can reach: {reached} (± {doubt}), {posture}. The measurement is used.");
}

enum class EndsOf { tractor, implement, both };

EndsOf ends_of(const std::vector<End>& ends)
{
    if (ends.size() == 2) return EndsOf::both;
    return ends.front() == End::tractor ? EndsOf::tractor : EndsOf::implement;
}

std::string closed_disagrees(const ClosedDisagrees& found, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"closed", exact(found.closed, w)}, {"wide", found.wide_angle}, {"modelled", exact(found.modelled, w)}});
    };
    if (found.guards_stop)
        return with("The shaft closes at {closed}{wide:| between its inner crosses}, but its halves should give {modelled}: the guards stop it before its tubes do. "
                    "Slide the guards back and measure the closed length of the tubes alone: less may come off.");
    if (found.agreement == ClosedAgreement::longer)
        return with("The shaft closes at {closed}{wide:| between its inner crosses}, but its halves should give {modelled}: the shaft is altered, a figure is wrong, or something "
                    "stops it early. Clean it, look for what stops it, measure again.");
    return with("The shaft closes at {closed}{wide:| between its inner crosses}, but its halves should give {modelled}: it closes further than they allow. The shaft is altered or "
                "a figure is wrong: measure again.");
}

}  // namespace

std::string sentence(const Contradicting& found, const Wording& w)
{
    return w("Contradiction: {one} is {is:more than|less than|not less than|not more than} {than}.", {{"one", text(found.one, w)}, {"is", found.is}, {"than", text(found.than, w)}});
}

std::string sentence(const AnglesContradict& found, const Wording& w)
{
    return w("Contradiction: the {end:tractor|implement} end's working angle {working} ({place}) is more than its turning angle {turning} ({place}).",
             {{"end", found.end}, {"working", w.angle(found.working, 3)}, {"turning", w.angle(found.turning, 3)}, {"place", place_text(found.place, w)}});
}

std::string sentence(const TubesDoNotMeet& found, const Wording& w)
{
    return w("Contradiction: {closed} is not less than {inner} and {outer} together: the tubes would not meet.",
             {{"closed", text(found.closed, w)}, {"inner", text(found.inner, w)}, {"outer", text(found.outer, w)}});
}

std::string sentence(const OutOfBounds& found, const Wording& w)
{
    const auto limit = [&](Length length) { return w.length(Rounded::measured, length); };
    const Length read_otherwise = found.if_inches.value_or(found.if_millimetres.value_or(Length()));
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"figure", text(found.figure, w)}, {"least", limit(found.least)}, {"greatest", limit(found.greatest)},
                           {"millimetres", figure_of_with_unit(Rounded::measured, read_otherwise, Units::mm)}});
    };
    if (found.if_inches)
        return with("No shaft has such a length: {figure} is not within {least} to {greatest}: is its unit right? If it was measured in inches (in) it is {millimetres}.");
    if (found.if_millimetres)
        return with("No shaft has such a length: {figure} is not within {least} to {greatest}: is its unit right? If it was measured in millimetres (mm) it is {millimetres}.");
    return with("No shaft has such a length: {figure} is not within {least} to {greatest}.");
}

std::string sentence(const LengthsUnreadable& found, const Wording& w)
{
    return std::visit([&](const auto& why) { return unreadable(why, w); }, found.why);
}

std::string sentence(const ReadInLine& found, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"range", found.range}, {"ends", ends_of(found.ends)}, {"longer", w.length(Rounded::longest, found.longer)},
                           {"overlap", w.length(Rounded::overlap, found.overlap.value_or(Length()))}});
    };
    if (!found.overlap)
        return with("The longest {range:working|turning|standing} length was read with the joints in line, for no {range:working|turning|standing} angle is given for the "
                    "{ends:tractor end|implement end|tractor and implement ends}; at the limit angle it would be {longer} longer.");
    return with("The longest {range:working|turning|standing} length was read with the joints in line, for no {range:working|turning|standing} angle is given for the "
                "{ends:tractor end|implement end|tractor and implement ends}; at the limit angle it would be {longer} longer and leave an overlap of {overlap}.");
}

std::string sentence(const MachineDisagrees& found, const Wording& w)
{
    return of_tractor(found.tractor, disputed_text(found.disputed, w), w);
}

std::string sentence(const LimitLoosened& found, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"limit", row_of(found.limit).name}, {"value", limit_text(found.limit, found.value, w)}, {"workshop", limit_text(found.limit, found.workshop, w)}});
    };
    return w.of_new_shaft() ? with("The order's limit {limit} {value} is looser than the workshop's {workshop}.") : with("The job's limit {limit} {value} is looser than the workshop's {workshop}.");
}

std::string sentence(const StopImpossible& found, const Wording& w)
{
    return w("Contradiction: {shoulder} is less than {least}, the least that it can be: no tube stops that near to the cross. Measure it again.",
             {{"shoulder", text(found.shoulder, w)}, {"least", exact(found.least, w)}});
}

std::string sentence(const StopUnlikeSeries& found, const Wording& w)
{
    const Length apart = found.shoulder.length - found.series;
    const bool less = apart < Length();
    return w("Contradiction: {shoulder} is {apart} {less:more|less} than its series' {series}, and the closed length does not bear it out. Measure it again; if the half truly is of "
             "another kind, leave the series out and state both halves' shoulders.",
             {{"shoulder", text(found.shoulder, w)}, {"apart", exact(less ? -apart : apart, w)}, {"less", less}, {"series", exact(found.series, w)}});
}

std::string sentence(const StopRestsAlone& found, const Wording& w)
{
    return w("The {shoulder} rests on this one figure: no series states it and the closed length does not bear it out. Confirm it before sawing.", {{"shoulder", text(found.shoulder, w)}});
}

std::string sentence(const ClosedDisagrees& found, const Wording& w)
{
    std::vector<std::string> sentences{closed_disagrees(found, w), w("Each tube is cut as if it were the one that stops.")};
    if (found.to_measure) sentences.push_back(w("Measure the {tube:inner|outer} half too.", {{"tube", *found.to_measure}}));
    return running_text(sentences);
}

std::string sentence(const ReadAtOtherCross& found, const Wording& w)
{
    return w("Contradiction: {closed}, taken from the {meant:outer|inner} cross, disagrees with the halves by the spacing of the wide-angle joint: it seems to be measured from the "
             "{meant:inner|outer} cross. State the cross it was measured from; if the shaft truly closes so, state each half's own shoulder as measured.",
             {{"closed", text(found.closed, w)}, {"meant", found.meant}});
}

std::string sentence(const ListedAtOtherCross& found, const Wording& w)
{
    return w("Contradiction: {closed}, taken from the {meant:outer|inner} cross, is none of its series' closed lengths, but read from the {meant:inner|outer} cross it is one. "
             "State the cross it was measured from, or measure both halves.",
             {{"closed", text(found.closed, w)}, {"meant", found.meant}});
}

std::string sentence(const ClosedNotListed& found, const Wording& w)
{
    const NamedValue closed{"closed", text(found.closed, w)};
    return found.any_listed ? w("Nothing confirms the {closed}: it is none of its series' closed lengths. Is the shaft uncut? Measure both halves.", {closed})
                            : w("Nothing confirms the {closed}: its series lists no closed lengths. Is the shaft uncut? Measure both halves.", {closed});
}

std::string sentence(const HalvesExchanged& found, const Wording& w)
{
    const auto with = [&](std::string_view pattern) { return w(pattern, {{"inner", text(found.inner, w)}, {"outer", text(found.outer, w)}}); };
    return found.refuses ? with("Contradiction: {inner} and {outer} seem to be exchanged: the other way round they give the closed length, as stated they do not. Measure both again.")
                         : with("The halves are perhaps exchanged: {inner} and {outer} give the closed length the other way round. The cut is safe in either reading; measure both again.");
}

}  // namespace shaftcut
