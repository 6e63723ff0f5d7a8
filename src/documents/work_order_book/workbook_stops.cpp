// Where the tubes stop.
#include <algorithm>

#include "work_order_book/figure_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

std::string guards_closed_expression()
{
    return "MAX(inner_guard_length+outer_guard_shoulder,outer_guard_length+inner_guard_shoulder)";
}

std::string guards_stop_formula(const WorkOrder& order, const Wording& w)
{
    const auto& halves = order.reading.shaft.halves;
    if (!halves[Tube::inner].guard_shoulder || !halves[Tube::outer].guard_shoulder) return in_formula(CellWord::no, w);
    const std::string within = "ROUND(ABS(ROUND(closed_length-" + guards_closed_expression() + ",3))-closed_plus_minus-inner_guard_plus_minus-outer_guard_plus_minus,3)<0.01";
    return yes_if("AND(ISNUMBER(inner_guard_length),ISNUMBER(outer_guard_length))", within, w);
}

std::string guards_stop_now(const WorkOrder& order, const Wording& w)
{
    const Shaft& shaft = order.reading.shaft;
    const Half& inner = shaft.halves[Tube::inner];
    const Half& outer = shaft.halves[Tube::outer];
    if (!inner.guard || !outer.guard || !inner.guard_shoulder || !outer.guard_shoulder) return yes_or_no(false, w);
    const Length closed = std::max(inner.guard->value + *outer.guard_shoulder, outer.guard->value + *inner.guard_shoulder);
    const Length allowance = shaft.closed.plus_minus + inner.guard->plus_minus + outer.guard->plus_minus;
    const Length apart = std::max(shaft.closed.value - closed, closed - shaft.closed.value);
    return yes_or_no(!clearly_above(apart, allowance), w);
}

// Beyond every length that a file may state.
const std::string unbounded = "1000000";

std::string agreement_words(const std::optional<Stops>& stops, const Wording& w) { return stops ? cell_word(word_of(stops->agreement), w) : ""; }

std::string if_known(const std::string& formula, const Wording& w) { return "IF(" + holds("stops_known", CellWord::yes, w) + "," + formula + ",\"\")"; }

LengthLine line_of(const std::string& name, const std::string& label, const std::string& formula, std::variant<double, std::string> now)
{
    return {name, label, {formula, std::move(now)}, "", {}};
}

// The half was measured and the shoulder that its tube meets is stated: the closed length is a second figure for both.
std::string path_is_known(Tube tube) { return for_tube("AND(ISNUMBER(THIS_half),ISNUMBER(OTHER_shoulder))", tube); }

// A shoulder found by a stop depth moves with the half's length.
LengthLine shoulder_line(const WorkOrder& order, Tube tube, const Wording& w)
{
    const Half& half = order.reading.shaft.halves[tube];
    const JobHalf& job = order.shaft.halves[tube];
    LengthLine line;
    line.name = for_tube("THIS_shoulder", tube);
    line.label = shoulder_name(half.end, tube, w);
    line.tolerance_name = for_tube("THIS_shoulder_plus_minus", tube);
    line.formula.now = half.shoulder ? std::variant<double, std::string>(half.shoulder->value.mm()) : not_known(w);
    line.tolerance.now = (half.shoulder ? half.shoulder->plus_minus : order.measuring_plus_minus).mm();
    if (job.shoulder || !job.stop_depth) return line;
    const std::string input = for_tube("THIS_half", tube);
    const Length depth_doubt = job.stop_depth->plus_minus.value_or(order.measuring_plus_minus);
    line.formula.text = if_number(input, "ROUND(" + in_mm(input, order.units) + "-" + literal(job.stop_depth->length) + ",3)",
                                  half.series_shoulder ? literal(*half.series_shoulder) : text_in_formula(not_known(w)));
    line.tolerance.text = if_number(input, "ROUND(" + for_tube("THIS_plus_minus", tube) + "+" + literal(depth_doubt) + ",3)", literal(order.measuring_plus_minus));
    return line;
}

LengthLine path_line(const WorkOrder& order, Tube tube, const Wording& w)
{
    const auto& stops = order.stops;
    LengthLine line = line_of(for_tube("THIS_path", tube), path_name(tube, w),
                              if_known("IF(" + path_is_known(tube) + for_tube(",ROUND(THIS_length+OTHER_shoulder,3),closed_length)", tube), w),
                              now_in_mm(stops ? std::optional(stops->path[tube].closed) : std::nullopt));
    line.tolerance_name = line.name + "_plus_minus";
    const std::string own = for_tube("closed_plus_minus+IF(ISNUMBER(THIS_half),THIS_plus_minus,0)+IF(", tube) + path_is_known(tube) + for_tube(",OTHER_shoulder_plus_minus,0)", tube);
    line.tolerance = {if_known("ROUND(" + own + ",3)", w), now_in_mm(stops ? std::optional(stops->path[tube].tolerance) : std::nullopt)};
    return line;
}

