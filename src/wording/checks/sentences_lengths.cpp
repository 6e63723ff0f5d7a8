// Clearance, overlaps, what is left of the tubes, and the guards.
#include "checks/finding_sentences.hpp"

namespace shaftcut {
namespace {

// "1/2 of the new closed overlap": what the least overlap is.
std::string asked(const OverlapLeft& found, const Wording& w)
{
    if (found.part) return w("{numerator}/{denominator} of the new closed overlap", {{"numerator", found.part->numerator}, {"denominator", found.part->denominator}});
    return w("the least with the PTO {range:working|turning|stopped}", {{"range", found.range}});
}

// Of a shaft that fails: a refused one in the fitter's hands still has the overlap that it has, what fails is the overlap after a cut.
const char* pattern_failing(bool apart, bool is_new)
{
    if (apart)
        return is_new ? "Built to fit the shortest position, at the longest {range:working|turning|standing} length the tubes would be {apart} apart; at least {least} of overlap is asked ({asked})."
                      : "Cut to fit the shortest position, at the longest {range:working|turning|standing} length the tubes would be {apart} apart; at least {least} of overlap is asked ({asked}).";
    return is_new ? "Built to fit the shortest position, at the longest {range:working|turning|standing} length the overlap would be {overlap}; at least {least} of overlap is asked ({asked})."
                  : "Cut to fit the shortest position, at the longest {range:working|turning|standing} length the overlap would be {overlap}; at least {least} of overlap is asked ({asked}).";
}

const char* pattern_holding(bool apart)
{
    return apart ? "At the longest {range:working|turning|standing} length the tubes would be {apart} apart; at least {least} of overlap is asked ({asked})."
                 : "At the longest {range:working|turning|standing} length the overlap is {overlap}; at least {least} of overlap is asked ({asked}).";
}

}  // namespace

std::string sentence(const ClearanceLeft& found, const Wording& w)
{
    return w("Clearance left at the shortest length is {clearance}; {asked} is asked.",
             {{"clearance", w.beside(Rounded::clearance, found.clearance, found.asked)}, {"asked", w.both(Rounded::clearance, found.asked)}});
}

std::string sentence(const ClearanceAtWorst& found, const Wording& w)
{
    return w("Tolerances could leave {worst} (floor {floor}).", {{"worst", w.beside(Rounded::clearance, found.worst, found.floor)}, {"floor", w.both(Rounded::clearance, found.floor)}});
}

std::string sentence(const LeftAsCut& found, const Wording& w)
{
    const auto kept = [&](Tube tube) { return found.kept[tube] ? w.both(Rounded::kept, *found.kept[tube]) : std::string(); };
    if (found.kept[Tube::inner] && found.kept[Tube::outer])
        return w("An earlier sheet kept {inner} of the inner half and {outer} of the outer half: neither is cut again. For another machine leave cut-to out.",
                 {{"inner", kept(Tube::inner)}, {"outer", kept(Tube::outer)}});
    const Tube tube = found.kept[Tube::inner] ? Tube::inner : Tube::outer;
    return w("An earlier sheet kept {kept} of the {tube:inner|outer} half: it is not cut again. For another machine leave cut-to out.", {{"kept", kept(tube)}, {"tube", tube}});
}

std::string sentence(const OverlapLeft& found, const Wording& w)
{
    const bool apart = found.overlap < Length();
    return w(found.fails ? pattern_failing(apart, w.of_new_shaft()) : pattern_holding(apart),
             {{"range", found.range},
              {"apart", w.below_zero(Rounded::overlap, found.overlap, found.least)},
              {"overlap", w.beside(Rounded::overlap, found.overlap, found.least)},
              {"least", w.beside(Rounded::overlap, found.least, found.overlap)},
              {"asked", asked(found, w)}});
}

std::string sentence(const OverlapAtWorst& found, const Wording& w)
{
    return w("Tolerances could leave {worst}.", {{"worst", w.beside(Rounded::overlap, found.worst, found.least)}});
}

std::string sentence(const NeverLongEnough& found, const Wording& w)
{
    return w("Even at {shortest}, the shortest that leaves its closing clearance, the overlap would be {overlap}; at least {least} is asked with the PTO turning: there is no length at which "
             "this shaft may turn.",
             {{"shortest", w.both(Rounded::shortest, found.shortest)}, {"overlap", w.both(Rounded::overlap, found.overlap)}, {"least", w.both(Rounded::overlap, found.least)}});
}

std::string sentence(const TubeTooShort& found, const Wording& w)
{
    return w("A tube would be {short} shorter than the series allows.", {{"short", w.below_zero(Rounded::kept, found.left, Length())}});
}

std::string sentence(const TubesLeft& found, const Wording& w)
{
    return w("The tubes stay at least {left} longer than the series' least.", {{"left", w.both(Rounded::kept, found.left)}});
}

std::string sentence(const GuardClearance& found, const Wording& w)
{
    return w("The guards have {clearance} left to close at the shortest length; {asked} is asked.",
             {{"clearance", w.beside(Rounded::clearance, found.clearance, found.asked)}, {"asked", w.both(Rounded::clearance, found.asked)}});
}

std::string sentence(const GuardOverlap& found, const Wording& w)
{
    const NamedValue asked{"asked", w.both(Rounded::overlap, found.asked)};
    if (found.overlap < Length())
        return w("The guard tubes are {apart} apart at the greatest length; an overlap of {asked} is asked.", {{"apart", w.below_zero(Rounded::overlap, found.overlap, found.asked)}, asked});
    return w("The guard tubes overlap by {overlap} at the greatest length; an overlap of {asked} is asked.", {{"overlap", w.beside(Rounded::overlap, found.overlap, found.asked)}, asked});
}

std::string sentence(const GuardsApartAtWorst& found, const Wording& w)
{
    return w("Tolerances could leave them {apart} apart: the shaft would lie bare.", {{"apart", w.below_zero(Rounded::overlap, found.overlap, Length())}});
}

std::string sentence(const GuardCutAway& found, const Wording& w)
{
    return w("The {tube:inner|outer} guard would be cut away: nothing, or too little to cover the shaft, would be left of it.", {{"tube", found.tube}});
}

std::string sentence(const GuardSetback& found, const Wording& w)
{
    return w("A guard tube ends up to {setback} short of its drive tube; at most {most} is asked.",
             {{"setback", w.beside(Rounded::setback, found.setback, found.most)}, {"most", w.both(Rounded::setback, found.most)}});
}

std::string sentence(const GuardBeyondTube& found, const Wording& w)
{
    return w("A guard tube ends {beyond} beyond its drive tube.", {{"beyond", w.below_zero(Rounded::setback, found.setback, Length())}});
}

}  // namespace shaftcut
