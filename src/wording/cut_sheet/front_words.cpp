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

std::string follows(bool continued, bool all_checks, std::size_t sheet, const Wording& w)
{
    if (!continued) return w("▼ all checks on sheet {sheet}", {{"sheet", sheet}});
    if (all_checks) return w("▼ continued, all checks on sheet {sheet}", {{"sheet", sheet}});
    return w("▼ continued on sheet {sheet}", {{"sheet", sheet}});
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

std::string to_be_read(std::int64_t warnings, std::int64_t not_checked, Verdict verdict, const Wording& w)
{
    const NamedValue count{"count", warnings}, many{"many", warnings != 1}, unchecked{"unchecked", not_checked}, cut{"cut", verdict == Verdict::cut};
    if (not_checked == 0) return w("{count} {many:WARNING|WARNINGS}: read before you {cut:fit it|saw}", {count, many, cut});
    if (warnings == 0) return w("{unchecked} NOT CHECKED: read before you {cut:fit it|saw}", {unchecked, cut});
    return w("{count} {many:WARNING|WARNINGS}, {unchecked} NOT CHECKED: read before you {cut:fit it|saw}", {count, many, unchecked, cut});
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
    if (!kept) return w("{cut}: hold the halves side by side", {{"cut", figure}});
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
    if (!length.comes_off) return w("{guard:tube|guard} {kept}, stays", {guard, kept});
    const NamedValue was{"before", bare_figure(w, Rounded::measured, *length.before)};
    if (length.measured) return w("{guard:tube|guard} {kept}  (was {before})", {guard, kept, was});
    return w("{guard:tube|guard} {kept}  (worked out: {before})", {guard, kept, was});
}

std::string overlaps_heading(bool has_wide_angle, const Wording& w)
{
    return has_wide_angle ? w("Overlap of the tubes, to scale (between INNER crosses)") : w("Overlap of the tubes, to scale");
}

std::string closed_position(Verdict verdict, Length closed, const Wording& w)
{
    if (verdict != Verdict::cut) return w("Closed {length}", {{"length", w.length(Rounded::measured, closed)}});
    return w("Closed, after the cut {length}", {{"length", w.length(Rounded::closed_after, closed)}});
}

std::string shortest_position(Length shortest, const Wording& w) { return w("At the shortest {length}", {{"length", w.length(Rounded::shortest, shortest)}}); }

std::string longest_position(Range range, Length longest, const Wording& w)
{
    return w("At the longest, {range:working|turning|standing} {length}", {{"range", range}, {"length", w.length(Rounded::longest, longest)}});
}

std::string overlap(Length overlap, const Wording& w) { return w("overlap {length}", {{"length", w.length(Rounded::overlap, overlap)}}); }

std::string other_overlaps(const std::vector<RangeOverlap>& ranges, const Wording& w)
{
    if (ranges.empty()) return {};
    const RangeOverlap &one = ranges.front(), &other = ranges.back();
    const NamedValue range{"range", one.range}, length{"length", w.length(Rounded::longest, one.longest)}, overlap{"overlap", w.length(Rounded::overlap, one.overlap)};
    if (ranges.size() == 1) return w("Overlap at the longest, {range:working|turning|standing} {length}: {overlap}", {range, length, overlap});
    return w("Overlap at the longest, {range:working|turning|standing} {length}: {overlap}; {other:working|turning|standing} {other_length}: {other_overlap}",
             {range, length, overlap, {"other", other.range}, {"other_length", w.length(Rounded::longest, other.longest)}, {"other_overlap", w.length(Rounded::overlap, other.overlap)}});
}

std::string left_to_close(Length clearance, const Wording& w)
{
    return w("Left to close at the shortest: {clearance}", {{"clearance", w.both(Rounded::clearance, clearance)}});
}

std::string measured_after(bool has_wide_angle, const Wording& w)
{
    return w("Measured after the cut, from the {wide:cross|INNER cross} to the free end (in brackets: as it should be)", {{"wide", has_wide_angle}});
}

std::string measured_name(int number, End end, bool guard, const Wording& w)
{
    return w("{number} {end:tractor|implement} {guard:tube|guard}", {{"number", number}, {"end", end}, {"guard", guard}});
}

std::string closed_between(Reference reference, const Wording& w) { return w("closed, {reference:outer|inner} crosses", {{"reference", reference}}); }

std::string warning(CheckId check, const std::string& says, const Wording& w) { return w("WARNING, {check}: {says}", {{"check", spoken(check, w)}, {"says", says}}); }

std::string not_checked(const std::vector<Check>& checks, const Wording& w)
{
    std::string names;
    for (const Check& check : checks)
        if (check.result == CheckResult::not_checked) names += (names.empty() ? "" : ", ") + spoken(check.id, w);
    return names.empty() ? "" : w("NOT CHECKED: {checks}.", {{"checks", names}});
}

}  // namespace shaftcut::cut_sheet
