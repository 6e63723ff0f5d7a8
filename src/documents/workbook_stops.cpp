// Where the tubes stop, and the fixed figures: what series, job and workshop say.
#include "workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

std::string guards_closed_expression()
{
    return "MAX(inner_guard_length+outer_guard_shoulder,outer_guard_length+inner_guard_shoulder)";
}

std::string guards_stop_formula(const WorkOrder& order)
{
    const auto& halves = order.reading.shaft.halves;
    if (!halves[Tube::inner].guard_shoulder || !halves[Tube::outer].guard_shoulder) return "\"no\"";
    return "IF(AND(ISNUMBER(inner_guard_length),ISNUMBER(outer_guard_length)),IF(ROUND(ABS(ROUND(closed_length-" + guards_closed_expression() +
           ",3))-closed_plus_minus-inner_guard_plus_minus-outer_guard_plus_minus,3)<0.01,\"yes\",\"no\"),\"no\")";
}

std::string guards_stop_now(const WorkOrder& order)
{
    const Shaft& shaft = order.reading.shaft;
    const Half& inner = shaft.halves[Tube::inner];
    const Half& outer = shaft.halves[Tube::outer];
    if (!inner.guard || !outer.guard || !inner.guard_shoulder || !outer.guard_shoulder) return "no";
    const Length closed = std::max(inner.guard->value + *outer.guard_shoulder, outer.guard->value + *inner.guard_shoulder);
    const Length allowance = shaft.closed.plus_minus + inner.guard->plus_minus + outer.guard->plus_minus;
    const Length apart = std::max(shaft.closed.value - closed, closed - shaft.closed.value);
    return clearly_above(apart, allowance) ? "no" : "yes";
}

std::string agreement_words(const std::optional<Stops>& stops)
{
    if (!stops) return "";
    switch (stops->agreement) {
    case ClosedAgreement::agrees: return "agrees";
    case ClosedAgreement::longer: return "longer";
    case ClosedAgreement::shorter: break;
    }
    return "shorter";
}

// s_A = C − b where no shoulder is known: both tubes are then taken to stop together.
std::string first_stop(const WorkOrder& order, Tube tube)
{
    const bool known = order.reading.shaft.halves[tube].shoulder.has_value();
    return for_tube(known ? "THIS_shoulder" : "(closed_length-OTHER_length)", tube);
}

std::string if_known(const std::string& formula) { return "IF(stops_known=\"yes\"," + formula + ",\"\")"; }

LengthLine line_of(const char* name, const char* label, const std::string& formula, std::variant<double, std::string> now)
{
    return {name, label, {formula, std::move(now)}, "", {}};
}

// A shoulder that is not known is the greatest possible in every case.
std::string stop_formula(const WorkOrder& order, Tube tube)
{
    std::string greatest = for_tube("ROUND(closed_length-OTHER_length,3)", tube);
    if (!order.reading.shaft.halves[tube].shoulder) return greatest;
    return for_tube("IF(agreement=\"agrees\",ROUND(THIS_shoulder+closed_length-modelled_closed,3),IF(agreement=\"longer\",", tube) + greatest +
           for_tube(",IF(agreement=\"shorter\",MIN(THIS_shoulder,", tube) + greatest + for_tube("),THIS_shoulder)))", tube);
}

void add_stop(std::vector<LengthLine>& lines, const WorkOrder& order, Tube tube)
{
    LengthLine line;
    line.name = for_tube("THIS_stop", tube);
    line.label = half_label(order, tube) + ": cross to the face that stops the other tube";
    line.formula = {if_known(stop_formula(order, tube)), now_in_mm(order.stops ? std::optional(order.stops->shoulder[tube]) : std::nullopt)};
    lines.push_back(line);
}

std::string shoulder_origin(const WorkOrder& order, Tube tube)
{
    if (order.shaft.halves[tube].shoulder) return "measured on this shaft";
    return order.reading.shaft.halves[tube].shoulder ? "the series" : "not known";
}

ConstantLine constant(const WorkOrder& order, Tube tube, const char* name, const char* label, std::optional<Length> length, std::string origin)
{
    const std::string words = half_label(order, tube) + ": " + label;
    return {for_tube(name, tube), words, length ? std::optional(length->mm()) : std::nullopt, length ? std::move(origin) : "not known"};
}

}  // namespace

