#include "cut_sheet/warning_words.hpp"

#include "checks/check_sentences.hpp"
#include "checks/check_words.hpp"

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
    case CheckId::locking: return w("WARNING: a lock stands out or is not known: cover it, look at it.");
    case CheckId::connection: return w("WARNING: the speed is not the one that its ends are rated for.");
    case CheckId::shortening_allowed: return w("WARNING: there is work after the cut: coating, end stop or chain.");
    case CheckId::consistency: return w("WARNING: not all lengths or limits agree: read leaf 2 first.");
    default: return w("WARNING: {check}: read leaf 2 first.", {{"check", spoken(check.id, w)}});
    }
}

bool is_about_guard(const CheckFinding& finding)
{
    const auto* plain = std::get_if<PlainFinding>(&finding);
    return std::holds_alternative<HalfWithoutGuard>(finding) || (plain && (*plain == PlainFinding::guard_missing || *plain == PlainFinding::guard_damaged));
}

}  // namespace

std::vector<std::string> in_one_line(const Check& check, bool guard_said, const Wording& w)
{
    if (check.id != CheckId::condition) return {one_line(check, w)};
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
