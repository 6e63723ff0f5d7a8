// Why a shaft is not cut, and what else can be done, in a customer's words: without a figure.
#include <algorithm>

#include "quote_sheet/quote_sheet_words.hpp"

namespace shaftcut::quote_sheet {
namespace {

std::string reason(CheckId check, const Wording& w)
{
    switch (check) {
    case CheckId::consistency: return w("The lengths that were measured contradict one another: they are to be measured again.");
    case CheckId::closing_clearance: return w("In the shortest position it would be pushed home and press on the machine and the tractor.");
    case CheckId::overlap_working: return w("At work its two tubes would no longer hold far enough in one another.");
    case CheckId::overlap_turning: return w("In turns, or lifted while it runs, its two tubes would no longer hold far enough in one another.");
    case CheckId::overlap_standing: return w("Lifted or turned while it stands, its two halves could part.");
    case CheckId::tube_left: return w("Too little of its tubes would be left.");
    case CheckId::shortening_allowed: return w("It may not be shortened by as much as is needed.");
    case CheckId::guard_clearance: return w("Its guards would meet before its tubes do.");
    case CheckId::guard_cover: return w("Its guard would no longer cover it over its whole length.");
    case CheckId::guard_setback: return w("Its guards do not end where they should beside its tubes.");
    case CheckId::joint_angle_tractor: return w("Its joint at the tractor would bend further than it may.");
    case CheckId::joint_angle_implement: return w("Its joint at the machine would bend further than it may.");
    case CheckId::irregularity: return w("It would run too unevenly.");
    case CheckId::locking: return w("A lock of it stands out and can catch clothes.");
    case CheckId::connection: return w("One of its ends is not made for the stub that it goes onto.");
    case CheckId::overload_device: return w("Its overload device sits at the wrong end.");
    case CheckId::rating: return w("It is not strong enough for the power that the machine takes.");
    case CheckId::condition: break;
    }
    return w("As it came in it must not be used again.");
}

// One sentence for all of a kind: the figures stand on the workshop's own papers.
struct Change {
    const Wording& w;

    std::string operator()(const LongestServed&) const { return w("A stop keeps the machine from going as far out."); }
    std::string operator()(const GuardsReach&) const { return w("Longer guards are fitted."); }
    std::string operator()(const ShortestServed&) const { return w("A stop keeps the machine from coming as near to the tractor."); }
    std::string operator()(const SeriesLengths&) const { return another_shaft(); }
    std::string operator()(const NewShaft&) const { return another_shaft(); }
    std::string operator()(const NoNewShaft&) const { return another_shaft(); }
    std::string operator()(const SeriesThatCarries&) const { return another_shaft(); }
    std::string operator()(const MatchConnection&) const { return w("The end that does not match gets another yoke."); }
    std::string operator()(const TurnServed&) const { return w("A stop limits how far the machine turns."); }
    std::string operator()(const PitchServed&) const { return w("A stop limits how far the machine pitches."); }
    std::string operator()(const LiftRangeServed&) const { return w("A stop limits how far the machine is lifted or lowered."); }
    std::string operator()(const PinMoveServed&) const { return w("The hitch pin goes into another hole."); }
    std::string operator()(const LimitMovement& limit) const
    {
        return w("A stop limits how far the machine {movement:turns|is lifted|turns or is lifted}.", {{"movement", limit.movement}});
    }
    std::string operator()(Remedy remedy) const
    {
        switch (remedy) {
        case Remedy::fit_unexposed_locks: return w("The yokes get locks without a part that stands out.");
        case Remedy::device_at_implement: return w("The overload device goes to the other end.");
        case Remedy::put_new_parts: return w("The worn or damaged parts are replaced.");
        case Remedy::mend_every_failure:
        case Remedy::measure_halves:
        case Remedy::measure_between_crosses:
        case Remedy::measure_contradictions:
        case Remedy::measure_more_exactly: return w("It is measured again.");
        case Remedy::raise_shortest_in_vain: break;
        }
        return another_shaft();
    }
    std::string another_shaft() const { return w("Another shaft is taken."); }
};

}  // namespace

std::vector<std::string> why_not(const QuotedWork& work, const Wording& w)
{
    std::vector<std::string> reasons;
    for (const CheckId check : work.failing)
        if (std::string said = reason(check, w); std::find(reasons.begin(), reasons.end(), said) == reasons.end()) reasons.push_back(std::move(said));
    return reasons;
}

std::string change_at_machine(const WayOut& way, const Wording& w) { return std::visit(Change{w}, way); }

}  // namespace shaftcut::quote_sheet
