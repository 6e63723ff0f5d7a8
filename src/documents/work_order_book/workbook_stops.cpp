// Where the tubes stop.
#include <algorithm>

#include "work_order_book/workbook_lines.hpp"

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

// Beyond every length that a file may state.
const std::string unbounded = "1000000";

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

std::string if_known(const std::string& formula) { return "IF(stops_known=\"yes\"," + formula + ",\"\")"; }

LengthLine line_of(const std::string& name, const std::string& label, const std::string& formula, std::variant<double, std::string> now)
{
    return {name, label, {formula, std::move(now)}, "", {}};
}

// The half was measured and the shoulder that its tube meets is stated: the closed length is a second figure for both.
std::string path_is_known(Tube tube) { return for_tube("AND(ISNUMBER(THIS_half),ISNUMBER(OTHER_shoulder))", tube); }

// A shoulder found by a stop depth moves with the half's length.
LengthLine shoulder_line(const WorkOrder& order, Tube tube)
{
    const Half& half = order.reading.shaft.halves[tube];
    const JobHalf& job = order.shaft.halves[tube];
    LengthLine line;
    line.name = for_tube("THIS_shoulder", tube);
    line.label = half_label(order, tube) + ": shoulder";
    line.tolerance_name = for_tube("THIS_shoulder_plus_minus", tube);
    line.formula.now = half.shoulder ? std::variant<double, std::string>(half.shoulder->value.mm()) : "not known";
    line.tolerance.now = (half.shoulder ? half.shoulder->plus_minus : order.measuring_plus_minus).mm();
    if (job.shoulder || !job.stop_depth) return line;
    const std::string input = for_tube("THIS_half", tube);
    const Length depth_doubt = job.stop_depth->plus_minus.value_or(order.measuring_plus_minus);
    line.formula.text = if_number(input, "ROUND(" + in_mm(input, order.units) + "-" + literal(job.stop_depth->length) + ",3)",
                                  half.series_shoulder ? literal(*half.series_shoulder) : "\"not known\"");
    line.tolerance.text = if_number(input, "ROUND(" + for_tube("THIS_plus_minus", tube) + "+" + literal(depth_doubt) + ",3)", literal(order.measuring_plus_minus));
    return line;
}

LengthLine path_line(const WorkOrder& order, Tube tube)
{
    const auto& stops = order.stops;
    LengthLine line = line_of(for_tube("THIS_path", tube), for_tube("Closed length if the THIS tube is the one that stops", tube),
                              if_known("IF(" + path_is_known(tube) + for_tube(",ROUND(THIS_length+OTHER_shoulder,3),closed_length)", tube)),
                              now_in_mm(stops ? std::optional(stops->path[tube].closed) : std::nullopt));
    line.tolerance_name = line.name + "_plus_minus";
    const std::string own = for_tube("closed_plus_minus+IF(ISNUMBER(THIS_half),THIS_plus_minus,0)+IF(", tube) + path_is_known(tube) + for_tube(",OTHER_shoulder_plus_minus,0)", tube);
    line.tolerance = {if_known("ROUND(" + own + ",3)"), now_in_mm(stops ? std::optional(stops->path[tube].tolerance) : std::nullopt)};
    return line;
}

LengthLine confirms_line(const WorkOrder& order, Tube tube)
{
    const std::string within = for_tube("AND(stops_known=\"yes\",ROUND(ABS(THIS_path-closed_length)-THIS_path_plus_minus,3)<0.01)", tube);
    return line_of(for_tube("THIS_path_confirmed", tube), for_tube("The closed length bears that out", tube), "IF(stops_known=\"yes\"," + yes_if(path_is_known(tube), within) + ",\"no\")",
                   yes_or_no(order.stops && order.stops->path[tube].confirmed));
}

// Of both measured halves the greater path, and of equal ones the one known better; of one measured half its path; else the closed length.
std::string of_model(const std::string& greater, const std::string& lesser, const std::string& equal, const std::string& one, const std::string& none)
{
    const std::string both = "IF(ROUND(inner_path-outer_path,3)=0," + equal + ",IF(inner_path>outer_path," + greater + "," + lesser + "))";
    return if_known("IF(ISNUMBER(inner_half),IF(ISNUMBER(outer_half)," + both + ",inner_path" + one + "),IF(ISNUMBER(outer_half),outer_path" + one + "," + none + "))");
}

