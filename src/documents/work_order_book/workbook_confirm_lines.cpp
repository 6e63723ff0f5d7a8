// What is to be confirmed before sawing, as formulas: which of it is asked follows from what is typed in.
#include <algorithm>

#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

constexpr PerEach<Tube, Confirmed> per_tube(Confirmed inner, Confirmed outer)
{
    PerEach<Tube, Confirmed> each;
    each[Tube::inner] = inner;
    each[Tube::outer] = outer;
    return each;
}

constexpr const char* disagrees = "OR(agreement=\"longer\",agreement=\"shorter\")";

// The ± of the reading that confirms is the workshop's own.
std::string with_tape(const WorkOrder& order, const std::string& doubt) { return "ROUND(" + doubt + "+" + literal(order.measuring_plus_minus) + ",3)"; }

ConfirmLine closed_line(const WorkOrder& order)
{
    const std::string cross = order.reading.has_wide_angle ? (order.reading.reference == Reference::outer_cross ? ", from the OUTER cross" : ", from the INNER cross") : "";
    return {Confirmed::closed, "Closed length", "pushed fully together" + cross, disagrees, in_mm("closed", order.units), with_tape(order, "closed_plus_minus"),
            {"", std::string("closed length and halves disagree")}};
}

// Whether a half has no shoulder that is always known: a stop depth falls away with the half's length.
bool may_lack_shoulder(const WorkOrder& order, Tube tube) { return !order.shaft.halves[tube].shoulder && !order.reading.shaft.halves[tube].series_shoulder; }

void add_cross_line(std::vector<ConfirmLine>& lines, const WorkOrder& order)
{
    if (!order.reading.has_wide_angle || (!may_lack_shoulder(order, Tube::inner) && !may_lack_shoulder(order, Tube::outer))) return;
    std::string measured = "FALSE", told = "FALSE";
    for (const Tube tube : both_tubes) {
        measured += "," + is_measured(tube);
        told += for_tube(",AND(ISNUMBER(THIS_half),ISNUMBER(OTHER_shoulder))", tube);
    }
    lines.push_back({Confirmed::closed_inner_cross, "Closed length, inner crosses", "pushed fully together, between the INNER crosses", "IF(OR(" + told + "),FALSE,OR(" + measured + "))", "closed_length",
                     with_tape(order, "closed_plus_minus"), {"", std::string("no other figure tells from which cross it was measured")}});
}

// A half whose path is below the closed length is short by its own figure alone, unless its guard bears it out.
std::string short_alone(Tube tube)
{
    const std::string stands_out = "THIS_length-THIS_guard_length", allowed = "THIS_plus_minus+THIS_guard_plus_minus";
    const std::string unlike = "OR(ROUND(0-(" + allowed + ")-(" + stands_out + "),3)>=0.01,ROUND(" + stands_out + "-guard_setback-(" + allowed + "),3)>=0.01)";
    return for_tube("IF(ROUND(closed_length-THIS_path-THIS_path_plus_minus,3)>=0.01,IF(ISNUMBER(THIS_guard_length)," + unlike + ",TRUE),FALSE)", tube);
}

CellFormula half_why(const WorkOrder& order, Tube tube)
{
    static constexpr const char *unmeasured = "not measured: the cut rests on the closed length and the series", *disagree = "closed length and halves disagree",
                                *alone = "short by its own figure alone";
    const bool agrees = !order.stops || order.stops->agreement == ClosedAgreement::agrees;
    const char* now = !order.reading.shaft.halves[tube].measured ? unmeasured : agrees ? alone : order.stops->in_model[tube] ? disagree : alone;
    const std::string quoted = "\"" + std::string(unmeasured) + "\"";
    return {"IF(" + is_measured(tube) + ",IF(AND(" + disagrees + for_tube(",ROUND(THIS_path-modelled_closed,3)=0),\"", tube) + disagree + "\",\"" + alone + "\")," + quoted + ")", std::string(now)};
}

ConfirmLine half_line(const WorkOrder& order, Tube tube)
{
    static constexpr auto which = per_tube(Confirmed::inner_half, Confirmed::outer_half);
    const std::string in_model = "AND(" + std::string(disagrees) + for_tube(",ROUND(THIS_path-modelled_closed,3)=0)", tube);
    const std::string asked = "IF(" + is_measured(tube) + ",OR(" + in_model + "," + short_alone(tube) + "),TRUE)";
    return {which[tube], tube == Tube::inner ? "Inner half" : "Outer half", "inner cross to the tube's free end", asked, for_tube("THIS_length", tube), with_tape(order, for_tube("THIS_plus_minus", tube)),
            half_why(order, tube)};
}

void add_shoulder_line(std::vector<ConfirmLine>& lines, const WorkOrder& order, Tube tube)
{
    static constexpr auto which = per_tube(Confirmed::inner_shoulder, Confirmed::outer_shoulder);
    const Half& half = order.reading.shaft.halves[tube];
    const std::string own = half.series_shoulder ? "FALSE" : owns_shoulder(order, tube);
    if (own == "FALSE" && !half.of_other_series) return;
    const std::string of_other = half.of_other_series ? for_tube("ISNUMBER(THIS_shoulder)", tube) : "FALSE";
    lines.push_back({which[tube], tube == Tube::inner ? "Inner half's shoulder" : "Outer half's shoulder", "inner cross to the face that stops the other tube",
                     "AND(OR(" + own + "," + of_other + ")," + stop_is_unconfirmed(tube) + ")", for_tube("THIS_shoulder", tube), with_tape(order, for_tube("THIS_shoulder_plus_minus", tube)),
                     {"", std::string("no other figure bears it out; cut too short by it, the shaft bottoms")}});
}

void add_guard_line(std::vector<ConfirmLine>& lines, const WorkOrder& order, Tube tube)
{
    static constexpr auto which = per_tube(Confirmed::inner_guard, Confirmed::outer_guard);
    if (!order.reading.shaft.halves[tube].guard_used) return;
    const std::string setback = figure_with_unit(order.limits.length(Limit::guard_setback), order.units, Toward::down);
    lines.push_back({which[tube], tube == Tube::inner ? "Inner guard" : "Outer guard", "its tube stands out of it by 0 to " + setback, for_tube("IF(ISNUMBER(THIS_guard_length),FALSE,TRUE)", tube), "", "",
                     {"", std::string("not measured: it is cut as its tube is")}});
}

// An exposed lock of a primary shaft whose year of building is not stated: no length changes that.
void add_year_line(std::vector<ConfirmLine>& lines, const WorkOrder& order)
{
    const auto exposed = [&](End end) { return order.shaft.ends[end].lock && is_exposed(*order.shaft.ends[end].lock); };
    if (order.shaft.role != Role::primary || order.shaft.built || std::none_of(both_ends.begin(), both_ends.end(), exposed)) return;
    lines.push_back({Confirmed::built, "Year of building", "before 2021, by the plate, or by the owner's word and whose", "TRUE", "", "",
                     {"", std::string("from 2021 on no part of a lock may stand out (EN 12965:2019)")}});
}

}  // namespace

std::vector<ConfirmLine> confirm_lines(const WorkOrder& order)
{
    std::vector<ConfirmLine> lines{closed_line(order)};
    add_cross_line(lines, order);
    for (const Tube tube : both_tubes) lines.push_back(half_line(order, tube));
    for (const Tube tube : both_tubes) add_shoulder_line(lines, order, tube);
    for (const Tube tube : both_tubes) add_guard_line(lines, order, tube);
    add_year_line(lines, order);
    return lines;
}

}  // namespace shaftcut::workbook
