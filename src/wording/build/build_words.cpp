#include "build/build_words.hpp"
#include "cautions.hpp"

#include <algorithm>

#include "advice/advice_words.hpp"
#include "checks/check_sentences.hpp"
#include "saw/saw_words.hpp"

namespace shaftcut {
namespace {

template <class Finding>
std::vector<std::string> each_said(const std::vector<Finding>& findings, const Wording& w)
{
    std::vector<std::string> said;
    for (const Finding& finding : findings) said.push_back(say(finding, w));
    return said;
}

std::vector<std::string> sentences(const SeriesDoesNotState& found, const Wording& w)
{
    return {w("No shaft can be built of series {series}: the catalogue does not state {figures}.", {{"series", found.series}, {"figures", say(found.figures, w)}})};
}

std::vector<std::string> sentences(const Check& check, const Wording& w) { return reasons_to_refuse({check}, w); }

std::vector<std::string> sentences(const NothingBeyondSeat& found, const Wording& w)
{
    return {w("Nothing would be left of the {tube:inner|outer} {kind:tube|guard tube} beyond its seat.", {{"tube", found.tube.tube}, {"kind", found.tube.kind}})};
}

std::vector<std::string> sentences(const PinHoleBeyondTube& found, const Wording& w)
{
    return {w("The pin hole would lie beyond the end of the {tube:inner|outer} tube.", {{"tube", found.tube}})};
}

std::vector<std::string> sentences(const LongerThanBars& found, const Wording& w)
{
    return {w("The {tube:inner|outer} {kind:tube|guard tube} would be longer than the longest bar that is known for {profile}, {bar}.",
              {{"tube", found.tube.tube}, {"kind", found.tube.kind}, {"profile", found.profile}, {"bar", w.both(Rounded::measured, found.longest_bar)}})};
}

std::vector<std::string> sentences(const MillimetresReadAsInches& found, const Wording& w)
{
    const std::string read = w("The {what:shortest|closed} length was read as {inches} in; {inches} mm would be made of these bars.",
                               {{"what", found.of_closed}, {"inches", saw_figure(found.stated, Units::in)}});
    return {running_text({w("Were millimetres read as inches?"), read,
                          w("A length without a unit is in the units of the list: --units of a CSV list, its root's units in XML.")})};
}

std::string remark(BuildRemark found, const Wording& w)
{
    return found == BuildRemark::no_guard ? w("Ordered without a guard: it must not turn before a complete guard that suits it is fitted, on it or around it.")
                                          : w("The shaft must serve all tractors stated: the least shortest and the greatest longest count.");
}

std::string remark(const UsableRange& found, const Wording& w)
{
    const auto to = [&](Range range) {
        const auto& longest = found.longest[range];
        return longest ? w.both(Rounded::kept, *longest) : w("not at all");
    };
    const std::string ordered = w("Only a closed length is ordered.");
    return running_text({ordered, w("Measured {from:between the crosses|from the outer cross, joints in line|from the inner cross}, it may be pushed together to {shortest} and pulled "
                                    "apart to: working {working}, turning {turning}, standing {standing}.",
                                    {{"from", found.from}, {"shortest", w.both(Rounded::closed_after, found.shortest)}, {"working", to(Range::working)},
                                     {"turning", to(Range::turning)}, {"standing", to(Range::standing)}})});
}

std::string remark(const ClosesBelowOrdered& found, const Wording& w)
{
    return w("Half lengths are rounded down to the saw's step: the shaft closes {below} below the closed length ordered.", {{"below", saw_figure_with_unit(found.below, w.units())}});
}

std::string remark(const SawAgainstClassC& found, const Wording& w)
{
    return w("Sawn lengths are within ± {saw}; ISO 2768-1 class c allows ± {class_c} for the shorter tube{exact:: this saw is not exact enough for that class|}.",
             {{"saw", figure_with_unit(found.saw, Units::mm)}, {"class_c", figure_with_unit(found.class_c, Units::mm)}, {"exact", found.saw <= found.class_c}});
}

std::string remark(const TubeMadeToLength& found, const Wording& w)
{
    return w("The series forbids shortening the {tube:inner|outer} tube: it is fetched made to its length, and is in no saw plan.", {{"tube", found.tube}});
}

}  // namespace

Wording wording_of(const BuildPlan& plan) { return Wording(plan.units, About::new_shaft); }
Wording wording_of(const Batch& batch) { return Wording(batch.units, About::new_shaft); }

std::vector<std::string> say(const std::vector<BuildReason>& reasons, const Wording& w)
{
    std::vector<std::string> said;
    for (const BuildReason& reason : reasons)
        for (std::string& sentence : std::visit([&](const auto& found) { return sentences(found, w); }, reason)) said.push_back(std::move(sentence));
    return said;
}

std::vector<std::string> say(const std::vector<BuildWay>& ways, const Wording& w) { return each_said(ways, w); }
std::vector<std::string> say(const std::vector<BuildNote>& notes, const Wording& w) { return each_said(notes, w); }
std::vector<std::string> say(const std::vector<BuildCaution>& cautions, const Wording& w) { return each_said(cautions, w); }

std::string say(const BuildNote& note, const Wording& w)
{
    return std::visit([&](const auto& found) { return remark(found, w); }, note);
}

std::string say(BuildCaution caution, const Wording& w)
{
    switch (caution) {
    case BuildCaution::do_not_build: return w("Do not build this shaft as it is ordered.");
    case BuildCaution::held: return w("Neither saw nor build this shaft before what is open is known.");
    case BuildCaution::turning_kills: return w("DANGER: a turning shaft catches clothing and kills. Never turn it by power on the bench or without its complete guard.");
    case BuildCaution::bottoming_breaks: return w("WARNING: bottoming or parting breaks gearboxes. Before first use measure the machine's shortest and longest positions.");
    case BuildCaution::manuals_first: break;
    }
    return manuals_come_first(w);
}

std::string say(const ProfileRefusal& refusal, const Wording& w)
{
    constexpr std::size_t most_named = 5;
    if (refusal.labels.empty()) return say(refusal.why.found, w);
    std::string pieces;
    for (std::size_t i = 0; i < std::min(refusal.labels.size(), most_named); ++i) pieces += (i == 0 ? "" : ", ") + refusal.labels[i];
    const NamedValue why{"why", say(refusal.why.found, w)};
    if (refusal.labels.size() <= most_named) return w("{why} ({pieces})", {why, {"pieces", pieces}});
    return w("{why} ({pieces} and {more} more)", {why, {"pieces", pieces}, {"more", refusal.labels.size() - most_named}});
}

}  // namespace shaftcut
