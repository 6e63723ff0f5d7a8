// The cut as named expressions and every check's figures, in millimetres: the same steps as the program's own, rounded to
// 0.001 mm at each, so that no comparison with a limit depends on binary fractions.
//
// A program may write a named expression out wherever it is used, and refuse more than some thousand signs: so what may be
// seen while a job is refused, the checks' own figures, stands in cells, and only what may not be seen in expressions.
#include <algorithm>

#include "data/slip_limits.hpp"
#include "work_order_book/figure_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

void add_for_both(Names& names, const std::string& name, const std::string& expression)
{
    for (const Tube tube : both_tubes) names.emplace_back(for_tube(name, tube), for_tube(expression, tube));
}

// Up to the saw's step, or nothing, or at least the least cut. An excess under 0.01 mm is ignored: lengths are whole micrometres
// and steps whole halves of one, so 0.00975 lies between the greatest excess that is ignored and the least that is not.
std::string steps_for(const std::string& need) { return "ROUNDUP(MAX(0," + need + "-0.00975)/saw_step,0)"; }

std::string sawn_in(const std::string& steps) { return "IF(" + steps + "=0,0,MAX(ROUND(" + steps + "*saw_step,3),least_cut))"; }

bool has_cut_to(const WorkOrder& order, Tube tube) { return order.reading.shaft.halves[tube].cut_to.has_value(); }

// By an earlier sheet, as that allowed: what is typed must be a length that was measured.
void add_left_as_cut(Names& names, const WorkOrder& order)
{
    for (const Tube tube : both_tubes)
        if (has_cut_to(order, tube))
            names.emplace_back(for_tube("left_as_cut_THIS", tube), for_tube("IF(ISNUMBER(THIS_half),ROUND(THIS_length-THIS_cut_to-saw_plus_minus-2*THIS_plus_minus,3)<0.01,FALSE)", tube));
}

// To where the tubes that are left so come, as far as that is beyond what is wanted; any other comes down to that. Not by what the shaft closes to
// after the cut: written out that would be too long for a guard's expressions.
void add_wanted_as_cut(Names& names, const WorkOrder& order)
{
    std::string reached;
    for (const Tube tube : both_tubes)
        if (has_cut_to(order, tube)) reached += for_tube(",IF(left_as_cut_THIS,THIS_length+OTHER_stop,0)", tube);
    if (!reached.empty()) names.emplace_back("wanted_as_cut", "ROUND(MAX(wanted_closed" + reached + "),3)");
}

// The guard of such a half, which stays too unless it would stop the shaft before the tubes do.
void add_guard_left_as_cut(Names& names, const WorkOrder& order, Tube tube)
{
    if (!has_cut_to(order, tube)) return;
    names.emplace_back(for_tube("left_as_cut_THIS_guard", tube), for_tube("AND(left_as_cut_THIS,ROUND(over_THIS_guard-saw_plus_minus-2*THIS_guard_plus_minus,3)<0.01)", tube));
}

// The saw's steps of a tube, or of a guard, none where it is left as it was cut.
std::string steps_unless(const WorkOrder& order, Tube tube, const std::string& left, const std::string& need)
{
    return has_cut_to(order, tube) ? for_tube("IF(" + left + ",0," + steps_for(need) + ")", tube) : for_tube(steps_for(need), tube);
}

void add_tube_steps(Names& names, const WorkOrder& order)
{
    for (const Tube tube : both_tubes) names.emplace_back(for_tube("steps_THIS_tube", tube), steps_unless(order, tube, "left_as_cut_THIS", "need_THIS_tube"));
}

// To where a guard must come down: of a half that is left as it was cut to where the tubes stop.
std::string guard_wanted(const WorkOrder& order, Tube tube)
{
    return has_cut_to(order, tube) ? "IF(left_as_cut_THIS,wanted_as_cut,wanted_closed)" : "wanted_closed";
}