LengthLine confirms_line(const WorkOrder& order, Tube tube, const Wording& w)
{
    const std::string within = for_tube("AND(" + holds("stops_known", CellWord::yes, w) + ",ROUND(ABS(THIS_path-closed_length)-THIS_path_plus_minus,3)<0.01)", tube);
    return line_of(for_tube("THIS_path_confirmed", tube), name_of(FigureName::path_confirmed, w), only_where(holds("stops_known", CellWord::yes, w), yes_if(path_is_known(tube), within, w), w),
                   yes_or_no(order.stops && order.stops->path[tube].confirmed, w));
}

// Of both measured halves the greater path, and of equal ones the one known better; of one measured half its path; else the closed length.
std::string of_model(const std::string& greater, const std::string& lesser, const std::string& equal, const std::string& one, const std::string& none, const Wording& w)
{
    const std::string both = "IF(ROUND(inner_path-outer_path,3)=0," + equal + ",IF(inner_path>outer_path," + greater + "," + lesser + "))";
    return if_known("IF(ISNUMBER(inner_half),IF(ISNUMBER(outer_half)," + both + ",inner_path" + one + "),IF(ISNUMBER(outer_half),outer_path" + one + "," + none + "))", w);
}

void add_model(std::vector<LengthLine>& lines, const std::optional<Stops>& stops, const Wording& w)
{
    LengthLine line = line_of("modelled_closed", name_of(FigureName::modelled_closed, w), of_model("inner_path", "outer_path", "inner_path", "", "closed_length", w),
                              now_in_mm(stops ? std::optional(stops->modelled) : std::nullopt));
    line.tolerance_name = "closed_allowance";
    line.tolerance = {of_model("inner_path_plus_minus", "outer_path_plus_minus", "MIN(inner_path_plus_minus,outer_path_plus_minus)", "_plus_minus", "closed_plus_minus", w),
                      now_in_mm(stops ? std::optional(stops->allowance) : std::nullopt)};
    lines.push_back(line);
    const std::string unless_longer = word_if("ROUND(modelled_closed-closed_length-closed_allowance,3)>=0.01", CellWord::shorter, CellWord::agrees, w);
    lines.push_back(line_of("agreement", name_of(FigureName::agreement, w),
                            if_known("IF(ROUND(closed_length-modelled_closed-closed_allowance,3)>=0.01," + in_formula(CellWord::longer, w) + "," + unless_longer + ")", w),
                            agreement_words(stops, w)));
}

// Of a half that was not measured nothing but the closed length can be said: its tube is taken to be the one that stops.
void add_stop(std::vector<LengthLine>& lines, const WorkOrder& order, Tube tube, const Wording& w)
{
    const std::string left = for_tube("ROUND(closed_length-OTHER_length,3)", tube);
    const std::string known = for_tube("AND(ISNUMBER(THIS_shoulder),ISNUMBER(OTHER_half))", tube);
    const std::string stated = for_tube("IF(" + holds("agreement", CellWord::agrees, w) + ",ROUND(THIS_shoulder+closed_length-modelled_closed,3),MAX(THIS_shoulder,", tube) + left + "))";
    lines.push_back(line_of(for_tube("THIS_stop", tube), stop_name(order.reading.shaft.halves[tube].end, tube, w),
                            if_known("IF(" + known + "," + stated + "," + left + ")", w), now_in_mm(order.stops ? std::optional(order.stops->shoulder[tube]) : std::nullopt)));
}

// What a path can be at most by its half and the shoulder that it meets.
LengthLine most_line(const WorkOrder& order, Tube tube, const Wording& w)
{
    const auto& length = order.reading.shaft.halves[tube].length;
    const auto& shoulder = order.reading.shaft.halves[other(tube)].shoulder;
    const auto now = order.stops && shoulder ? std::optional(length->value + shoulder->value + shoulder->plus_minus) : std::nullopt;
    return line_of(for_tube("THIS_most", tube), most_name(tube, w),
                   if_known(for_tube("IF(ISNUMBER(OTHER_shoulder),ROUND(THIS_length+OTHER_shoulder+OTHER_shoulder_plus_minus,3),\"\")", tube), w), now_in_mm(now));
}

