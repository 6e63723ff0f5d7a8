// What halves, shoulders and the closed length say of each other, as formulas.
#include <algorithm>

#include "data/bounds.hpp"
#include "data/slip_limits.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

// A shoulder of the job's own; it moves with the half's length where it was found by a stop depth.
void add_own_shoulder(std::vector<FindingLine>& lines, const WorkOrder& order, Tube tube)
{
    const Half& half = order.reading.shaft.halves[tube];
    const std::string own = owns_shoulder(order, tube), name = for_tube("THIS_shoulder", tube), label = for_tube("the THIS half's shoulder", tube);
    if (own == "FALSE") return;
    const bool stated = half.shoulder_place && half.shoulder;
    const Length now = stated ? half.shoulder->value : Length();
    lines.push_back({label + " is less than the least that it can be: no tube stops that near to the cross",
                     {yes_if(own, clearly_below_expression(name, literal(least_stop(half.seat, tube)))), yes_or_no(stated && clearly_below(now, least_stop(half.seat, tube)))}});
    const auto limit = [&](Length length) { return figure_with_unit(length, order.units, Toward::nearest, 1); };
    lines.push_back({label + " is not within " + limit(shoulder_bounds.least) + " to " + limit(shoulder_bounds.greatest),
                     {yes_if(own, "OR(" + name + "<" + literal(shoulder_bounds.least) + "," + name + ">" + literal(shoulder_bounds.greatest) + ")"),
                      yes_or_no(stated && !shoulder_bounds.hold(now))}});
    if (half.series_shoulder) {
        const Length usual = usual_difference_from(*half.series_shoulder);
        const std::string differs = "ROUND(ABS(" + name + "-" + literal(*half.series_shoulder) + ")-" + literal(usual) + ",3)>=0.01";
        lines.push_back({label + " is not its series', and the closed length does not bear it out",
                         {yes_if(own, "AND(" + differs + "," + stop_is_unconfirmed(tube) + ")"),
                          yes_or_no(differs_from_series(half) && !(order.stops && path_to(*order.stops, tube).confirmed))}});
    } else {
        lines.push_back({label + " rests on this one figure: confirm it before sawing",
                         {yes_if("stops_known=\"yes\"", "AND(" + own + "," + stop_is_unconfirmed(tube) + ")"),
                          yes_or_no(order.stops && rests_alone(order.reading.shaft, *order.stops, tube))}, false});
    }
}

bool agrees(const WorkOrder& order) { return !order.stops || order.stops->agreement == ClosedAgreement::agrees; }

constexpr const char* disagrees = "OR(agreement=\"longer\",agreement=\"shorter\")";

void add_disagreement(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    static constexpr const char* guards = ": the guards stop it before its tubes do; slide them back and measure the tubes alone, less may come off";
    const std::string stopped = "IF(AND(guards_stop=\"yes\",agreement=\"longer\"),\"" + std::string(guards) + "\",\"\")";
    lines.push_back({"the closed length is not what halves and shoulders give, each tube is cut as if it were the one that stops", {yes_if(disagrees), yes_or_no(!agrees(order))}, false,
                     {stopped, std::string(order.stops && order.stops->guards_stop ? guards : "")}});
}

// What is added to C where it was read at the other cross: read as from the outer one the spacings were taken off for nothing.
std::vector<Length> shifts(const WorkOrder& order)
{
    std::vector<Length> found = spacing_sums(order.reading.shaft.spacing);
    if (order.reading.reference == Reference::inner_cross)
        for (Length& shift : found) shift = -shift;
    return found;
}

const char* other_cross_word(const WorkOrder& order) { return order.reading.reference == Reference::outer_cross ? "INNER" : "OUTER"; }

bool within(Length difference, Length allowance) { return !clearly_above(difference, allowance) && !clearly_below(difference, -allowance); }

void add_other_cross(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    const auto moved = shifts(order);
    if (moved.empty()) return;
    std::string any = "FALSE";
    for (const Length shift : moved) any += ",ROUND(ABS(closed_length+" + literal(shift) + "-modelled_closed)-closed_allowance,3)<0.01";
    const bool now = !agrees(order) && std::any_of(moved.begin(), moved.end(), [&](Length shift) {
        return within(order.reading.shaft.closed.value + shift - order.stops->modelled, order.stops->allowance);
    });
    lines.push_back({std::string("the closed length disagrees with the halves by the spacing of the wide-angle joint: it seems to be measured from the ") + other_cross_word(order) + " cross",
                     {yes_if(disagrees, "OR(" + any + ")"), yes_or_no(now)}});
}

bool exchanged_now(const WorkOrder& order, ClosedAgreement agreement)
{
    const auto exchanged = exchanged_closed(order);
    if (!exchanged || order.stops->agreement != agreement) return false;
    return within(order.reading.shaft.closed.value - exchanged->value, exchanged->plus_minus);
}

void add_exchanged(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    const auto found = [](const char* agreement) {
        return "IF(AND(ISNUMBER(exchanged_closed),agreement=\"" + std::string(agreement) + "\")," +
               yes_if("ROUND(ABS(closed_length-exchanged_closed)-exchanged_plus_minus,3)<0.01") + ",\"no\")";
    };
    lines.push_back({"the two half lengths seem to be exchanged: the other way round they give the closed length", {found("shorter"), yes_or_no(exchanged_now(order, ClosedAgreement::shorter))}});
    lines.push_back({"the two half lengths are perhaps exchanged: the other way round they give the closed length; the cut is safe in either reading",
                     {found("longer"), yes_or_no(exchanged_now(order, ClosedAgreement::longer))}, false});
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
void add_unlisted(std::vector<FindingLine>& lines, const WorkOrder& order)
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
    lines.push_back({std::string("the closed length is none of its series', but from the ") + other_cross_word(order) + " cross it is one: state the cross, or measure both halves",
                     {yes_if(unlisted, "OR(" + elsewhere + ")"), yes_or_no(unmeasured && !listed && elsewhere_now)}});
    lines.push_back({"nothing confirms the closed length: it is none that its series lists; is the shaft uncut? Measure both halves",
                     {"IF(" + unlisted + ",IF(OR(" + elsewhere + "),\"no\",\"yes\"),\"no\")", yes_or_no(unmeasured && !listed && !elsewhere_now)}, false});
}

}  // namespace

void add_stop_findings(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    for (const Tube tube : both_tubes) add_own_shoulder(lines, order, tube);
    add_disagreement(lines, order);
}

void add_elsewhere_findings(std::vector<FindingLine>& lines, const WorkOrder& order)
{
    add_other_cross(lines, order);
    add_exchanged(lines, order);
    add_unlisted(lines, order);
}

}  // namespace shaftcut::workbook
