// What may be cut, locks, couplings, the device, and the state in which the shaft came in.
#include "checks/finding_sentences.hpp"

namespace shaftcut {
namespace {

// Of a lock with a part that stands out: its collar or its push pin.
NamedValue part_of(Lock lock) { return {"pin", lock == Lock::exposed_push_pin}; }

}  // namespace

std::string sentence(PlainFinding finding, const Wording& w)
{
    switch (finding) {
    case PlainFinding::lengths_agree: return w.of_new_shaft() ? w("The lengths agree with each other.") : w("The measured lengths agree with each other.");
    case PlainFinding::overlap_not_known: return w("The overlap cannot be known: the halves were not measured and no shoulders are known to derive them from.");
    case PlainFinding::no_tube_cut: return w("No drive tube is cut.");
    case PlainFinding::no_joint_folds_so_far: return w("No joint folds past 90°.");
    case PlainFinding::other_half_not_rated: return w("What its other half carries is not known.");
    case PlainFinding::nothing_cut: return w.of_new_shaft() ? w("Nothing is shortened: its tubes are sawn to their lengths.") : w("Nothing is cut.");
    case PlainFinding::nothing_forbids_cut: return w("Nothing forbids the cut.");
    case PlainFinding::nothing_known_forbids_cut: return w("Nothing that is known of this shaft forbids the cut.");
    case PlainFinding::no_lock_stands_out: return w("No part of a lock stands out.");
    case PlainFinding::connections_match: return w("The connections match what they go onto.");
    case PlainFinding::no_device_at_tractor: return w("No overload device sits on the tractor end of a primary shaft.");
    case PlainFinding::looks_good: return w("What was looked at is good.");
    case PlainFinding::welded: return w("The shaft has been welded: put in new parts, do not cut it.");
    case PlainFinding::cracked: return w("The shaft is cracked: put in new parts, do not cut it.");
    case PlainFinding::tube_bent: return w("A tube is bent: put in a new one.");
    case PlainFinding::tube_twisted: return w("A tube is twisted: put in a new one, and ask what overloaded it.");
    case PlainFinding::tubes_do_not_slide: return w("The tubes do not slide in each other, also when cleaned: nobody knows how far they close.");
    case PlainFinding::guard_missing: return w("A guard is missing: the shaft must not run without it.");
    case PlainFinding::guard_damaged: return w("A guard is damaged: put in what is broken before the shaft runs.");
    case PlainFinding::chain_missing: return w("A chain is missing: without it the guard turns with the shaft.");
    case PlainFinding::chain_damaged: return w("A chain is damaged: put in a new one.");
    case PlainFinding::cross_worn: return w("A cross is worn: put in a new one.");
    case PlainFinding::tube_dented: return w("A tube is dented: see that the dent lies in what is cut off, or put in a new tube.");
    case PlainFinding::lock_stiff: return w("A lock is stiff: clean and grease it until it snaps home.");
    case PlainFinding::lock_damaged: return w("A lock is damaged: put in a new one before the shaft runs.");
    case PlainFinding::device_stuck: return w("The overload device is stuck: free or replace it, it protects nothing.");
    case PlainFinding::out_of_phase: break;
    }
    return w("The yokes are not in one plane: put the tubes together in phase.");
}

std::string sentence(const ShorteningForbidden& found, const Wording& w) { return w("The series forbids shortening the {tube:inner|outer} tube.", {{"tube", found.tube}}); }

std::string sentence(const HoleCutOff& found, const Wording& w)
{
    return w("The {tube:inner|outer} tube would end before its lubrication hole, whose far edge is {hole} from the cross.", {{"tube", found.tube}, {"hole", w.both(Rounded::measured, found.hole)}});
}

std::string sentence(const WorkAfterCut& found, const Wording& w)
{
    const NamedValue tube{"tube", found.tube};
    switch (found.feature) {
    case Feature::coated: return w("The {tube:inner|outer} tube is coated: deburr without tearing the coating and treat the bare edge.", {tube});
    case Feature::end_stop: return w("The {tube:inner|outer} tube has an end stop: take it off before the cut and fit it again at the new end.", {tube});
    case Feature::one_chain_guard: break;
    }
    return w("The {tube:inner|outer} guard is held by one chain and loses more than {most}: fit a second chain at the tractor end.", {tube, {"most", w.both(Rounded::cut, found.one_chain)}});
}

std::string sentence(const LockNotStated& found, const Wording& w) { return w("The lock at the {end:tractor|implement} end is not stated.", {{"end", found.end}}); }

std::string sentence(const LockUnknown& found, const Wording& w)
{
    return w("The lock at the {end:tractor|implement} end is unknown: look whether any part of it stands out.", {{"end", found.end}});
}

std::string sentence(const LockStandsOut& found, const Wording& w)
{
    const auto with = [&](std::string_view pattern) { return w(pattern, {part_of(found.lock), {"end", found.end}}); };
    switch (found.rule) {
    case LockRule::secondary:
        return with("The rule on locks is for primary shafts, but the exposed {pin:sliding collar|push pin} at the {end:tractor|implement} end can catch clothing: see that it is shielded.");
    case LockRule::before_it:
        return with("An exposed {pin:sliding collar|push pin} locks the {end:tractor|implement} end of a primary shaft built before 2021: it can catch clothing.");
    case LockRule::under_it:
        return with("An exposed {pin:sliding collar|push pin} locks the {end:tractor|implement} end of a primary shaft: no part of a lock may stand out (EN 12965:2019, built from 2021).");
    case LockRule::year_not_known: break;
    }
    return with("An exposed {pin:sliding collar|push pin} locks the {end:tractor|implement} end of a primary shaft whose year of building is not known: it can catch clothing, and if the "
                "shaft was built in 2021 or later no part of a lock may stand out (EN 12965:2019).");
}

std::string sentence(const CouplingNotStated& found, const Wording& w)
{
    return w("Not stated for the {end:tractor|implement} end: its connection or what it goes onto.", {{"end", found.end}});
}

std::string sentence(const CouplingDiffers& found, const Wording& w)
{
    return w("The {end:tractor|implement} end's yoke is {connection} but goes onto {onto}.", {{"end", found.end}, {"connection", found.connection}, {"onto", found.onto}});
}

std::string sentence(const SpeedNotRated& found, const Wording& w)
{
    std::vector<std::string> rated;
    for (const int speed : found.rated) rated.push_back(std::to_string(speed));
    return w("Connection {connection} at the {end:tractor|implement} end is rated for {rated} min⁻¹, the shaft is to run at {speed} min⁻¹.",
             {{"connection", found.connection}, {"end", found.end}, {"rated", w.either(rated)}, {"speed", found.speed}});
}

std::string sentence(const DeviceAtTractor& found, const Wording& w)
{
    return w("{device:A slip clutch|An overrunning clutch|A shear bolt} sits on the tractor end of a primary shaft; it belongs at the implement end.", {{"device", found.device}});
}

std::string sentence(const HalfWithoutGuard& found, const Wording& w)
{
    return found.guard == GuardUse::none ? w("The {tube:inner|outer} half has no guard: the shaft must not run without one.", {{"tube", found.tube}})
                                         : w("The {tube:inner|outer} half's guard is damaged and not used again: fit a new one.", {{"tube", found.tube}});
}

std::string sentence(const OtherTractor& found, const Wording& w)
{
    return w("Another tractor drives the machine and was not measured: {tractor}. Measure it before this shaft runs behind it.", {{"tractor", found.tractor}});
}

}  // namespace shaftcut
