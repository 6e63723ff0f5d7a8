// What a fitter is to know besides the checks.
#include "hitch/geometry_figures.hpp"
#include "identify/figure_words.hpp"
#include "order/instruction_words.hpp"
#include "whose.hpp"

namespace shaftcut {
namespace {

std::string said(Remark note, const Wording& w)
{
    switch (note) {
    case Remark::least_and_greatest_count: return w("The shaft must serve all of these: the least shortest and the greatest longest count.");
    case Remark::machine_not_here: return running_text({w("The machine is not here: the shaft was not tried on it."), w("Try both positions there before the PTO is used.")});
    case Remark::guard_clearance_by_hand: return w("By hand, for the guard clearance: push fully together; the guards must not meet before the tubes.");
    case Remark::guard_cover_by_hand: return w("By hand, for the guard cover: at the longest position no bare tube may show.");
    case Remark::tube_left_by_hand: return w("By hand, for the tube left: compare with the least that the maker allows.");
    case Remark::guard_not_measured: return w("A guard was not measured: its cut is that of its tube. Confirm it by holding the halves side by side.");
    case Remark::half_not_measured: return w("A half was not measured: its length follows from the closed length and the other half's shoulder.");
    case Remark::half_not_measured_to_be_sawn: break;
    }
    return running_text({said(Remark::half_not_measured, w), w("Measure it before sawing.")});
}

std::string said(const FitLengths& note, const Wording& w)
{
    const NamedValue tractor{"tractor", note.tractor}, read{"read", note.read};
    const NamedValue shortest{"shortest", w.both(Rounded::shortest, note.shortest)}, longest{"longest", w.both(Rounded::longest, note.longest_turning)};
    if (!note.shortest_between_inner) {
        if (note.tractor.empty())
            return w("Shortest {shortest}{read:| between the locking grooves| from the outer cross| from the inner cross}; longest turning {longest}.", {shortest, read, longest});
        return w("{tractor}: shortest {shortest}{read:| between the locking grooves| from the outer cross| from the inner cross}; longest turning {longest}.",
                 {tractor, shortest, read, longest});
    }
    const NamedValue shortest_inner{"shortest_inner", w.both(Rounded::shortest, *note.shortest_between_inner)};
    const NamedValue longest_inner{"longest_inner", w.both(Rounded::longest, note.longest_between_inner.value())};
    if (note.tractor.empty())
        return w("Shortest {shortest}{read:| between the locking grooves| from the outer cross| from the inner cross}, {shortest_inner} between the inner crosses; "
                 "longest turning {longest}, {longest_inner} between the inner crosses.",
                 {shortest, read, shortest_inner, longest, longest_inner});
    return w("{tractor}: shortest {shortest}{read:| between the locking grooves| from the outer cross| from the inner cross}, {shortest_inner} between the inner crosses; "
             "longest turning {longest}, {longest_inner} between the inner crosses.",
             {tractor, shortest, read, shortest_inner, longest, longest_inner});
}

std::string said(const UnmeasuredTractors& note, const Wording& w)
{
    return running_text({w("Not measured, but drives the machine too: {tractors}.", {{"tractors", w.all_of(note.names)}}), w("The shaft goes on no tractor that was not measured.")});
}

std::string said(const LooserLimit& note, const Wording& w)
{
    if (note.by.empty()) return w("A limit was made looser: {why}.", {{"why", note.why}});
    return w("A limit was made looser by {by}: {why}.", {{"by", note.by}, {"why", note.why}});
}

// A standard's figures, in its own unit.
std::string said(const SawnWithin& note, const Wording& w)
{
    const auto millimetres = [](Length length) { return figure_with_unit(length, Units::mm); };
    return w("Sawn lengths are within ± {saw}; ISO 2768-1 class c allows ± {general} for the shortest of them.", {{"saw", millimetres(note.saw)}, {"general", millimetres(note.general)}});
}

std::string said(const MissedByLift& missed, const Wording& w)
{
    const NamedValue at_ends{"at_ends", w.length(missed.at_ends_rounded, missed.at_ends)}, more{"missed", w.length(Rounded::measured, missed.missed)};
    const NamedValue clearance{"clearance", w.length(Rounded::clearance, missed.clearance)};
    const std::string inside = w("The shortest lies inside the lift: measured at its two ends it would be {at_ends}, {missed} more.", {at_ends, more});
    const Length left = missed.clearance - missed.missed;
    if (left > Length())
        return running_text({inside, w("A shaft cut to that with a closing clearance of {clearance} would have only {left} left on the way.", {clearance, {"left", w.length(Rounded::clearance, left)}})});
    return running_text({inside, w("A shaft cut to that with a closing clearance of {clearance} would bottom on the way, {excess} too long, and bend.",
                                   {clearance, {"excess", w.length(Rounded::measured, -left)}})});
}

std::string whole(const ShortestOfMachine& note, const Wording& w)
{
    const std::string shortest = w("From the machine's geometry the shortest is {shortest} between the inner crosses, {position}; {doubt}.",
                                   {{"shortest", w.length(Rounded::shortest, note.shortest.length)}, {"position", in_words(note.shortest.at, w)}, {"doubt", doubt_in_words(note.shortest, w)}});
    return note.missed ? running_text({shortest, said(*note.missed, w)}) : shortest;
}

std::string said(const ShortestOfMachine& note, const Wording& w)
{
    return of_tractor(note.tractor, whole(note, w), w);
}

std::string size_of(Length move, const Wording& w) { return w.length(Rounded::measured, move < Length() ? -move : move); }

std::string said(const PinForEqualAngles& note, const Wording& w)
{
    const NamedValue tractor{"tractor", w.angle(note.tractor)}, implement{"implement", w.angle(note.implement)};
    if (note.move == Length()) return w("The pin stands where the joint angles come out nearest to equal, {tractor} and {implement} at most.", {tractor, implement});
    return w("The joint angles would come out {equal:nearest to equal|equal}, {tractor} and {implement} at most, with the pin {move} {forwards:further rearwards|further forwards}, "
             "the machine with it.",
             {{"equal", note.equal}, tractor, implement, {"move", size_of(note.move, w)}, {"forwards", note.move < Length()}});
}

std::string said(const PinBehindCentre& note, const Wording& w)
{
    const NamedValue end{"end", note.end};
    if (note.distance == Length()) return w("The pin stands under the centre of the wide-angle joint at the {end:tractor|implement} end.", {end});
    return w("The pin is {distance} {before:behind|in front of} the centre of the wide-angle joint at the {end:tractor|implement} end; right under it that joint would take the whole turn.",
             {{"distance", size_of(note.distance, w)}, {"before", note.distance < Length()}, end});
}

// Of measures that exclude the series that the job states, and are sure of no other.
std::string said_of_excluded(const IdentifiedBy& by, const Wording& w)
{
    const NamedValue stated{"stated", *by.stated};
    const auto with = [&](std::string_view pattern) { return w(pattern, {stated}); };
    switch (by.verdict) {
    case IdentifyVerdict::mixed: return with("By its measures it is of more than one make, not of {stated}: measure again, or put the series right, before anything is sawn.");
    case IdentifyVerdict::none: return with("By its measures it is of no series that is known, not of {stated}: measure again, or put the series right, before anything is sawn.");
    default: return with("Its measures do not decide its series, but they are not those of {stated}: measure again, or put the series right, before anything is sawn.");
    }
}

std::string said(const IdentifiedBy& by, const Wording& w)
{
    constexpr double named_from = 10;
    const NamedValue series{"series", by.likeliest}, percent{"percent", identify_words::percent(by.percent, w)}, stated{"stated", by.stated.value_or("")};
    if (by.excluded && by.verdict != IdentifyVerdict::one) return said_of_excluded(by, w);
    switch (by.verdict) {
    case IdentifyVerdict::one:
        if (by.stated && by.likeliest != *by.stated) return w("It measures like {series} ({percent}), not like {stated}: lay old beside new before anything is sawn.", {series, percent, stated});
        return w("Its series was told by measuring: like {series} ({percent}).", {series, percent});
    case IdentifyVerdict::mixed: return w("By its measures it is of more than one make.");
    case IdentifyVerdict::none: return w("By its measures it is of no series that is known.");
    case IdentifyVerdict::several: break;
    }
    if (by.percent < named_from) return w("Its measures do not decide its series.");
    return w("Its measures do not decide its series: {series} first ({percent}).", {series, percent});
}

}  // namespace

std::string say(const Note& note, const Wording& w)
{
    return std::visit([&w](const auto& one) { return said(one, w); }, note);
}

std::string name_of(const MachineScene& scene, const Wording& w)
{
    switch (scene.of) {
    case SceneOf::lowest: return w("Lowest");
    case SceneOf::highest: return w("Highest");
    case SceneOf::shortest: return w("Shortest");
    case SceneOf::longest: break;
    }
    return w("Longest, {range:working|turning|standing}", {{"range", scene.range.value()}});
}

}  // namespace shaftcut