void add_guards(Names& names, const WorkOrder& order)
{
    for (const Tube tube : both_tubes) {
        const bool face_known = order.reading.shaft.halves[other(tube)].guard_shoulder.has_value();
        if (!order.reading.shaft.halves[tube].guard_used) {
            names.emplace_back(for_tube("sawn_THIS_guard", tube), "0");
            continue;
        }
        names.emplace_back(for_tube("over_THIS_guard", tube),
                           for_tube(face_known ? "ROUND(THIS_guard_length+OTHER_guard_shoulder-" + guard_wanted(order, tube) + ",3)" : "ROUND(THIS_guard_length-left_THIS_half,3)", tube));
        names.emplace_back(for_tube("need_THIS_guard", tube), for_tube("MAX(sawn_THIS_tube,over_THIS_guard)", tube));
        add_guard_left_as_cut(names, order, tube);
        names.emplace_back(for_tube("steps_THIS_guard", tube), steps_unless(order, tube, "left_as_cut_THIS_guard", "need_THIS_guard"));
        names.emplace_back(for_tube("sawn_THIS_guard", tube), for_tube("IF(has_THIS_guard," + sawn_in("steps_THIS_guard") + ",sawn_THIS_tube)", tube));
    }
    add_for_both(names, "has_THIS_guard", "ISNUMBER(THIS_guard_length)");
    add_for_both(names, "left_THIS_guard", "ROUND(THIS_guard_length-sawn_THIS_guard,3)");
    add_for_both(names, "THIS_guard_is_short", "AND(sawn_THIS_guard>0,ROUND(THIS_least_guard-left_THIS_guard,3)>=0.01)");
}

void add_guard_setback(Names& names)
{
    add_for_both(names, "setback_THIS", "ROUND(left_THIS_half-left_THIS_guard,3)");
    names.emplace_back("least_setback", "MIN(setback_inner,setback_outer)");
    names.emplace_back("greatest_setback", "MAX(setback_inner,setback_outer)");
    names.emplace_back("setback_of_both", "IF(least_setback<0,least_setback,greatest_setback)");
}

std::variant<double, std::string> now_of(std::optional<std::int64_t> micrometres)
{
    return now_in_mm(micrometres ? std::optional(Length::micrometres(*micrometres)) : std::nullopt);
}

// Collects figures that are empty where their check cannot be made.
class Figures {
public:
    explicit Figures(const WorkOrder& order) : order_(order) {}

    void add(const std::string& name, const std::string& label, const std::string& known, const std::string& expression,
             std::optional<std::int64_t> Check::*figure, CheckId id)
    {
        LengthLine line;
        line.name = name;
        line.label = label;
        line.formula = {"IF(" + known + "," + expression + ",\"\")", now_of(check_of(order_.checks, id).*figure)};
        lines_.push_back(line);
    }
    std::vector<LengthLine> take() { return std::move(lines_); }

private:
    const WorkOrder& order_;
    std::vector<LengthLine> lines_;
};

// Of all longest lengths that are known, whether surely or only as at least so much, and what the worst of them can be.
void add_greatest(std::vector<LengthLine>& lines, const WorkOrder& order, const Wording& w)
{
    std::optional<Length> greatest, worst;
    std::string most;
    for (const Range range : all_ranges) {
        const std::string word = to_word(range);
        most += ",IF(ISNUMBER(" + word + "_length)," + word + "_length+" + word + "_plus_minus,-1000000)";
        const auto longest = order.fit.shortest ? known_or_at_least(order, range) : std::nullopt;
        if (!longest) continue;
        greatest = std::max(greatest, std::optional(longest->value));
        worst = std::max(worst, std::optional(longest->value + longest->plus_minus));
    }
    const std::string any = "OR(ISNUMBER(working_length),ISNUMBER(turning_length),ISNUMBER(standing_length))";
    lines.push_back({"greatest_length", name_of(FigureName::greatest_longest, w), {"IF(" + any + ",MAX(working_length,turning_length,standing_length),\"\")", now_in_mm(greatest)}, "", {}});
    lines.push_back({"greatest_most", name_of(FigureName::greatest_longest_at_most, w), {"IF(" + any + ",ROUND(MAX(" + most.substr(1) + "),3),\"\")", now_in_mm(worst)}, "", {}});
}

