// What is to be confirmed before sawing, as formulas: which of it is asked follows from what is typed in.
#include <algorithm>

#include "work_order_book/confirm_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

CellFormula because(ConfirmReason why, const Wording& w) { return {"", reason(why, w)}; }

// The ± of the reading that confirms is the workshop's own.
std::string with_tape(const WorkOrder& order, const std::string& doubt) { return "ROUND(" + doubt + "+" + literal(order.measuring_plus_minus) + ",3)"; }

std::string label_of(const WorkOrder& order, Confirmed what, const Wording& w)
{
    const auto cross = order.reading.has_wide_angle ? std::optional(order.reading.reference) : std::nullopt;
    return confirm_name(what, cross, order.limits.length(Limit::guard_setback), w);
}

ConfirmLine closed_line(const WorkOrder& order, const Wording& w)
{
    return {Confirmed::closed, label_of(order, Confirmed::closed, w), lengths_disagree(w), in_mm("closed", order.units), with_tape(order, "closed_plus_minus"),
            because(ConfirmReason::lengths_disagree, w)};
}

// Whether a half has no shoulder that is always known: a stop depth falls away with the half's length.
bool may_lack_shoulder(const WorkOrder& order, Tube tube) { return !order.shaft.halves[tube].shoulder && !order.reading.shaft.halves[tube].series_shoulder; }

void add_cross_line(std::vector<ConfirmLine>& lines, const WorkOrder& order, const Wording& w)
{
    if (!order.reading.has_wide_angle || (!may_lack_shoulder(order, Tube::inner) && !may_lack_shoulder(order, Tube::outer))) return;
    std::string measured = "FALSE", told = "FALSE";
    for (const Tube tube : both_tubes) {
        measured += "," + is_measured(tube);
        told += for_tube(",AND(ISNUMBER(THIS_half),ISNUMBER(OTHER_shoulder))", tube);
    }
    lines.push_back({Confirmed::closed_inner_cross, label_of(order, Confirmed::closed_inner_cross, w), "IF(OR(" + told + "),FALSE,OR(" + measured + "))", "closed_length",
                     with_tape(order, "closed_plus_minus"), because(ConfirmReason::cross_unknown, w)});
}

// A half whose path is below the closed length is short by its own figure alone, unless its guard bears it out.
std::string short_alone(Tube tube)
{
    const std::string stands_out = "THIS_length-THIS_guard_length", allowed = "THIS_plus_minus+THIS_guard_plus_minus";
    const std::string unlike = "OR(ROUND(0-(" + allowed + ")-(" + stands_out + "),3)>=0.01,ROUND(" + stands_out + "-guard_setback-(" + allowed + "),3)>=0.01)";
    return for_tube("IF(ROUND(closed_length-THIS_path-THIS_path_plus_minus,3)>=0.01,IF(ISNUMBER(THIS_guard_length)," + unlike + ",TRUE),FALSE)", tube);
}

CellFormula half_why(const WorkOrder& order, Tube tube, const Wording& w)
{
    const std::string unmeasured = reason(ConfirmReason::not_measured, w), disagree = reason(ConfirmReason::lengths_disagree, w), alone = reason(ConfirmReason::short_alone, w);
    const bool agrees = !order.stops || order.stops->agreement == ClosedAgreement::agrees;
    const std::string& now = !order.reading.shaft.halves[tube].measured ? unmeasured : agrees ? alone : order.stops->in_model[tube] ? disagree : alone;
    const std::string in_model = "AND(" + lengths_disagree(w) + for_tube(",ROUND(THIS_path-modelled_closed,3)=0)", tube);
    const std::string of_measured = "IF(" + in_model + "," + text_in_formula(disagree) + "," + text_in_formula(alone) + ")";
    return {"IF(" + is_measured(tube) + "," + of_measured + "," + text_in_formula(unmeasured) + ")", now};
}