LengthLine exchanged_line(const WorkOrder& order, const Wording& w)
{
    const auto now = exchanged_closed(order);
    const std::string known = "AND(ISNUMBER(inner_half),ISNUMBER(outer_half),ISNUMBER(inner_shoulder),ISNUMBER(outer_shoulder))";
    const auto doubt = [](Tube tube) { return for_tube("closed_plus_minus+THIS_plus_minus+THIS_shoulder_plus_minus", tube); };
    const std::string inner = doubt(Tube::inner), outer = doubt(Tube::outer), apart = "ROUND(inner_length+inner_shoulder-outer_length-outer_shoulder,3)";
    LengthLine line = line_of("exchanged_closed", name_of(FigureName::exchanged_closed, w), if_known("IF(" + known + ",ROUND(MAX(inner_length+inner_shoulder,outer_length+outer_shoulder),3),\"\")", w),
                              now_in_mm(value_of(now)));
    line.tolerance_name = "exchanged_plus_minus";
    line.tolerance = {if_known("IF(" + known + ",ROUND(IF(" + apart + "=0,MIN(" + inner + "," + outer + "),IF(" + apart + ">0," + inner + "," + outer + ")),3),\"\")", w),
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

std::string lengths_disagree(const Wording& w) { return "OR(" + holds("agreement", CellWord::longer, w) + "," + holds("agreement", CellWord::shorter, w) + ")"; }

std::string stop_is_unconfirmed(Tube tube, const Wording& w) { return for_tube(holds("OTHER_path_confirmed", CellWord::no, w), tube); }

std::string shoulder_origin(const WorkOrder& order, Tube tube, const Wording& w)
{
    const JobHalf& job = order.shaft.halves[tube];
    if (job.shoulder) return origin(Origin::measured, w);
    if (job.stop_depth) return origin_by_stop_depth(job.stop_depth->length, w);
    const Half& half = order.reading.shaft.halves[tube];
    return half.shoulder ? origin(half.of_other_series ? Origin::half_series : Origin::series, w) : not_known(w);
}

Names closing_expressions(const Wording& w)
{
    Names names;
    for (const Tube tube : both_tubes) {
        const auto add = [&](const char* name, const std::string& expression) { names.emplace_back(for_tube(name, tube), for_tube(expression, tube)); };
        // Where no shoulder is stated nothing bounds the path but the closed length.
        add("THIS_bound", "IF(ISNUMBER(THIS_most),THIS_most,IF(" + holds("agreement", CellWord::agrees, w) + "," + unbounded + ",0))");
        add("THIS_greater", "MAX(THIS_bound,closed_most)");
        add("THIS_lesser", "MIN(THIS_bound,closed_most)");
        add("THIS_whole_most", "IF(" + holds("agreement", CellWord::agrees, w) + ",MIN(closed_most,THIS_bound+THIS_plus_minus),MAX(closed_most,THIS_bound+THIS_plus_minus))");
        add("THIS_sawn_most", "IF(" + holds("agreement", CellWord::agrees, w) + ",MIN(THIS_greater,THIS_lesser+THIS_plus_minus),THIS_greater+THIS_plus_minus)");
        add("THIS_worst", "IF(sawn_THIS_tube>0,THIS_sawn_most-sawn_THIS_tube+saw_plus_minus,THIS_whole_most)");
    }
    names.emplace_back("closes_at_worst", "MAX(inner_worst,outer_worst)");
    return names;
}

std::vector<LengthLine> stop_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<LengthLine> lines;
    const bool known = order.stops.has_value();
    lines.push_back(line_of("stops_known", name_of(FigureName::stops_known, w), yes_if("AND(ISNUMBER(closed_length),ISNUMBER(inner_length),ISNUMBER(outer_length))", w),
                            yes_or_no(known, w)));
    for (const Tube tube : both_tubes) lines.push_back(shoulder_line(order, tube, w));
    for (const Tube tube : both_tubes) lines.push_back(path_line(order, tube, w));
    for (const Tube tube : both_tubes) lines.push_back(confirms_line(order, tube, w));
    add_model(lines, order.stops, w);
    lines.push_back(line_of("guards_stop", name_of(FigureName::guards_stop, w), guards_stop_formula(order, w), guards_stop_now(order, w)));
    lines.push_back(exchanged_line(order, w));
    for (const Tube tube : both_tubes) add_stop(lines, order, tube, w);
    lines.push_back(line_of("closed_most", name_of(FigureName::closed_most, w), if_known("ROUND(closed_length+closed_plus_minus,3)", w),
                            now_in_mm(known ? std::optional(order.reading.shaft.closed.value + order.reading.closed.plus_minus) : std::nullopt)));
    for (const Tube tube : both_tubes) lines.push_back(most_line(order, tube, w));
    lines.push_back(line_of("cut_is_known", name_of(FigureName::cut_known, w),
                            yes_if("AND(" + holds("stops_known", CellWord::yes, w) + ",ISNUMBER(shortest_length)," + holds("lengths_unreadable", CellWord::no, w) + ")", w),
                            yes_or_no(known && order.fit.shortest, w)));
    return lines;
}

}  // namespace shaftcut::workbook