bool guard_is_short(const WorkOrder& order)
{
    const Shaft& shaft = order.reading.shaft;
    const auto plan = plan_cut(shaft, order.stops, order.fit.shortest, order.limits.length(Limit::closing_clearance), order.saw);
    return plan && std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        const Length least = shaft.halves[tube].guard_seat.value_or(Length()) + least_free_guard;
        return plan->guard_half[tube] && plan->cuts_guard(tube) && clearly_below(*plan->guard_half[tube], least);
    });
}

// In a cell of its own, so that no formula grows too long.
LengthLine short_guard_line(const WorkOrder& order, const Wording& w)
{
    std::string any = "FALSE";
    for (const Tube tube : both_tubes) any += for_tube(",IF(has_THIS_guard,THIS_guard_is_short,FALSE)", tube);
    return {"guard_cut_away", name_of(FigureName::guard_cut_away, w), {yes_if(holds("cut_is_known", CellWord::yes, w), "OR(" + any + ")", w), yes_or_no(guard_is_short(order), w)}, "", {}};
}

void add_overlap(Figures& figures, const WorkOrder& order, Range range, const Wording& w)
{
    const std::string word = to_word(range);
    const CheckId id = overlap_check_id(range);
    const std::string known = "AND(" + holds("cut_is_known", CellWord::yes, w) + ",ISNUMBER(" + word + "_length))";
    const std::string limit = least_overlap_expression(order, range, "overlap_left_closed");
    const std::string name = word + "_overlap";
    figures.add(name + "_value", overlap_name(range, OverlapFigure::value, w), known, "ROUND(halves_left-" + word + "_length,3)", &Check::value, id);
    figures.add(name + "_worst", overlap_name(range, OverlapFigure::worst, w), known, "ROUND(" + name + "_value-halves_doubt-" + word + "_plus_minus,3)", &Check::worst, id);
    figures.add(name + "_limit", overlap_name(range, OverlapFigure::limit, w), known, limit, &Check::limit, id);
}

// Of the tubes that are sawn, the least of what is known.
std::string least_spare(const WorkOrder& order)
{
    const auto known = [&](Tube tube) { return order.reading.shaft.halves[tube].seat && order.reading.shaft.halves[tube].least_tube; };
    const auto spare = [&](Tube tube, const std::string& otherwise) {
        return known(tube) ? for_tube("IF(sawn_THIS_tube>0,spare_THIS_tube,", tube) + otherwise + ")" : otherwise;
    };
    const std::string one = spare(Tube::inner, spare(Tube::outer, "\"\""));
    if (!known(Tube::inner) || !known(Tube::outer)) return one;
    return "IF(AND(sawn_inner_tube>0,sawn_outer_tube>0),MIN(spare_inner_tube,spare_outer_tube)," + one + ")";
}

void add_guard_figures(Figures& figures, const WorkOrder& order, const Wording& w)
{
    const auto& halves = order.reading.shaft.halves;
    const std::string both = "AND(" + holds("cut_is_known", CellWord::yes, w) + ",has_inner_guard,has_outer_guard)";
    if (halves[Tube::inner].guard_shoulder && halves[Tube::outer].guard_shoulder)
        figures.add("guard_clearance_value", name_of(FigureName::guard_clearance, w), both, "ROUND(shortest_length-guards_close_after,3)", &Check::value, CheckId::guard_clearance);
    figures.add("guard_cover_value", name_of(FigureName::guard_cover, w), both, "ROUND(left_inner_guard+left_outer_guard-greatest_length,3)", &Check::value, CheckId::guard_cover);
    figures.add("guard_cover_worst", name_of(FigureName::guard_cover_worst, w), both, "ROUND(guard_cover_value-guards_doubt-(greatest_most-greatest_length),3)", &Check::worst, CheckId::guard_cover);
    if (lacks_guard(order)) return;
    figures.add("setback_value", name_of(FigureName::guard_setback, w), "AND(" + holds("cut_is_known", CellWord::yes, w) + ",OR(has_inner_guard,has_outer_guard))",
                "IF(has_inner_guard,IF(has_outer_guard,setback_of_both,setback_inner),setback_outer)", &Check::value, CheckId::guard_setback);
}

