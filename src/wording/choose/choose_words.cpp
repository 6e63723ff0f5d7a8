#include "choose/choose_words.hpp"

#include <algorithm>
#include <cstdlib>

#include "checks/check_sentences.hpp"
#include "checks/check_words.hpp"
#include "money_words.hpp"

namespace shaftcut {
namespace {

std::string joined(const std::vector<std::string>& pieces, const char* between)
{
    std::string all;
    for (const std::string& piece : pieces) all += (all.empty() ? "" : between) + piece;
    return all;
}

std::string shaft(const std::string& series, Length closed, const std::optional<Reference>& reference, const PerEach<End, JointKind>& joint, const Wording& w)
{
    const NamedValue named{"series", series}, length{"length", w.both(Rounded::measured, closed)};
    if (!reference) return w("{series}, closed length {length} between crosses, standard joints", {named, length});
    return w("{series}, closed length {length} from the {reference:outer|inner} cross; {tractor:standard|wide-angle} joint at the tractor, {implement:standard|wide-angle} joint at the implement",
             {named, length, {"reference", *reference}, {"tractor", joint[End::tractor]}, {"implement", joint[End::implement]}});
}

std::string shortly(const LengthsUnreadable& unreadable, const Wording& w)
{
    return std::holds_alternative<YokeNotKnown>(unreadable.why) ? w("no yoke of known length for the connection") : w("no room on the machine");
}

// In a list of reasons.
std::string shortly(const WhyNotServed& why, const Wording& w)
{
    if (std::holds_alternative<SeriesWithoutJoint>(why)) return w("no wide-angle joint");
    if (std::holds_alternative<SeriesWithoutReference>(why)) return w("no cross stated that its lengths run from");
    const Check& check = std::get<Check>(why);
    for (const CheckFinding& one : check.contradictions)
        if (const auto* unreadable = std::get_if<LengthsUnreadable>(&one)) return shortly(*unreadable, w);
    return spoken(check.id, w);
}

Check with_figures(CheckId id, const CheckFigures& figures)
{
    Check check;
    check.id = id;
    check.unit = figures.unit;
    check.value = figures.value;
    check.worst = figures.worst;
    check.limit = figures.limit;
    return check;
}

// A new shaft's condition is not looked at.
std::vector<CheckId> ids_with(const AllFigures& checks, CheckResult result)
{
    std::vector<CheckId> ids;
    for (std::size_t i = 0; i < Words<CheckId>::all.size(); ++i)
        if (const auto id = static_cast<CheckId>(i); checks[id].result == result && (id != CheckId::condition || result != CheckResult::not_checked)) ids.push_back(id);
    return ids;
}

std::string names_of(const std::vector<CheckId>& ids, const Wording& w)
{
    std::vector<std::string> names;
    for (const CheckId id : ids) names.push_back(spoken(id, w));
    return joined(names, ", ");
}

struct ReasonAtLengths {
    std::string reason;
    std::vector<Length> lengths;
};

std::vector<ReasonAtLengths> by_reason(const std::vector<const Choice*>& refused, const Wording& w)
{
    std::vector<ReasonAtLengths> all;
    for (const Choice* choice : refused) {
        std::string reason = shortly(choice->why_not.value(), w);
        const auto found = std::find_if(all.begin(), all.end(), [&](const ReasonAtLengths& one) { return one.reason == reason; });
        if (found == all.end()) all.push_back({std::move(reason), {choice->closed}});
        else found->lengths.push_back(choice->closed);
    }
    return all;
}

std::string margin_words(const Margin& least, const Wording& w)
{
    const std::int64_t left = least.thousandths();
    return w("at worst {percent} {enough:too little|to spare} ({check})", {{"percent", w.percent(100 * std::abs(left))}, {"enough", left >= 0}, {"check", spoken(least.check, w)}});
}

std::string at_lengths(const ReasonAtLengths& group, const Wording& w)
{
    std::vector<std::string> figures;
    for (const Length length : group.lengths) figures.push_back(w.length(Rounded::measured, length));
    return w("{reason} ({lengths})", {{"reason", group.reason}, {"lengths", joined(figures, ", ")}});
}

}  // namespace

std::string verdict_words(const Choices& choices, const Wording& w)
{
    const NamedValue of{"of", choices.choices.size()};
    if (choices.serving == 0) return w("NONE OF {of} SERVES", {of});
    return w("{count} OF {of} {many:SERVES|SERVE}", {{"count", choices.serving}, of, {"many", choices.serving != 1}});
}

std::string chosen_for(const std::string& machine, const Wording& w) { return w("for {machine}", {{"machine", machine}}); }

std::string result_words(const Choice& choice, const Wording& w)
{
    switch (choice.result) {
    case ChoiceResult::as_is: return w("as it is");
    case ChoiceResult::cut: return w("cut {cut}", {{"cut", w.length(Rounded::cut, choice.cut())}});
    case ChoiceResult::no: break;
    }
    return w("no");
}

std::string shaft_words(const Choice& choice, const Wording& w) { return shaft(choice.series, choice.closed, choice.reference, choice.joint, w); }
std::string priced_words(const Choice& choice, const Choices& all, const Wording& w)
{
    if (!choice.price || !all.currency) return shaft_words(choice, w);
    return w("{shaft}; new {price} {stated:without|with} tax", {{"shaft", shaft_words(choice, w)}, {"price", say(*choice.price, *all.currency, w)}, {"stated", all.stated}});
}

std::string shaft_words(const ChoiceToOrder& choice, const Wording& w) { return shaft(choice.series, choice.closed, choice.reference, choice.joint, w); }

std::string say(const WhyNotServed& why, const Wording& w)
{
    if (const auto* joint = std::get_if<SeriesWithoutJoint>(&why)) return w("The series has no wide-angle joint for the {end:tractor|implement} end.", {{"end", joint->end}});
    if (std::holds_alternative<SeriesWithoutReference>(why)) return w("The series does not state from which cross of a wide-angle joint its closed lengths run.");
    return say(std::get<Check>(why), w);
}

std::string checks_words(const AllFigures& checks, const std::optional<Margin>& least, const Wording& w)
{
    std::vector<std::string> pieces;
    if (least) pieces.push_back(margin_words(*least, w));
    for (const CheckId id : {CheckId::closing_clearance, CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing, CheckId::guard_cover}) {
        const Check check = with_figures(id, checks[id]);
        if (!check.value || checks[id].result == CheckResult::not_checked) continue;
        pieces.push_back(w("{check} {value} ({limit} asked)", {{"check", spoken(id, w)}, {"value", check_figure(check, check.value, w)}, {"limit", check_figure(check, check.limit, w)}}));
    }
    if (const auto warned = ids_with(checks, CheckResult::warn); !warned.empty()) pieces.push_back(w("warns: {checks}", {{"checks", names_of(warned, w)}}));
    if (const auto unmade = ids_with(checks, CheckResult::not_checked); !unmade.empty()) pieces.push_back(w("not checked: {checks}", {{"checks", names_of(unmade, w)}}));
    return joined(pieces, "; ");
}

std::string more_serve(std::size_t count, const Wording& w)
{
    return w("{count} more {many:serves|serve}: all are in the figures (JSON)", {{"count", count}, {"many", count != 1}});
}

std::string more_to_order(std::size_t count, const Wording& w)
{
    return w("{count} more series could be made to order: all are in the figures (JSON)", {{"count", count}});
}

std::string more_refused(std::size_t count, const Wording& w) { return w("{count} more series: all are in the figures (JSON)", {{"count", count}}); }

std::string open_first(std::size_t count, const Wording& w) { return w("{count} {many:thing|things} to be asked first", {{"count", count}, {"many", count != 1}}); }

std::string none_to_order(const Wording& w) { return w("no series could be made to serve"); }

std::string refused_words(const std::vector<const Choice*>& of_one_series, const Wording& w)
{
    std::vector<std::string> pieces;
    for (const ReasonAtLengths& group : by_reason(of_one_series, w)) pieces.push_back(at_lengths(group, w));
    return w("{series}: {reasons}", {{"series", of_one_series.front()->series}, {"reasons", joined(pieces, "; ")}});
}

std::string lists_no_lengths(const std::vector<std::string>& series, const Wording& w)
{
    return w("{series} {many:lists|list} no closed lengths", {{"series", w.all_of(series)}, {"many", series.size() != 1}});
}

}  // namespace shaftcut
