#include "cut_sheet/warning_words.hpp"

#include "checks/check_sentences.hpp"
#include "checks/check_words.hpp"
#include "checks/limit_words.hpp"
#include "cut_sheet/refusal_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

std::string one_line(const Check& check, const Wording& w)
{
    const NamedValue value{"value", check_figure(check, check.value, w)}, worst{"worst", check_figure(check, check.worst, w)}, limit{"limit", check_figure(check, check.limit, w)};
    switch (check.id) {
    case CheckId::closing_clearance: return w("WARNING: at worst only {worst} is left to close when it is shortest.", {worst});
    case CheckId::overlap_working: return w("WARNING: at worst the tubes hold by only {worst} at work; {limit} is the least.", {worst, limit});
    case CheckId::overlap_turning: return w("WARNING: at worst the tubes hold by only {worst} when turning; {limit} is the least.", {worst, limit});
    case CheckId::overlap_standing: return w("WARNING: at worst the tubes hold by only {worst} when stopped; {limit} is the least.", {worst, limit});
    case CheckId::guard_clearance: return w("WARNING: the guards come within {value} of each other when it is shortest.", {value});
    case CheckId::guard_cover: return w("WARNING: the guards overlap by only {value} when it is longest; {limit} is right.", {value, limit});
    case CheckId::guard_setback: return w("WARNING: a tube and its guard end {value} apart; 0 to {limit} is right.", {value, limit});
    case CheckId::joint_angle_tractor:
    case CheckId::joint_angle_implement:
        return w("WARNING: the {end:tractor|implement} joint bends by {value} at work; {limit} is the most.",
                 {{"end", check.id == CheckId::joint_angle_tractor ? End::tractor : End::implement}, value, limit});
    case CheckId::irregularity: return w("WARNING: the speed ripples by up to {value}; {limit} is the most.", {value, limit});
    case CheckId::rating: return w("WARNING: it carries {value}, near the {limit} that it is made for.", {value, limit});
    case CheckId::connection: return w("WARNING: the speed is not the one that its ends are rated for.");
    default: return w("WARNING: {check}: {says}", {{"check", spoken(check.id, w)}, {"says", says_without_places(check, w)}});
    }
}

enum class LengthOfFit { shortest, working, turning, standing };

LengthOfFit which(const std::optional<Range>& range)
{
    if (!range) return LengthOfFit::shortest;
    return *range == Range::working ? LengthOfFit::working : *range == Range::turning ? LengthOfFit::turning : LengthOfFit::standing;
}

// The thing that a check warns of; empty of what is said with the check's own figures.
template <class Finding>
std::string doubt(const Finding&, const Wording&)
{
    return {};
}

std::string doubt(const ReadInLine& found, const Wording& w)
{
    return w("WARNING: the longest {range:at work|turning|standing} was read with the joints in line: bent it may be {longer} longer.",
             {{"range", found.range}, {"longer", w.length(Rounded::longest, found.longer)}});
}

std::string doubt(const MachineDisagrees& found, const Wording& w)
{
    const DisputedLength& one = found.disputed;
    return w("WARNING: {which:the shortest|the longest at work|the longest turning|the longest standing} was measured as {measured}, by the machine's dimensions it is {reached}.",
             {{"which", which(one.range)},
              {"measured", w.length(Rounded::measured, one.measured.value)},
              {"reached", w.length(one.range ? Rounded::longest : Rounded::shortest, one.reached.length)}});
}

std::string doubt(const LimitLoosened& found, const Wording& w)
{
    return w("WARNING: a limit was made looser than the workshop's: {limit} {value} instead of {workshop}.",
             {{"limit", row_of(found.limit).name}, {"value", limit_text(found.limit, found.value, w)}, {"workshop", limit_text(found.limit, found.workshop, w)}});
}

std::string doubt(const StopRestsAlone& found, const Wording& w)
{
    return w("WARNING: the {tube:inner|outer} half's stop, {length} from its cross, rests on one figure alone.",
             {{"tube", found.shoulder.tube}, {"length", w.length(Rounded::measured, found.shoulder.length)}});
}

