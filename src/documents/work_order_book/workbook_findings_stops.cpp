// What halves, shoulders and the closed length say of each other, as formulas.
#include <algorithm>

#include "data/bounds.hpp"
#include "data/slip_limits.hpp"
#include "work_order_book/finding_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

// A shoulder of the job's own; it moves with the half's length where it was found by a stop depth.
void add_own_shoulder(std::vector<FindingLine>& lines, const WorkOrder& order, Tube tube, const Wording& w)
{
    const Half& half = order.reading.shaft.halves[tube];
    const std::string own = owns_shoulder(order, tube), name = for_tube("THIS_shoulder", tube);
    if (own == "FALSE") return;
    const bool stated = half.shoulder_place && half.shoulder;
    const Length now = stated ? half.shoulder->value : Length();
    lines.push_back({shoulder_below_least(tube, w),
                     {yes_if(own, clearly_below_expression(name, literal(least_stop(half.seat, tube))), w), yes_or_no(stated && clearly_below(now, least_stop(half.seat, tube)), w)}});
    lines.push_back({out_of_bounds({BoundedLength::shoulder, tube, std::nullopt, shoulder_bounds.least, shoulder_bounds.greatest}, w),
                     {yes_if(own, "OR(" + name + "<" + literal(shoulder_bounds.least) + "," + name + ">" + literal(shoulder_bounds.greatest) + ")", w),
                      yes_or_no(stated && !shoulder_bounds.hold(now), w)}});
    if (half.series_shoulder) {
        const Length usual = usual_difference_from(*half.series_shoulder);
        const std::string differs = "ROUND(ABS(" + name + "-" + literal(*half.series_shoulder) + ")-" + literal(usual) + ",3)>=0.01";
        lines.push_back({shoulder_unlike_series(tube, w),
                         {yes_if(own, "AND(" + differs + "," + stop_is_unconfirmed(tube, w) + ")", w),
                          yes_or_no(differs_from_series(half) && !(order.stops && path_to(*order.stops, tube).confirmed), w)}});
    } else {
        lines.push_back({shoulder_alone(tube, w),
                         {yes_if(holds("stops_known", CellWord::yes, w), "AND(" + own + "," + stop_is_unconfirmed(tube, w) + ")", w),
                          yes_or_no(order.stops && rests_alone(order.reading.shaft, *order.stops, tube), w)}, false});
    }
}

bool agrees(const WorkOrder& order) { return !order.stops || order.stops->agreement == ClosedAgreement::agrees; }

void add_disagreement(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    const std::string stopped = "IF(AND(" + holds("guards_stop", CellWord::yes, w) + "," + holds("agreement", CellWord::longer, w) + ")," + text_in_formula(guards_stop_it(w)) + ",\"\")";
    lines.push_back({clause(FindingClause::closed_disagrees, w), {yes_if(lengths_disagree(w), w), yes_or_no(!agrees(order), w)}, false,
                     {stopped, order.stops && order.stops->guards_stop ? guards_stop_it(w) : std::string()}});
}

// What is added to C where it was read at the other cross: read as from the outer one the spacings were taken off for nothing.
std::vector<Length> shifts(const WorkOrder& order)
{
    std::vector<Length> found = spacing_sums(order.reading.shaft.spacing);
    if (order.reading.reference == Reference::inner_cross)
        for (Length& shift : found) shift = -shift;
    return found;
}

Reference other_cross(const WorkOrder& order) { return order.reading.reference == Reference::outer_cross ? Reference::inner_cross : Reference::outer_cross; }

bool within(Length difference, Length allowance) { return !clearly_above(difference, allowance) && !clearly_below(difference, -allowance); }