// "ROUND(x*1/3,3)": the fraction as two whole numbers, so that it is rounded once.
std::string part_of(const std::string& overlap, Fraction part)
{
    return "ROUND(" + overlap + "*" + std::to_string(part.numerator) + "/" + std::to_string(part.denominator) + ",3)";
}

}  // namespace

std::string sawn_expression(const std::string& need) { return sawn_in(steps_for(need)); }

std::string least_overlap_expression(const WorkOrder& order, Range range, const std::string& closed_overlap)
{
    switch (range) {
    case Range::working: return part_of(closed_overlap, order.limits.fraction(Limit::overlap_working));
    case Range::turning: return "MAX(" + part_of(closed_overlap, order.limits.fraction(Limit::overlap_turning)) + ",least_overlap_turning)";
    case Range::standing: break;
    }
    return "least_overlap_standing";
}

Names cut_expressions(const WorkOrder& order)
{
    Names names;
    names.emplace_back("wanted_closed", "ROUND(shortest_length-closing_clearance,3)");
    add_for_both(names, "need_THIS_tube", "ROUND(THIS_length+OTHER_stop-wanted_closed,3)");
    add_left_as_cut(names, order);
    add_wanted_as_cut(names, order);
    add_tube_steps(names, order);
    add_for_both(names, "sawn_THIS_tube", sawn_in("steps_THIS_tube"));
    add_for_both(names, "left_THIS_half", "ROUND(THIS_length-sawn_THIS_tube,3)");
    add_for_both(names, "closes_THIS", "ROUND(left_THIS_half+OTHER_stop,3)");
    names.emplace_back("closes_after", "MAX(closes_inner,closes_outer)");
    add_guards(names, order);
    return names;
}

Names check_expressions(const WorkOrder& order)
{
    Names names;
    names.emplace_back("halves_left", "ROUND(left_inner_half+left_outer_half,3)");
    names.emplace_back("overlap_left_closed", "ROUND(halves_left-closes_after,3)");
    names.emplace_back("halves_doubt", "inner_plus_minus+outer_plus_minus+IF(sawn_inner_tube>0,saw_plus_minus,0)+IF(sawn_outer_tube>0,saw_plus_minus,0)");
    add_for_both(names, "spare_THIS_tube", "ROUND(left_THIS_half-THIS_seat-THIS_least_tube,3)");
    names.emplace_back("guards_saw_doubt", "IF(sawn_inner_guard>0,saw_plus_minus,0)+IF(sawn_outer_guard>0,saw_plus_minus,0)");
    names.emplace_back("guards_doubt", "inner_guard_plus_minus+outer_guard_plus_minus+guards_saw_doubt");
    const auto& halves = order.reading.shaft.halves;
    if (halves[Tube::inner].guard_shoulder && halves[Tube::outer].guard_shoulder)
        names.emplace_back("guards_close_after", "MAX(left_inner_guard+outer_guard_shoulder,left_outer_guard+inner_guard_shoulder)");
    add_guard_setback(names);
    return names;
}

std::vector<LengthLine> figure_lines(const WorkOrder& order, const Wording& w)
{
    const std::string known = holds("cut_is_known", CellWord::yes, w);
    Figures figures(order);
    figures.add("clearance_value", name_of(FigureName::clearance, w), known, "ROUND(shortest_length-closes_after,3)", &Check::value, CheckId::closing_clearance);
    figures.add("clearance_worst", name_of(FigureName::clearance_worst, w), known,
                "ROUND(shortest_length-shortest_plus_minus-closes_at_worst,3)", &Check::worst, CheckId::closing_clearance);
    for (const Range range : all_ranges) add_overlap(figures, order, range, w);
    if (const auto live = live_check(order, CheckId::tube_left, w); !live->value.empty())
        figures.add("tube_left_value", name_of(FigureName::tube_left, w), live->known,
                    least_spare(order),
                    &Check::value, CheckId::tube_left);
    add_guard_figures(figures, order, w);
    std::vector<LengthLine> lines = figures.take();
    add_greatest(lines, order, w);
    lines.push_back(short_guard_line(order, w));
    return lines;
}

}  // namespace shaftcut::workbook