std::vector<LengthLine> stop_lines(const WorkOrder& order)
{
    std::vector<LengthLine> lines;
    const bool known = order.stops.has_value();
    const std::string modelled = "ROUND(MAX(inner_length+" + first_stop(order, Tube::outer) + ",outer_length+" + first_stop(order, Tube::inner) + "),3)";
    lines.push_back(line_of("stops_known", "Both halves are known", "IF(AND(ISNUMBER(closed_length),ISNUMBER(inner_length),ISNUMBER(outer_length)),\"yes\",\"no\")",
                            std::string(known ? "yes" : "no")));
    lines.push_back(line_of("modelled_closed", "Closed length that halves and shoulders give", if_known(modelled),
                            now_in_mm(known ? std::optional(order.stops->modelled) : std::nullopt)));
    lines.push_back(line_of("closed_allowance", "± that it may differ from the measured one", if_known("closed_plus_minus+inner_plus_minus+outer_plus_minus"),
                            now_in_mm(known ? std::optional(order.stops->allowance) : std::nullopt)));
    lines.push_back(line_of("guards_stop", "The guards' own closed length is the measured one", guards_stop_formula(order), guards_stop_now(order)));
    lines.push_back(line_of("agreement", "The measured closed length, beside that",
                            if_known("IF(ROUND(closed_length-modelled_closed-closed_allowance,3)>=0.01,IF(guards_stop=\"yes\",\"guards stop it\",\"longer\"),"
                                     "IF(ROUND(modelled_closed-closed_length-closed_allowance,3)>=0.01,\"shorter\",\"agrees\"))"),
                            agreement_words(order.stops)));
    for (const Tube tube : both_tubes) add_stop(lines, order, tube);
    lines.push_back(line_of("cut_is_known", "A cut can be computed",
                            "IF(AND(stops_known=\"yes\",ISNUMBER(shortest_length),lengths_unreadable=\"no\"),\"yes\",\"no\")",
                            std::string(known && order.fit.shortest ? "yes" : "no")));
    return lines;
}

std::vector<ConstantLine> shaft_constants(const WorkOrder& order)
{
    std::vector<ConstantLine> lines;
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        lines.push_back(constant(order, tube, "THIS_shoulder", "shoulder", half.shoulder ? std::optional(half.shoulder->value) : std::nullopt, shoulder_origin(order, tube)));
        lines.push_back(constant(order, tube, "THIS_guard_shoulder", "guard shoulder", half.guard_shoulder, "the series"));
        lines.push_back(constant(order, tube, "THIS_seat", "seat", half.seat, "the series"));
        lines.push_back(constant(order, tube, "THIS_least_tube", "least tube", half.least_tube, "the series"));
        lines.push_back(constant(order, tube, "THIS_hole", "lubrication hole, far edge", half.lubrication_hole, "measured on this shaft"));
    }
    const Fraction step = order.saw.step_um;
    lines.push_back({"saw_step", "Saw: step", static_cast<double>(step.numerator) / static_cast<double>(step.denominator) / 1000.0, "the workshop"});
    lines.push_back({"least_cut", "Saw: least cut", order.saw.least_cut.mm(), "the workshop"});
    lines.push_back({"saw_plus_minus", "Saw: ± of a cut", order.saw.plus_minus.mm(), "the workshop"});
    return lines;
}

std::vector<ConstantLine> limit_constants(const WorkOrder& order)
{
    static constexpr std::array<std::pair<Limit, const char*>, 7> used{{
        {Limit::closing_clearance, "closing_clearance"},
        {Limit::closing_clearance_floor, "closing_clearance_floor"},
        {Limit::least_overlap_turning, "least_overlap_turning"},
        {Limit::least_overlap_standing, "least_overlap_standing"},
        {Limit::guard_overlap, "guard_overlap"},
        {Limit::guard_setback, "guard_setback"},
        {Limit::one_chain_shortening, "one_chain_shortening"},
    }};
    std::vector<ConstantLine> lines;
    for (const auto& [limit, name] : used) lines.push_back({name, row_of(limit).name, order.limits.length(limit).mm(), order.limits.basis(limit)});
    return lines;
}

}  // namespace shaftcut::workbook