ConfirmLine half_line(const WorkOrder& order, Tube tube, const Wording& w)
{
    const Confirmed what = confirmed_half[tube];
    const std::string in_model = "AND(" + lengths_disagree(w) + for_tube(",ROUND(THIS_path-modelled_closed,3)=0)", tube);
    const std::string asked = "IF(" + is_measured(tube) + ",OR(" + in_model + "," + short_alone(tube) + "),TRUE)";
    return {what, label_of(order, what, w), asked, for_tube("THIS_length", tube), with_tape(order, for_tube("THIS_plus_minus", tube)),
            half_why(order, tube, w)};
}

// A stop that the series states and the job does not, of a series that was told by measuring, is asked for whatever bears it out.
std::string asked_of_shoulder(const WorkOrder& order, Tube tube, const std::string& otherwise)
{
    if (!order.reading.shaft.halves[tube].identified) return otherwise;
    return "IF(" + owns_shoulder(order, tube) + "," + otherwise + for_tube(",ISNUMBER(THIS_shoulder))", tube);
}

CellFormula shoulder_why(const WorkOrder& order, Tube tube, const Wording& w)
{
    const Half& half = order.reading.shaft.halves[tube];
    if (!half.identified) return because(ConfirmReason::nothing_bears_it_out, w);
    const std::string alone = reason(ConfirmReason::nothing_bears_it_out, w), by_measures = reason(ConfirmReason::series_by_measures, w);
    return {"IF(" + owns_shoulder(order, tube) + "," + text_in_formula(alone) + "," + text_in_formula(by_measures) + ")", half.shoulder_place ? alone : by_measures};
}

void add_shoulder_line(std::vector<ConfirmLine>& lines, const WorkOrder& order, Tube tube, const Wording& w)
{
    const Confirmed what = confirmed_shoulder[tube];
    const Half& half = order.reading.shaft.halves[tube];
    const std::string own = half.series_shoulder ? "FALSE" : owns_shoulder(order, tube);
    if (own == "FALSE" && !half.of_other_series && !half.identified) return;
    const std::string of_other = half.of_other_series ? for_tube("ISNUMBER(THIS_shoulder)", tube) : "FALSE";
    lines.push_back({what, label_of(order, what, w),
                     asked_of_shoulder(order, tube, "AND(OR(" + own + "," + of_other + ")," + stop_is_unconfirmed(tube, w) + ")"), for_tube("THIS_shoulder", tube), with_tape(order, for_tube("THIS_shoulder_plus_minus", tube)),
                     shoulder_why(order, tube, w)});
}

void add_guard_line(std::vector<ConfirmLine>& lines, const WorkOrder& order, Tube tube, const Wording& w)
{
    const Confirmed what = confirmed_guard[tube];
    if (!order.reading.shaft.halves[tube].guard_used) return;
    lines.push_back({what, label_of(order, what, w), for_tube("IF(ISNUMBER(THIS_guard_length),FALSE,TRUE)", tube), "", "",
                     because(ConfirmReason::guard_not_measured, w)});
}

// An exposed lock of a primary shaft whose year of building is not stated: no length changes that.
void add_year_line(std::vector<ConfirmLine>& lines, const WorkOrder& order, const Wording& w)
{
    if (year_to_confirm(order.shaft)) lines.push_back({Confirmed::built, label_of(order, Confirmed::built, w), "TRUE", "", "", because(ConfirmReason::lock_exposed, w)});
}

}  // namespace

std::vector<ConfirmLine> confirm_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<ConfirmLine> lines{closed_line(order, w)};
    add_cross_line(lines, order, w);
    for (const Tube tube : both_tubes) lines.push_back(half_line(order, tube, w));
    for (const Tube tube : both_tubes) add_shoulder_line(lines, order, tube, w);
    for (const Tube tube : both_tubes) add_guard_line(lines, order, tube, w);
    add_year_line(lines, order, w);
    return lines;
}

}  // namespace shaftcut::workbook
