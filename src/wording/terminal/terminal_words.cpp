#include "terminal/terminal_words.hpp"

namespace shaftcut::terminal {
namespace {

enum class When { before, after };

}  // namespace

std::string say(LineName name, const Wording& w)
{
    switch (name) {
    case LineName::closed: return w("closed");
    case LineName::tubes: return w("tubes");
    case LineName::guard_tubes: return w("guard tubes");
    case LineName::open: return w("open");
    case LineName::why: return w("why");
    case LineName::instead: return w("instead");
    case LineName::no_saw_plan: return w("no saw plan");
    case LineName::warning: return w("WARNING");
    case LineName::confirm: return w("confirm");
    case LineName::note: return w("note");
    case LineName::fetch: return w("fetch");
    case LineName::plan: return w("plan");
    case LineName::waste: return w("waste");
    case LineName::to_rack: return w("to the rack");
    case LineName::nearest: return w("nearest");
    case LineName::to_order: return w("to order");
    case LineName::no: break;
    }
    return w("no");
}

std::string result_name(CheckResult result, const Wording& w) { return w("{result:pass|warn|fail|not-checked}", {{"result", result}}); }
std::string after_cut_name(AfterCutVerdict result, const Wording& w) { return w("{result:right|saw more|measure|too short}", {{"result", result}}); }
std::string half_name(End end, const Wording& w) { return w("{end:tractor|implement} half", {{"end", end}}); }
std::string part_name(bool guard, const Wording& w) { return w("{guard:tube|guard}", {{"guard", guard}}); }
std::string shortest_name(const Wording& w) { return w("shortest"); }
std::string longest_name(Range range, const Wording& w) { return w("longest {range:working|turning|standing}", {{"range", range}}); }
std::string joint_name(End end, const Wording& w) { return w("{end:tractor|implement} joint", {{"end", end}}); }

std::string order_and_verdict(const std::string& order, const std::string& verdict, const Wording& w) { return w("{order}: {verdict}", {{"order", order}, {"verdict", verdict}}); }

std::string shaft_for(const std::string& shaft, const std::string& machine, const Wording& w)
{
    return machine.empty() ? shaft : w("{shaft}, for {machine}", {{"shaft", shaft}, {"machine", machine}});
}

std::string lengths_title(const std::string& order, const std::string& loud, const std::string& plain, const Wording& w)
{
    return w("{order}: {loud}OPERATING LENGTHS{plain} between the inner crosses", {{"order", order}, {"loud", loud}, {"plain", plain}});
}

std::string left_as_it_is(const std::optional<Length>& kept, const Wording& w)
{
    return kept ? w("leave as it is, keep {kept}", {{"kept", w.both(Rounded::kept, *kept)}}) : w("leave as it is, not measured: confirm");
}

std::string cut_and_kept(Length cut, Length plus_minus, const std::optional<Length>& kept, const Wording& w)
{
    // The tolerance is what the worst cases count with, so it is not rounded to the document's unit.
    const NamedValue off{"cut", w.both(Rounded::cut, cut)}, tolerance{"tolerance", figure_with_unit(plus_minus, Units::mm)};
    if (!kept) return w("cut {cut} ±{tolerance}, not measured: confirm", {off, tolerance});
    return w("cut {cut} ±{tolerance}, keep {kept}", {off, tolerance, {"kept", w.both(Rounded::kept, *kept)}});
}

std::string guard_not_used(GuardUse use, const Wording& w)
{
    return use == GuardUse::none ? w("none: fit a new one") : w("damaged, not used again: fit a new one");
}

std::string closed_line(const WorkOrder& order, const Wording& w)
{
    const bool cut = order.verdict == Verdict::cut;
    const Reference reference = order.reading.reference;
    const NamedValue when{"when", cut ? When::after : When::before};
    const NamedValue length{"length", w.both(cut ? Rounded::closed_after : Rounded::measured, order.cut->closed_at[reference])};
    if (!order.reading.has_wide_angle) return w("{when:closed length|closed length after the cut} {length} between crosses", {when, length});
    return w("{when:closed length|closed length after the cut} {length} from the {reference:outer|inner} cross", {when, length, {"reference", reference}});
}

std::string length_at(const ExtremeLength& extreme, Rounded as, const std::string& position, const Wording& w)
{
    return w("{length} ± {doubt}, {position}",
             {{"length", w.both(as, extreme.length)}, {"doubt", w.length(Rounded::doubt, extreme.plus_minus)}, {"position", position}});
}

std::string angle_at(const ExtremeAngle& extreme, Range range, const std::string& position, const Wording& w)
{
    return w("{angle} {range:working|turning|standing}, {position}", {{"angle", w.angle(extreme.angle)}, {"range", range}, {"position", position}});
}

std::string check_text(const Check& check, const std::string& says, const Wording& w) { return w("{check}: {says}", {{"check", to_word(check.id)}, {"says", says}}); }

}  // namespace shaftcut::terminal
