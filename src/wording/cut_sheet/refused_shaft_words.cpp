// What the shaft would do on its machine, and what may not be done with it.
#include "checks/check_sentences.hpp"
#include "cut_sheet/refused_parts_words.hpp"
#include "hitch/geometry_figures.hpp"

namespace shaftcut::cut_sheet {
namespace {

std::string bends(const JointAngles& found, const AngleInRange& one, const Wording& w)
{
    const int decimals = w.angle(one.angle) == w.angle(one.limit) ? 3 : 1;
    const NamedValue joint{"joint", found.joint}, end{"end", found.end}, range{"range", one.range}, angle{"angle", w.angle(one.angle, decimals)}, limit{"limit", w.angle(one.limit, 3)};
    if (!one.at) return w("The {joint:standard|wide-angle} joint at the {end:tractor|implement} would bend by {angle} {range:at work|when turning|when stopped}; {limit} is the most.", {joint, end, range, angle, limit});
    return w("The {joint:standard|wide-angle} joint at the {end:tractor|implement} would bend by {angle} {range:at work|when turning|when stopped} ({posture}); {limit} is the most.",
             {joint, end, range, angle, limit, {"posture", in_words(*one.at, w)}});
}

}  // namespace

std::string refused(PlainFinding found, const Wording& w)
{
    if (found == PlainFinding::no_joint_folds_so_far || found == PlainFinding::other_half_not_rated) return "";
    if (found == PlainFinding::overlap_not_known) return w("How far the two tubes would hold in each other is not known: the halves were not measured.");
    // What is wrong with the shaft as it came in is short already.
    return say(CheckFinding(found), w);
}

std::string refused(const ClearanceLeft& found, const Wording& w)
{
    if (found.clearance >= found.asked) return "";
    return w("When it is shortest only {clearance} would be left to close; {asked} is the least.",
             {{"clearance", w.beside(Rounded::clearance, found.clearance, found.asked)}, {"asked", w.both(Rounded::clearance, found.asked)}});
}

std::string refused(const ClearanceAtWorst& found, const Wording& w)
{
    if (found.worst > Length()) return "";
    return w("The shortest and the closed length are not known well enough: it could be pushed hard home.");
}

std::string refused(const OverlapLeft& found, const std::string& at, const Wording& w)
{
    if (!found.fails) return "";
    const bool apart = found.overlap < Length();
    const NamedValue range{"range", found.range}, overlap{"overlap", apart ? w.below_zero(Rounded::overlap, found.overlap, found.least) : w.beside(Rounded::overlap, found.overlap, found.least)},
        least{"least", w.beside(Rounded::overlap, found.least, found.overlap)}, where{"where", at};
    if (apart && at.empty()) return w("When it is longest {range:at work|turning|standing} the two tubes would be {overlap} out of each other.", {range, overlap});
    if (apart) return w("When it is longest {range:at work|turning|standing}, {where}, the two tubes would be {overlap} out of each other.", {range, overlap, where});
    if (at.empty()) return w("When it is longest {range:at work|turning|standing} the two tubes would hold in each other by only {overlap}; {least} is the least.", {range, overlap, least});
    return w("When it is longest {range:at work|turning|standing}, {where}, the two tubes would hold in each other by only {overlap}; {least} is the least.", {range, overlap, least, where});
}

std::string refused(const TubeTooShort& found, const Wording& w)
{
    return w("Cut to fit, a tube would be {short} shorter than its series allows.", {{"short", w.below_zero(Rounded::kept, found.left, Length())}});
}

std::string refused(const GuardClearance& found, const Wording& w)
{
    if (found.clearance >= Length()) return "";
    return w("When it is shortest the guards would stop it: they are {over} too long.", {{"over", w.below_zero(Rounded::clearance, found.clearance, found.asked)}});
}

std::string refused(const GuardOverlap& found, const Wording& w)
{
    if (found.overlap >= Length()) return "";
    return w("When it is longest the guards would leave {apart} of it bare.", {{"apart", w.below_zero(Rounded::overlap, found.overlap, found.asked)}});
}

std::string refused(const GuardsApartAtWorst& found, const Wording& w)
{
    return w("When it is longest the guards could leave {apart} of it bare, by what the lengths may be wrong.", {{"apart", w.below_zero(Rounded::overlap, found.overlap, Length())}});
}

std::string refused(const GuardCutAway& found, const Wording& w) { return w("Cut to fit, too little of the {tube:inner|outer} half's guard would be left.", {{"tube", found.tube}}); }

std::string refused(const JointAngles& found, const Wording& w)
{
    std::vector<std::string> sentences;
    for (const AngleInRange& one : found.angles)
        if (one.angle > one.limit) sentences.push_back(bends(found, one, w));
    return running_text(sentences);
}

std::string refused(const ShorteningForbidden& found, const Wording& w) { return w("The {tube:inner|outer} tube of this series must not be shortened.", {{"tube", found.tube}}); }

std::string refused(const HoleCutOff& found, const Wording& w)
{
    return w("Cut to fit, the {tube:inner|outer} tube would lose its lubrication hole, {hole} from the cross.", {{"tube", found.tube}, {"hole", w.both(Rounded::measured, found.hole)}});
}

std::string refused(const LockStandsOut& found, const Wording& w)
{
    if (found.rule != LockRule::under_it) return "";
    return w("The {pin:sliding collar|push pin} at the {end:tractor|implement} end stands out and can catch clothing: not allowed on shafts built from 2021 (EN 12965:2019).",
             {{"pin", found.lock == Lock::exposed_push_pin}, {"end", found.end}});
}

std::string refused(const CouplingDiffers& found, const Wording& w)
{
    return w("The {end:tractor|implement} end does not go on: its yoke is {connection}, the stub {onto}.", {{"end", found.end}, {"connection", found.connection}, {"onto", found.onto}});
}

std::string refused(const DeviceAtTractor& found, const Wording& w)
{
    return w("{device:The slip clutch|The overrunning clutch|The shear bolt} sits at the tractor; it belongs at the implement.", {{"device", found.device}});
}

std::string refused(const LoadTaken& found, const Wording& w)
{
    if (found.level != LoadLevel::above) return "";
    return w("The machine takes {taken}; at {speed} min⁻¹ series {series} carries {carried}.",
             {{"taken", w.power(found.taken)}, {"speed", found.speed}, {"series", found.series}, {"carried", w.power(found.carried)}});
}

}  // namespace shaftcut::cut_sheet