void add_model(std::vector<LengthLine>& lines, const std::optional<Stops>& stops)
{
    LengthLine line = line_of("modelled_closed", "Closed length that halves and shoulders give", of_model("inner_path", "outer_path", "inner_path", "", "closed_length"),
                              now_in_mm(stops ? std::optional(stops->modelled) : std::nullopt));
    line.tolerance_name = "closed_allowance";
    line.tolerance = {of_model("inner_path_plus_minus", "outer_path_plus_minus", "MIN(inner_path_plus_minus,outer_path_plus_minus)", "_plus_minus", "closed_plus_minus"),
                      now_in_mm(stops ? std::optional(stops->allowance) : std::nullopt)};
    lines.push_back(line);
    lines.push_back(line_of("agreement", "The measured closed length, beside that",
                            if_known("IF(ROUND(closed_length-modelled_closed-closed_allowance,3)>=0.01,\"longer\","
                                     "IF(ROUND(modelled_closed-closed_length-closed_allowance,3)>=0.01,\"shorter\",\"agrees\"))"),
                            agreement_words(stops)));
}

// Of a half that was not measured nothing but the closed length can be said: its tube is taken to be the one that stops.
void add_stop(std::vector<LengthLine>& lines, const WorkOrder& order, Tube tube)
{
    const std::string left = for_tube("ROUND(closed_length-OTHER_length,3)", tube);
    const std::string known = for_tube("AND(ISNUMBER(THIS_shoulder),ISNUMBER(OTHER_half))", tube);
    const std::string stated = for_tube("IF(agreement=\"agrees\",ROUND(THIS_shoulder+closed_length-modelled_closed,3),MAX(THIS_shoulder,", tube) + left + "))";
    lines.push_back(line_of(for_tube("THIS_stop", tube), half_label(order, tube) + ": cross to the face that stops the other tube, as the cut takes it",
                            if_known("IF(" + known + "," + stated + "," + left + ")"), now_in_mm(order.stops ? std::optional(order.stops->shoulder[tube]) : std::nullopt)));
}

// What a path can be at most by its half and the shoulder that it meets.
LengthLine most_line(const WorkOrder& order, Tube tube)
{
    const auto& length = order.reading.shaft.halves[tube].length;
    const auto& shoulder = order.reading.shaft.halves[other(tube)].shoulder;
    const auto now = order.stops && shoulder ? std::optional(length->value + shoulder->value + shoulder->plus_minus) : std::nullopt;
    return line_of(for_tube("THIS_most", tube), for_tube("THIS half and the shoulder it meets, at most", tube),
                   if_known(for_tube("IF(ISNUMBER(OTHER_shoulder),ROUND(THIS_length+OTHER_shoulder+OTHER_shoulder_plus_minus,3),\"\")", tube)), now_in_mm(now));
}

LengthLine exchanged_line(const WorkOrder& order)
{
    const auto now = exchanged_closed(order);
    const std::string known = "AND(ISNUMBER(inner_half),ISNUMBER(outer_half),ISNUMBER(inner_shoulder),ISNUMBER(outer_shoulder))";
    const auto doubt = [](Tube tube) { return for_tube("closed_plus_minus+THIS_plus_minus+THIS_shoulder_plus_minus", tube); };
    const std::string inner = doubt(Tube::inner), outer = doubt(Tube::outer), apart = "ROUND(inner_length+inner_shoulder-outer_length-outer_shoulder,3)";
    LengthLine line = line_of("exchanged_closed", "Closed length if the two half lengths were exchanged", if_known("IF(" + known + ",ROUND(MAX(inner_length+inner_shoulder,outer_length+outer_shoulder),3),\"\")"),
                              now_in_mm(value_of(now)));
    line.tolerance_name = "exchanged_plus_minus";
    line.tolerance = {if_known("IF(" + known + ",ROUND(IF(" + apart + "=0,MIN(" + inner + "," + outer + "),IF(" + apart + ">0," + inner + "," + outer + ")),3),\"\")"),
                      now_in_mm(now ? std::optional(now->plus_minus) : std::nullopt)};
    return line;
}

}  // namespace

