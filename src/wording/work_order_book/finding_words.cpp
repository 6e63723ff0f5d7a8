#include "work_order_book/finding_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(FindingClause which)
{
    switch (which) {
    case FindingClause::unreadable: return "a length is missing, is no number, is negative or is over 100 m";
    case FindingClause::spacing_out_of_bounds: return "the spacing of a wide-angle joint is none that such a joint has (as issued)";
    case FindingClause::halves_do_not_meet: return "the closed length is not less than both halves together: the tubes would not meet";
    case FindingClause::angles_contradict: return "a working angle is above its turning angle (as issued)";
    case FindingClause::fit_unusable: return "lengths between grooves, or the machine's geometry, cannot be used (as issued)";
    case FindingClause::one_tractor_contradicts: return "one tractor's own lengths contradict each other (as issued)";
    case FindingClause::read_in_line: return "a longest was read with the joints in line, for want of an angle (as issued)";
    case FindingClause::geometry_disputed: return "a measured length is not what the machine's geometry comes to (as issued)";
    case FindingClause::limits_loosened: return "a limit of the job is looser than the workshop's (as issued)";
    case FindingClause::closed_disagrees: return "the closed length is not what halves and shoulders give, each tube is cut as if it were the one that stops";
    case FindingClause::exchanged: return "the two half lengths seem to be exchanged: the other way round they give the closed length";
    case FindingClause::perhaps_exchanged:
        return "the two half lengths are perhaps exchanged: the other way round they give the closed length; the cut is safe in either reading";
    case FindingClause::closed_unlisted: break;
    }
    return "nothing confirms the closed length: it is none that its series lists; is the shaft uncut? Measure both halves";
}

const char* english(const OutOfBounds& found)
{
    switch (found.length) {
    case BoundedLength::closed: return "the closed length is not within {least} to {greatest}";
    case BoundedLength::half: return "the {tube:inner|outer} half is not within {least} to {greatest}";
    case BoundedLength::guard_half: return "the {tube:inner|outer} guard half is not within {least} to {greatest}";
    case BoundedLength::shoulder: return "the {tube:inner|outer} half's shoulder is not within {least} to {greatest}";
    case BoundedLength::derived_shoulder: return "the {tube:inner|outer} half's shoulder, closed length less {tube:outer|inner} half, is not within {least} to {greatest}";
    case BoundedLength::fit: break;
    }
    return found.range ? "the longest {range:working|turning|standing} is not within {least} to {greatest}" : "the shortest is not within {least} to {greatest}";
}

}  // namespace

std::string contradiction_or_doubt(bool refuses, const std::string& clause, const std::string& more, const Wording& w)
{
    return (refuses ? w("Contradiction: {found}.", {{"found", clause}}) : w("Doubt: {found}.", {{"found", clause}})) + more;
}

std::string consequence(bool refuses, const Wording& w) { return refuses ? w("the job is refused") : w("a warning"); }

std::string clause(FindingClause which, const Wording& w) { return w(english(which)); }

std::string longest_below_shortest(Range range, const Wording& w) { return w("longest {range:working|turning|standing} is less than shortest", {{"range", range}}); }
std::string longest_below_longest(Range range, Range other, const Wording& w)
{
    return w("longest {range:working|turning|standing} is less than longest {other:working|turning|standing}", {{"range", range}, {"other", other}});
}
std::string longest_below_longest_both_measured(Range range, Range other, const Wording& w)
{
    return w("longest {range:working|turning|standing} is less than longest {other:working|turning|standing}, both measured", {{"range", range}, {"other", other}});
}
std::string half_not_below_closed(Tube tube, const Wording& w) { return w("the {tube:inner|outer} half is not less than the closed length", {{"tube", tube}}); }
std::string guard_half_not_below_closed(Tube tube, const Wording& w) { return w("the {tube:inner|outer} guard half is not less than the closed length", {{"tube", tube}}); }
std::string half_within_its_seat(Tube tube, const Wording& w) { return w("the {tube:inner|outer} half is not more than its seat in the series", {{"tube", tube}}); }
std::string half_below_cut_to(Tube tube, const Wording& w) { return w("the {tube:inner|outer} half is less than what an earlier sheet kept of it", {{"tube", tube}}); }
std::string cut_to_within_seat(Tube tube, const Wording& w)
{
    return w("what an earlier sheet kept of the {tube:inner|outer} half is not more than its seat in the series (as issued)", {{"tube", tube}});
}

std::string fit_read_in_line(Range range, const Wording& w)
{
    return w("the longest {range:working|turning|standing} is read with the joints in line, for want of an angle", {{"range", range}});
}
std::string geometry_goes_past(std::optional<Range> range, const Wording& w)
{
    return range ? w("the machine's geometry goes past the measured longest {range:working|turning|standing}", {{"range", *range}})
                 : w("the machine's geometry goes past the measured shortest");
}
std::string geometry_cannot_reach(std::optional<Range> range, const Wording& w)
{
    return range ? w("the machine's geometry cannot reach the measured longest {range:working|turning|standing}", {{"range", *range}})
                 : w("the machine's geometry cannot reach the measured shortest");
}

std::string out_of_bounds(const OutOfBounds& found, const Wording& w)
{
    const auto limit = [&](Length length) { return figure_with_unit(length, w.units(), Toward::nearest, 1); };
    return w(english(found), {{"tube", found.tube.value_or(Tube::inner)}, {"range", found.range.value_or(Range::working)}, {"least", limit(found.least)}, {"greatest", limit(found.greatest)}});
}

std::string asks_for_unit(Units measured_in, const Wording& w)
{
    return " " + (measured_in == Units::in ? w("Is its unit right? Measured in inches, not in mm, it would do.") : w("Is its unit right? Measured in mm, not in inches, it would do."));
}

std::string shoulder_below_least(Tube tube, const Wording& w)
{
    return w("the {tube:inner|outer} half's shoulder is less than the least that it can be: no tube stops that near to the cross", {{"tube", tube}});
}
std::string shoulder_unlike_series(Tube tube, const Wording& w)
{
    return w("the {tube:inner|outer} half's shoulder is not its series', and the closed length does not bear it out", {{"tube", tube}});
}
std::string shoulder_alone(Tube tube, const Wording& w) { return w("the {tube:inner|outer} half's shoulder rests on this one figure: confirm it before sawing", {{"tube", tube}}); }

std::string guards_stop_it(const Wording& w) { return " " + w("The guards stop it before its tubes do: slide them back and measure the tubes alone, less may come off."); }

std::string seems_from_other_cross(Reference other, const Wording& w)
{
    return w("the closed length disagrees with the halves by the spacing of the wide-angle joint: it seems to be measured from the {cross:OUTER|INNER} cross", {{"cross", other}});
}
std::string listed_from_other_cross(Reference other, const Wording& w)
{
    return w("the closed length is none of its series', but from the {cross:OUTER|INNER} cross it is one: state the cross, or measure both halves", {{"cross", other}});
}

}  // namespace shaftcut::workbook
