#include "cut_sheet/front_words.hpp"

#include <algorithm>

#include "checks/check_words.hpp"
#include "figures.hpp"

namespace shaftcut::cut_sheet {
namespace {

enum class When { before, after };

std::string closed(const WorkOrder& order, const PerEach<Reference, Length>& closed, Rounded as, When when, const Wording& w)
{
    if (!order.reading.has_wide_angle) return w("{when:Closed now|After the cut}: {length} between the crosses", {{"when", when}, {"length", w.both(as, closed[Reference::inner_cross])}});
    const Reference stated = order.reading.reference;
    const Reference other = stated == Reference::inner_cross ? Reference::outer_cross : Reference::inner_cross;
    const std::string at_stated = w.both(as, closed[stated]), at_other = w.both(as, closed[other]);
    const bool both = order.shaft.ends[End::tractor].joint == JointKind::wide_angle && order.shaft.ends[End::implement].joint == JointKind::wide_angle;
    if (both)
        return w("{when:Closed now|After the cut}: {stated} between {reference:outer|inner} crosses = {converted} between {other:outer|inner} crosses",
                 {{"when", when}, {"stated", at_stated}, {"reference", stated}, {"converted", at_other}, {"other", other}});
    return w("{when:Closed now|After the cut}: {stated} from the {reference:outer|inner} cross = {converted} from the {other:outer|inner} cross",
             {{"when", when}, {"stated", at_stated}, {"reference", stated}, {"converted", at_other}, {"other", other}});
}

std::string shortest_at(const PositionAt& position, const Wording& w)
{
    const std::string length = w.length(Rounded::shortest, position.length);
    return position.at.empty() ? length : w("{length} ({position})", {{"length", length}, {"position", position.at}});
}

std::string longest_at(Range range, const PositionAt& position, const Wording& w)
{
    const std::string length = w.length(Rounded::longest, position.length);
    if (position.at.empty()) return w("{range:working|turning|standing} {length}", {{"range", range}, {"length", length}});
    return w("{range:working|turning|standing} {length} ({position})", {{"range", range}, {"length", length}, {"position", position.at}});
}

}  // namespace

std::string document_title(const std::string& order, const Wording& w) { return w("Cut sheet {order}", {{"order", order}}); }

std::string subject(const std::string& shaft_number, const Wording& w)
{
    if (shaft_number.empty()) return w("Drive shaft: fitting its length");
    return w("Drive shaft {number}: fitting its length", {{"number", shaft_number}});
}

std::string closed_now(const WorkOrder& order, const Wording& w) { return closed(order, order.reading.closed_at, Rounded::measured, When::before, w); }
std::string closed_after(const WorkOrder& order, const Wording& w) { return closed(order, order.cut->closed_at, Rounded::closed_after, When::after, w); }

std::string positions(const PositionsSaid& positions, bool has_wide_angle, const Wording& w)
{
    std::string longest;
    for (const Range range : all_ranges)
        if (positions.longest[range]) longest += (longest.empty() ? "" : ", ") + longest_at(range, *positions.longest[range], w);
    const NamedValue inner{"inner", has_wide_angle};
    if (!positions.shortest) return longest.empty() ? "" : w("Longest {longest}{inner:|, INNER crosses}", {{"longest", longest}, inner});
    const std::string shortest = shortest_at(*positions.shortest, w);
    if (longest.empty()) return w("Shortest {shortest}{inner:|, INNER crosses}", {{"shortest", shortest}, inner});
    return w("Shortest {shortest}, longest {longest}{inner:|, INNER crosses}", {{"shortest", shortest}, {"longest", longest}, inner});
}

std::string half_name(End end, const Wording& w) { return w("{end:TRACTOR|IMPLEMENT} HALF", {{"end", end}}); }

std::string part_name(End end, bool guard, const Wording& w) { return w("{end:TRACTOR|IMPLEMENT} HALF · {guard:TUBE|GUARD}", {{"end", end}, {"guard", guard}}); }

std::string part_to_cut(End end, bool guard, const Wording& w)
{
    return w("{end:TRACTOR|IMPLEMENT} HALF · {guard:TUBE|GUARD} cut off", {{"end", end}, {"guard", guard}});
}

std::string carried(Tube tube, JointKind joint, const Wording& w)
{
    return w("carries the {tube:inner|outer} tube · {joint:standard joint, one cross|wide-angle joint, two crosses}", {{"tube", tube}, {"joint", joint}});
}

std::string kept_in_brackets(Length kept, const Wording& w) { return w("(keep {length})", {{"length", bare_figure(w, Rounded::kept, kept)}}); }
std::string stays_in_brackets(Length kept, const Wording& w) { return w("(stays {length})", {{"length", w.both(Rounded::kept, kept)}}); }
std::string cut_plus_minus(Length plus_minus, const Wording& w) { return w("± {tolerance}", {{"tolerance", figure_with_unit(plus_minus, Units::mm)}}); }
std::string doubted(const std::string& cut, const Wording& w) { return w("{cut} ?", {{"cut", cut}}); }

std::string millimetres_of(Length cut, const std::optional<Length>& kept, const Wording& w)
{
    const std::string figure = millimetres_beside(w, Rounded::cut, cut);
    if (!kept) return w("{cut}: hold side by side", {{"cut", figure}});
    return w("{cut}, keep {kept}", {{"cut", figure}, {"kept", millimetres_beside(w, Rounded::kept, *kept)}});
}

std::string drawn_length(const DrawnLength& length, const Wording& w)
{
    const NamedValue guard{"guard", length.guard};
    if (!length.before) return length.cut_known ? w("{guard:tube|guard} not measured", {guard}) : w("{guard:tube|guard} not known", {guard});
    const std::string before = w.length(Rounded::measured, *length.before);
    if (!length.kept) {
        if (length.measured) return w("{guard:tube|guard} {length} as measured", {guard, {"length", before}});
        return w("{guard:tube|guard} {length}, worked out", {guard, {"length", before}});
    }
    const NamedValue kept{"kept", w.length(Rounded::kept, *length.kept)};
    if (!length.comes_off) return length.alone ? w("{guard:tube|guard} {kept}", {guard, kept}) : w("{guard:tube|guard} {kept}, stays", {guard, kept});
    const NamedValue was{"before", bare_figure(w, Rounded::measured, *length.before)};
    if (length.measured) return w("{guard:tube|guard} {kept}  (was {before})", {guard, kept, was});
    return w("{guard:tube|guard} {kept}  (worked out: {before})", {guard, kept, was});
}

std::string warning(CheckId check, const std::string& says, const Wording& w) { return w("WARNING, {check}: {says}", {{"check", spoken(check, w)}, {"says", says}}); }

std::string not_checked(CheckId check, const std::string& why, const Wording& w) { return w("{check}: {why}.", {{"check", spoken(check, w)}, {"why", why}}); }

std::string numbered_source(std::size_t number, const std::string& source, const Wording& w) { return w("[{number}] {source}.", {{"number", number}, {"source", source}}); }

std::string step_number(int number, const Wording& w) { return w("{number}", {{"number", number}}); }

}  // namespace shaftcut::cut_sheet
