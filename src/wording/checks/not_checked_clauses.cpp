// Why a check was not made.
#include "checks/finding_sentences.hpp"
#include "separated.hpp"
#include "half_figure_words.hpp"

namespace shaftcut {
namespace {

std::string reason(PlainReason reason, const Wording& w)
{
    switch (reason) {
    case PlainReason::no_shortest: return w("no shortest length is given");
    case PlainReason::shortest_unreadable: return w("the shortest length cannot be read");
    case PlainReason::halves_unknown: return w("the half lengths are not known");
    case PlainReason::lengths_contradict: return w("the measured lengths contradict each other");
    case PlainReason::no_longest_readable: return w("no longest length can be read");
    case PlainReason::guard_not_measured: return w("a guard was not measured: hold the halves side by side");
    case PlainReason::no_guard_measured: return w("no guard was measured");
    case PlainReason::guard_or_its_stop_unknown: return w("a guard was not measured or the series does not give its guard shoulder");
    case PlainReason::no_working_angle: return w("a working angle below 90° is needed for each standard joint");
    case PlainReason::power_not_stated:
        return w.of_new_shaft() ? w("the order does not state the power taken at the PTO") : w("the job does not state the power taken at the PTO");
    case PlainReason::speed_not_stated: return w.of_new_shaft() ? w("the order does not state the speed") : w("the job does not state the speed");
    case PlainReason::no_known_series: return w("of a shaft of no known series no rating is known");
    case PlainReason::made_new: return w("the shaft is made new");
    case PlainReason::condition_not_stated: return w("nothing is said of the shaft as it came in");
    case PlainReason::device_not_stated:
        return w.of_new_shaft() ? w("the order does not state whether the tractor end carries a device") : w("the job does not state whether the tractor end carries a device");
    case PlainReason::only_closed_ordered: return w("only a closed length is ordered: what the shaft must reach is not known");
    case PlainReason::ordered_without_guard: break;
    }
    return w("the shaft is ordered without a guard");
}

std::string reason(const NoLongest& reason, const Wording& w) { return w("no longest {range:working|turning|standing} length is given", {{"range", reason.range}}); }

std::string reason(const LongestNotOfAll& reason, const Wording& w)
{
    std::vector<std::string> names;
    for (const std::string& tractor : reason.tractors) names.push_back(tractor.empty() ? w("one fit") : tractor);
    return w("no longest {range:working|turning|standing} length is given for {tractors}: it is known only as at least what is stated",
             {{"range", reason.range}, {"tractors", separated(names, ", ")}});
}

std::string reason(const SeatNotKnown& reason, const Wording& w)
{
    return w("the seat or the least tube of the {tube:inner|outer} half is not known", {{"tube", reason.tube}});
}

std::string reason(const GuardNotUsed& reason, const Wording& w)
{
    return w("the {tube:inner|outer} guard is missing or not used again: the shaft must not run before a complete guard is fitted", {{"tube", reason.tube}});
}

std::string reason(const NoAngle& reason, const Wording& w) { return w("no angle is given for the {end:tractor|implement} end", {{"end", reason.end}}); }
std::string reason(const NoRating& reason, const Wording& w) { return w("series {series} states no rating", {{"series", reason.series}}); }
std::string reason(const NotInCatalogue& reason, const Wording& w) { return w("the catalogue does not state {names}", {{"names", say(reason.figures, w)}}); }

}  // namespace

std::string clause(const NotCheckedReason& reason_of, const Wording& w)
{
    return std::visit([&](const auto& one) { return reason(one, w); }, reason_of);
}

std::string sentence(const NotChecked& finding, const Wording& w) { return w("Not checked: {reason}.", {{"reason", clause(finding.reason, w)}}); }

}  // namespace shaftcut