std::optional<Toleranced> exchanged_closed(const WorkOrder& order)
{
    std::optional<Toleranced> greatest;
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        if (!order.stops || !half.measured || !half.shoulder) return std::nullopt;
        const Toleranced path{half.length->value + half.shoulder->value, order.reading.closed.plus_minus + half.length->plus_minus + half.shoulder->plus_minus};
        if (!greatest || path.value > greatest->value || (path.value == greatest->value && path.plus_minus < greatest->plus_minus)) greatest = path;
    }
    return greatest;
}

std::string is_measured(Tube tube) { return for_tube("ISNUMBER(THIS_half)", tube); }

std::string owns_shoulder(const WorkOrder& order, Tube tube)
{
    const JobHalf& job = order.shaft.halves[tube];
    return job.shoulder ? "TRUE" : job.stop_depth ? is_measured(tube) : "FALSE";
}

std::string stop_is_unconfirmed(Tube tube) { return for_tube("OTHER_path_confirmed=\"no\"", tube); }

std::string shoulder_origin(const WorkOrder& order, Tube tube)
{
    const JobHalf& job = order.shaft.halves[tube];
    if (job.shoulder) return "measured on this shaft";
    const std::string series = "the " + std::string(order.reading.shaft.halves[tube].of_other_series ? "half's own " : "") + "series";
    if (job.stop_depth) return "half length less stop depth " + figure_with_unit(job.stop_depth->length, order.units, Toward::nearest, 3) + ", as measured";
    return order.reading.shaft.halves[tube].shoulder ? series : "not known";
}

Names closing_expressions()
{
    Names names;
    for (const Tube tube : both_tubes) {
        const auto add = [&](const char* name, const std::string& expression) { names.emplace_back(for_tube(name, tube), for_tube(expression, tube)); };
        // Where no shoulder is stated nothing bounds the path but the closed length.
        add("THIS_bound", "IF(ISNUMBER(THIS_most),THIS_most,IF(agreement=\"agrees\"," + unbounded + ",0))");
        add("THIS_greater", "MAX(THIS_bound,closed_most)");
        add("THIS_lesser", "MIN(THIS_bound,closed_most)");
        add("THIS_whole_most", "IF(agreement=\"agrees\",MIN(closed_most,THIS_bound+THIS_plus_minus),MAX(closed_most,THIS_bound+THIS_plus_minus))");
        add("THIS_sawn_most", "IF(agreement=\"agrees\",MIN(THIS_greater,THIS_lesser+THIS_plus_minus),THIS_greater+THIS_plus_minus)");
        add("THIS_worst", "IF(sawn_THIS_tube>0,THIS_sawn_most-sawn_THIS_tube+saw_plus_minus,THIS_whole_most)");
    }
    names.emplace_back("closes_at_worst", "MAX(inner_worst,outer_worst)");
    return names;
}

std::vector<LengthLine> stop_lines(const WorkOrder& order)
{
    std::vector<LengthLine> lines;
    const bool known = order.stops.has_value();
    lines.push_back(line_of("stops_known", "Both halves are known", "IF(AND(ISNUMBER(closed_length),ISNUMBER(inner_length),ISNUMBER(outer_length)),\"yes\",\"no\")", yes_or_no(known)));
    for (const Tube tube : both_tubes) lines.push_back(shoulder_line(order, tube));
    for (const Tube tube : both_tubes) lines.push_back(path_line(order, tube));
    for (const Tube tube : both_tubes) lines.push_back(confirms_line(order, tube));
    add_model(lines, order.stops);
    lines.push_back(line_of("guards_stop", "The guards' own closed length is the measured one", guards_stop_formula(order), guards_stop_now(order)));
    lines.push_back(exchanged_line(order));
    for (const Tube tube : both_tubes) add_stop(lines, order, tube);
    lines.push_back(line_of("closed_most", "Closed length, at most", if_known("ROUND(closed_length+closed_plus_minus,3)"),
                            now_in_mm(known ? std::optional(order.reading.shaft.closed.value + order.reading.closed.plus_minus) : std::nullopt)));
    for (const Tube tube : both_tubes) lines.push_back(most_line(order, tube));
    lines.push_back(line_of("cut_is_known", "A cut can be computed",
                            "IF(AND(stops_known=\"yes\",ISNUMBER(shortest_length),lengths_unreadable=\"no\"),\"yes\",\"no\")",
                            std::string(known && order.fit.shortest ? "yes" : "no")));
    return lines;
}

}  // namespace shaftcut::workbook