void add_other_cross(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    const auto moved = shifts(order);
    if (moved.empty()) return;
    std::string any = "FALSE";
    for (const Length shift : moved) any += ",ROUND(ABS(closed_length+" + literal(shift) + "-modelled_closed)-closed_allowance,3)<0.01";
    const bool now = !agrees(order) && std::any_of(moved.begin(), moved.end(), [&](Length shift) {
        return within(order.reading.shaft.closed.value + shift - order.stops->modelled, order.stops->allowance);
    });
    lines.push_back({seems_from_other_cross(other_cross(order), w),
                     {yes_if(lengths_disagree(w), "OR(" + any + ")", w), yes_or_no(now, w)}});
}

bool exchanged_now(const WorkOrder& order, ClosedAgreement agreement)
{
    const auto exchanged = exchanged_closed(order);
    if (!exchanged || order.stops->agreement != agreement) return false;
    return within(order.reading.shaft.closed.value - exchanged->value, exchanged->plus_minus);
}

void add_exchanged(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    const auto found = [&](CellWord agreement) {
        return yes_if("AND(ISNUMBER(exchanged_closed)," + holds("agreement", agreement, w) + ")", "ROUND(ABS(closed_length-exchanged_closed)-exchanged_plus_minus,3)<0.01", w);
    };
    lines.push_back({clause(FindingClause::exchanged, w), {found(CellWord::shorter), yes_or_no(exchanged_now(order, ClosedAgreement::shorter), w)}});
    lines.push_back({clause(FindingClause::perhaps_exchanged, w),
                     {found(CellWord::longer), yes_or_no(exchanged_now(order, ClosedAgreement::longer), w)}, false});
}

// Whether a shaft that closes at this much more is of a length that its series lists.
std::string is_listed(const WorkOrder& order, Length shift)
{
    std::string differences;
    for (const Length one : order.listed_closed) differences += ",ABS(closed_length+" + literal(shift - one) + ")";
    return "ROUND(MIN(" + differences.substr(1) + ")-closed_plus_minus-" + literal(beside_a_listed_length) + ",3)<0.01";
}

bool is_listed_now(const WorkOrder& order, Length shift)
{
    const Toleranced& closed = order.reading.shaft.closed;
    return std::any_of(order.listed_closed.begin(), order.listed_closed.end(), [&](Length one) { return within(closed.value + shift - one, closed.plus_minus + beside_a_listed_length); });
}

// An uncut shaft, of which neither half was measured, closes at one of its series' lengths.
void add_unlisted(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    if (!order.shaft.series || (order.listed_closed.empty() && !order.reading.has_wide_angle)) return;
    const auto& halves = order.reading.shaft.halves;
    const bool listed = is_listed_now(order, Length()), unmeasured = !halves[Tube::inner].measured && !halves[Tube::outer].measured;
    std::string elsewhere = "FALSE";
    bool elsewhere_now = false;
    for (const Length shift : shifts(order)) {
        if (!order.listed_closed.empty()) elsewhere += "," + is_listed(order, shift);
        elsewhere_now = elsewhere_now || is_listed_now(order, shift);
    }
    const std::string unlisted = "IF(ISNUMBER(closed_length),IF(OR(ISNUMBER(inner_half),ISNUMBER(outer_half)),FALSE," +
                                 (order.listed_closed.empty() ? "TRUE" : "IF(" + is_listed(order, Length()) + ",FALSE,TRUE)") + "),FALSE)";
    lines.push_back({listed_from_other_cross(other_cross(order), w),
                     {yes_if(unlisted, "OR(" + elsewhere + ")", w), yes_or_no(unmeasured && !listed && elsewhere_now, w)}});
    lines.push_back({clause(FindingClause::closed_unlisted, w),
                     {only_where(unlisted, word_if("OR(" + elsewhere + ")", CellWord::no, CellWord::yes, w), w), yes_or_no(unmeasured && !listed && !elsewhere_now, w)}, false});
}

}  // namespace

void add_stop_findings(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    for (const Tube tube : both_tubes) add_own_shoulder(lines, order, tube, w);
    add_disagreement(lines, order, w);
}

void add_elsewhere_findings(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w)
{
    add_other_cross(lines, order, w);
    add_exchanged(lines, order, w);
    add_unlisted(lines, order, w);
}

}  // namespace shaftcut::workbook