std::string doubt(const ClosedDisagrees& found, const Wording& w)
{
    return w("WARNING: it closes at {closed}{wide:| between its inner crosses}, by its halves it should at {modelled}{guards:|: its guards stop it}.",
             {{"closed", w.length(Rounded::measured, found.closed)}, {"wide", found.wide_angle}, {"modelled", w.length(Rounded::measured, found.modelled)}, {"guards", found.guards_stop}});
}

std::string doubt(const ClosedNotListed& found, const Wording& w)
{
    return w("WARNING: nothing confirms the closed length of {closed}: was it ever cut?", {{"closed", w.length(Rounded::measured, found.closed.length)}});
}

std::string doubt(const HalvesExchanged& found, const Wording& w)
{
    return w("WARNING: the halves of {inner} and {outer} are perhaps exchanged: measure both again.",
             {{"inner", w.length(Rounded::measured, found.inner.length)}, {"outer", w.length(Rounded::measured, found.outer.length)}});
}

std::string doubt(const WorkAfterCut& found, const Wording& w)
{
    const NamedValue tube{"tube", found.tube};
    switch (found.feature) {
    case Feature::coated: return w("WARNING: the {tube:inner|outer} tube is coated: its bare edge is treated after the cut.", {tube});
    case Feature::end_stop: return w("WARNING: the {tube:inner|outer} tube has an end stop: off before the cut, on again after it.", {tube});
    case Feature::one_chain_guard: break;
    }
    return w("WARNING: the {tube:inner|outer} half's guard has one chain and loses much: it needs a second one.", {tube});
}

std::string doubt(const LockNotStated& found, const Wording& w)
{
    return w("WARNING: the lock at the {end:tractor|implement} end is not stated: look whether a part of it stands out.", {{"end", found.end}});
}
std::string doubt(const LockUnknown& found, const Wording& w)
{
    return w("WARNING: the lock at the {end:tractor|implement} end is not known: look whether a part of it stands out.", {{"end", found.end}});
}
std::string doubt(const LockStandsOut& found, const Wording& w)
{
    return w("WARNING: the {pin:sliding collar|push pin} at the {end:tractor|implement} end stands out and can catch clothing: cover it.",
             {{"pin", found.lock == Lock::exposed_push_pin}, {"end", found.end}});
}

// A line for each thing.
std::vector<std::string> doubts(const Check& check, const Wording& w)
{
    std::vector<std::string> lines;
    for (const CheckFinding& finding : check.findings)
        if (std::string line = std::visit([&](const auto& one) { return doubt(one, w); }, finding); !line.empty()) lines.push_back(std::move(line));
    return lines;
}

bool is_about_guard(const CheckFinding& finding)
{
    const auto* plain = std::get_if<PlainFinding>(&finding);
    return std::holds_alternative<HalfWithoutGuard>(finding) || (plain && (*plain == PlainFinding::guard_missing || *plain == PlainFinding::guard_damaged));
}

}  // namespace

std::vector<std::string> in_one_line(const Check& check, bool guard_said, const Wording& w)
{
    if (check.id != CheckId::condition) {
        const std::vector<std::string> things = doubts(check, w);
        return things.empty() ? std::vector{one_line(check, w)} : things;
    }
    std::vector<std::string> lines, tractors;
    for (const CheckFinding& finding : check.findings) {
        if (const auto* other = std::get_if<OtherTractor>(&finding)) tractors.push_back(other->tractor);
        else if (!guard_said || !is_about_guard(finding)) lines.push_back(w("WARNING: {found}", {{"found", say(finding, w)}}));
    }
    if (!tractors.empty()) lines.push_back(w("WARNING: goes on no tractor that was not measured: {tractors}.", {{"tractors", w.either(tractors)}}));
    return lines;
}

std::string numbered_way(std::size_t number, const std::string& way, const Wording& w) { return w("{number}. {way}", {{"number", number}, {"way", way}}); }

}  // namespace shaftcut::cut_sheet
