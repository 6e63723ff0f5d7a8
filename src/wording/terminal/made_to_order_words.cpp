// Shafts made to order, and saw plans.
#include "terminal/terminal_words.hpp"

namespace shaftcut::terminal {

std::string build_verdict(const BuildPlan& plan, const Wording& w)
{
    switch (plan.verdict) {
    case BuildVerdict::build: return w("BUILD {count}", {{"count", plan.count}});
    case BuildVerdict::held: return w("HELD: {count} open", {{"count", plan.open.size()}});
    case BuildVerdict::refused: break;
    }
    return w("DO NOT BUILD");
}

std::string closed_of(const BuildPlan& plan, const Wording& w)
{
    const NamedValue length{"length", saw_figure_with_unit(plan.built->closed_at[plan.reference], w.units())};
    if (!plan.has_wide_angle) return w("{length} between crosses", {length});
    return w("{length} from the {reference:outer|inner} cross", {length, {"reference", plan.reference}});
}

std::string inner_and_outer(Length inner, Length outer, const Wording& w)
{
    return w("inner {inner}, outer {outer}", {{"inner", saw_figure_with_unit(inner, w.units())}, {"outer", saw_figure_with_unit(outer, w.units())}});
}

std::string list_line(const std::string& list, const ListCounts& counts, const ListInks& inks, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"list", list}, {"build_ink", inks.build}, {"held_ink", inks.held}, {"refused_ink", inks.refused}, {"end", inks.end},
                           {"shafts", counts.shafts}, {"many", counts.shafts != 1}, {"orders", counts.built}, {"several", counts.built != 1},
                           {"held", counts.held}, {"several_held", counts.held != 1}, {"refused", counts.refused}, {"several_refused", counts.refused != 1}});
    };
    if (counts.held == 0 && counts.refused == 0) return with("{list}: {build_ink}{shafts} {many:shaft|shafts} of {orders} {several:order|orders}{end}");
    if (counts.refused == 0)
        return with("{list}: {build_ink}{shafts} {many:shaft|shafts} of {orders} {several:order|orders}{end}, {held_ink}{held} {several_held:order|orders} held{end}");
    if (counts.held == 0)
        return with("{list}: {build_ink}{shafts} {many:shaft|shafts} of {orders} {several:order|orders}{end}, {refused_ink}{refused} {several_refused:order|orders} refused{end}");
    return with("{list}: {build_ink}{shafts} {many:shaft|shafts} of {orders} {several:order|orders}{end}, {held_ink}{held} {several_held:order|orders} held{end}, "
                "{refused_ink}{refused} {several_refused:order|orders} refused{end}");
}

std::string not_planned(const std::string& profile, const std::string& refusal, const Wording& w) { return w("{profile}: {refusal}", {{"profile", profile}, {"refusal", refusal}}); }
std::string no_bars_for(const std::string& profile, const Wording& w) { return w("{profile}: the workshop states no bars for it", {{"profile", profile}}); }

std::string bars_for_pieces(std::int64_t bars, std::int64_t pieces, const Wording& w)
{
    return w("{bars} {many:BAR|BARS} FOR {pieces} {several:PIECE|PIECES}", {{"bars", bars}, {"many", bars != 1}, {"pieces", pieces}, {"several", pieces != 1}});
}

std::string bars_to_fetch(const std::vector<BarsToFetch>& bars, const Wording& w)
{
    std::vector<std::string> all;
    for (const BarsToFetch& alike : bars) all.push_back(w("{count} × {length}", {{"count", alike.count}, {"length", saw_figure_with_unit(alike.length, w.units())}}));
    return w.all_of(all);
}

std::string wasted(std::int64_t thousandths_of_per_cent, const Wording& w)
{
    return w("{percent} with kerfs and trims", {{"percent", w.percent(thousandths_of_per_cent)}});
}

}  // namespace shaftcut::terminal
