// What the readings after the cut make of the shaft, in cells of the Basis sheet: the rule of trade/order/after_cut.hpp in formulas, for
// halves and guards as they are read then; no closed length is asked for again. Empty while nothing was read, or the job is refused.
#include "work_order_book/as_cut_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

std::string yes(const std::string& name, const Wording& w) { return holds(name, CellWord::yes, w); }
std::string no(const std::string& name, const Wording& w) { return holds(name, CellWord::no, w); }

// Collects lines that hold nothing as the workbook is issued.
class Lines {
public:
    explicit Lines(const Wording& w) : w_(w) {}

    void add(const std::string& name, const std::string& label, const std::string& expression) { lines_.push_back({name, label, formula(expression), "", {}}); }
    void add(const std::string& name, const std::string& label, const std::string& expression, const std::string& plus_minus)
    {
        lines_.push_back({name, label, formula(expression), name + "_plus_minus", formula(plus_minus)});
    }
    void add(Tube tube, const char* name, AsCutFigure figure, const std::string& expression) { add(for_tube(name, tube), name_of(figure, tube, w_), for_tube(expression, tube)); }
    void add(Tube tube, const char* name, AsCutFigure figure, const std::string& expression, const std::string& plus_minus)
    {
        add(for_tube(name, tube), name_of(figure, tube, w_), for_tube(expression, tube), for_tube(plus_minus, tube));
    }
    void first(LengthLine line) { lines_.push_back(std::move(line)); }
    std::vector<LengthLine> take() { return std::move(lines_); }

private:
    CellFormula formula(const std::string& expression) const { return {"IF(" + yes("after_known", w_) + "," + expression + ",\"\")", std::string()}; }

    const Wording& w_;
    std::vector<LengthLine> lines_;
};

LengthLine known_line(const Wording& w)
{
    const std::string read = "COUNT(after_inner_half,after_outer_half,after_inner_guard_half,after_outer_guard_half)>0";
    const std::string known = "AND(" + yes("cut_is_known", w) + "," + "NOT(" + holds("verdict", CellWord::refused, w) + ")," + read + ")";
    return {"after_known", name_of(AsCutFact::known, w), {yes_if(known, w), yes_or_no(false, w)}, "", {}};
}

// What a reading lies outside of is what is kept ± what it may be off ± the tape.
void add_readings(Lines& lines, const WorkOrder& order, Tube tube)
{
    const std::string doubt = "ROUND(THIS_plus_minus+IF(sawn_THIS_tube>0,saw_plus_minus,0),3)";
    lines.add(tube, "after_THIS_kept", AsCutFigure::kept, "left_THIS_half", doubt);
    lines.add(tube, "after_THIS_length", AsCutFigure::length, "IF(ISNUMBER(after_THIS_half)," + in_mm("after_THIS_half", order.units) + ",left_THIS_half)",
              "IF(ISNUMBER(after_THIS_half)," + literal(order.measuring_plus_minus) + ",after_THIS_kept_plus_minus)");
}

void add_sawn_again(Lines& lines, Tube tube, const Wording& w)
{
    const std::string path = "ROUND(after_THIS_length+OTHER_stop-wanted_closed,3)";
    const std::string outside = "ROUND(after_THIS_length-after_THIS_kept-after_THIS_kept_plus_minus-after_THIS_length_plus_minus,3)>=0.01";
    lines.add(tube, "after_THIS_need", AsCutFigure::need, "IF(AND(" + outside + "," + path + ">=0.01),MAX(" + path + ",ROUND(after_THIS_length-after_THIS_kept,3)),0)");
    lines.add(tube, "after_THIS_again", AsCutFigure::again, sawn_expression("after_THIS_need"));
    lines.add(tube, "after_THIS_within", AsCutFigure::within,
              yes_if("ROUND(ABS(after_THIS_length-after_THIS_again-after_THIS_kept)-after_THIS_kept_plus_minus-after_THIS_length_plus_minus,3)<0.01", w));
}

// While both tubes are within what the sheet allows, its own figures stand.
void add_judged(Lines& lines, Tube tube, const Wording& w)
{
    lines.add(tube, "after_THIS_judged", AsCutFigure::judged,
              "IF(AND(" + yes("after_inner_within", w) + "," + yes("after_outer_within", w) + "),after_THIS_kept,ROUND(after_THIS_length-after_THIS_again,3))");
    const std::string by_closed = "closed_length+closed_plus_minus-THIS_length+THIS_plus_minus", by_itself = "OTHER_shoulder+OTHER_shoulder_plus_minus";
    const std::string most = "IF(ISNUMBER(OTHER_shoulder),IF(" + holds("agreement", CellWord::agrees, w) + ",MIN(" + by_closed + "," + by_itself + "),MAX(" + by_closed + "," + by_itself + "))," + by_closed + ")";
    lines.add(tube, "after_THIS_at_worst", AsCutFigure::at_worst,
              "ROUND(after_THIS_length+MAX(OTHER_stop," + most + ")+after_THIS_length_plus_minus-after_THIS_again+IF(after_THIS_again>0,saw_plus_minus,0),3)");
}

void add_clearance(Lines& lines, const Wording& w)
{
    lines.add("after_closes", name_of(AsCutFact::closes, w), "ROUND(MAX(after_inner_judged+outer_stop,after_outer_judged+inner_stop),3)");
    lines.add("after_stops_early", name_of(AsCutFact::stops_early, w),
              yes_if("AND(OR(" + no("after_inner_within", w) + "," + no("after_outer_within", w) + "),ROUND(shortest_length-shortest_plus_minus-MAX(after_inner_at_worst,after_outer_at_worst),3)<0.01)", w));
    lines.add("after_closed_overlap", name_of(AsCutFact::closed_overlap, w), "ROUND(after_inner_judged+after_outer_judged-after_closes,3)");
}

// The greatest that an overlap lacks is what the tubes to blame are too short by.
void add_overlaps(Lines& lines, const WorkOrder& order, const Wording& w)
{
    std::string greatest = "0";
    for (const Range range : all_ranges) {
        const std::string word = to_word(range);
        const auto if_read = [&](const std::string& expression) { return "IF(ISNUMBER(" + word + "_length)," + expression + ",\"\")"; };
        lines.add("after_" + word + "_value", overlap_as_cut(range, w), if_read("ROUND(after_inner_judged+after_outer_judged-" + word + "_length,3)"));
        lines.add("after_" + word + "_limit", least_overlap_as_cut(range, w), if_read(least_overlap_expression(order, range, "after_closed_overlap")));
        greatest += ",IF(ISNUMBER(" + word + "_length),after_" + word + "_limit-after_" + word + "_value,0)";
    }
    lines.add("after_lacks", name_of(AsCutFact::overlap_lacks, w), "ROUND(MAX(" + greatest + "),3)");
}

// A tube that lost something must keep its least, and its hole, or may lose nothing.
struct OfTube {
    std::string too_little = "FALSE", forbidden = "FALSE";
};

OfTube of_tube(const WorkOrder& order, Tube tube, const Wording& w)
{
    const Half& half = order.reading.shaft.halves[tube];
    const std::string within = yes("after_THIS_within", w), left = "IF(" + within + ",after_THIS_kept,ROUND(after_THIS_length-after_THIS_again,3))";
    const std::string sawn = "IF(" + within + ",sawn_THIS_tube>0,THIS_length>after_THIS_length-after_THIS_again)";
    OfTube of;
    if (half.seat && half.least_tube) of.too_little = "AND(" + sawn + ",ROUND(THIS_seat+THIS_least_tube-" + left + ",3)>=0.01)";
    if (half.lubrication_hole) of.forbidden = "ROUND(THIS_hole-" + left + ",3)>=0.01";
    if (half.shortening_forbidden) of.forbidden = "OR(" + sawn + "," + of.forbidden + ")";
    return {for_tube(of.too_little, tube), for_tube(of.forbidden, tube)};
}

void add_own_shortfalls(Lines& lines, const WorkOrder& order, const Wording& w)
{
    const OfTube inner = of_tube(order, Tube::inner, w), outer = of_tube(order, Tube::outer, w);
    lines.add("after_tube_too_little", name_of(AsCutFact::tube_too_little, w), yes_if("OR(" + inner.too_little + "," + outer.too_little + ")", w));
    lines.add("after_tube_forbidden", name_of(AsCutFact::tube_forbidden, w), yes_if("OR(" + inner.forbidden + "," + outer.forbidden + ")", w));
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        std::string most = "0";
        if (half.seat && half.least_tube) most += ",IF(" + yes("after_tube_too_little", w) + ",THIS_seat+THIS_least_tube-after_THIS_judged,0)";
        if (half.shortening_forbidden) most += ",IF(" + yes("after_tube_forbidden", w) + ",THIS_length-after_THIS_judged,0)";
        if (half.lubrication_hole) most += ",IF(" + yes("after_tube_forbidden", w) + ",THIS_hole-after_THIS_judged,0)";
        const std::string untouched = "OR(ROUND(THIS_length-after_THIS_judged,3)<0.01,AND(" + yes("after_THIS_within", w) + ",sawn_THIS_tube=0))";
        lines.add(tube, "after_THIS_own", AsCutFigure::own_lack, "IF(" + untouched + ",0,ROUND(MAX(" + most + "),3))");
    }
}

void add_shortfalls(Lines& lines, Tube tube, const Wording& w)
{
    const auto below = [&](Tube one, bool outside) {
        return for_tube("ROUND(after_THIS_kept" + std::string(outside ? "-after_THIS_kept_plus_minus-after_THIS_length_plus_minus" : "") + "-after_THIS_judged,3)>=0.01", one);
    };
    const auto of = [&](bool outside) { return "OR(" + below(tube, outside) + "," + below(other(tube), outside) + ")"; };
    const std::string blamed = "IF(" + of(true) + "," + below(tube, true) + ",IF(" + of(false) + "," + below(tube, false) + ",TRUE))";
    lines.add(tube, "after_THIS_blamed", AsCutFigure::blamed, yes_if(blamed, w));
    lines.add(tube, "after_THIS_short", AsCutFigure::short_by, "MAX(0,after_THIS_own,IF(AND(" + yes("after_THIS_blamed", w) + ",after_lacks>=0.01),after_lacks,0))");
}

// Whether the tubes may be each other's readings; nothing is sawn on that.
std::string exchanged(Tube tube)
{
    return for_tube("AND(ROUND(ABS(after_THIS_length-after_THIS_kept)-after_THIS_kept_plus_minus-after_THIS_length_plus_minus,3)>=0.01,"
                    "ROUND(ABS(after_THIS_length-after_OTHER_kept)-after_OTHER_kept_plus_minus-after_THIS_length_plus_minus,3)<0.01)", tube);
}

void add_guard_readings(Lines& lines, const WorkOrder& order, Tube tube)
{
    const auto if_kept = [](const std::string& expression) { return "IF(has_THIS_guard," + expression + ",\"\")"; };
    lines.add(tube, "after_THIS_guard_kept", AsCutFigure::guard_kept, if_kept("left_THIS_guard"), if_kept("ROUND(THIS_guard_plus_minus+IF(sawn_THIS_guard>0,saw_plus_minus,0),3)"));
    lines.add(tube, "after_THIS_guard_length", AsCutFigure::guard_length, "IF(ISNUMBER(after_THIS_guard_half)," + in_mm("after_THIS_guard_half", order.units) + ",after_THIS_guard_kept)",
              "IF(ISNUMBER(after_THIS_guard_half)," + literal(order.measuring_plus_minus) + ",after_THIS_guard_kept_plus_minus)");
}

// A guard that was not measured before is to be no longer than its tube.
void add_guard_sawn_again(Lines& lines, const WorkOrder& order, Tube tube, const Wording& w)
{
    const std::string doubt = "after_THIS_guard_length_plus_minus";
    lines.add(tube, "after_THIS_guard_most", AsCutFigure::guard_most,
              "IF(ISNUMBER(after_THIS_guard_length),IF(has_THIS_guard,after_THIS_guard_kept+after_THIS_guard_kept_plus_minus+" + doubt +
                  ",after_THIS_length+after_THIS_length_plus_minus+after_THIS_kept_plus_minus+saw_plus_minus+" + doubt + "),\"\")");
    std::string over = "ROUND(after_THIS_guard_length-after_THIS_length+after_THIS_again,3)";
    if (order.reading.shaft.halves[other(tube)].guard_shoulder) over = "MAX(" + over + ",ROUND(after_THIS_guard_length+OTHER_guard_shoulder-wanted_closed,3))";
    const std::string need = "IF(has_THIS_guard,IF(" + over + ">=0.01,MAX(" + over + ",ROUND(after_THIS_guard_length-after_THIS_guard_kept,3)),0)," + over + ")";
    lines.add(tube, "after_THIS_guard_need", AsCutFigure::guard_need, "IF(ISNUMBER(after_THIS_guard_length),IF(ROUND(after_THIS_guard_length-after_THIS_guard_most,3)>=0.01," + need + ",0),0)");
    lines.add(tube, "after_THIS_guard_again", AsCutFigure::guard_again, sawn_expression("after_THIS_guard_need"));
    lines.add(tube, "after_THIS_guard_within", AsCutFigure::guard_within,
              yes_if("has_THIS_guard", "ROUND(ABS(after_THIS_guard_length-after_THIS_guard_again-after_THIS_guard_kept)-after_THIS_guard_kept_plus_minus-" + doubt + ",3)<0.01", w));
}

void add_guard_judged(Lines& lines, Tube tube, const Wording& w)
{
    const std::string as_kept = "AND(has_THIS_guard," + yes("after_guards_within", w) + ")";
    lines.add(tube, "after_THIS_guard_judged", AsCutFigure::guard_judged,
              "IF(ISNUMBER(after_THIS_guard_length),IF(" + as_kept + ",after_THIS_guard_kept,ROUND(after_THIS_guard_length-after_THIS_guard_again,3)),\"\")",
              "IF(ISNUMBER(after_THIS_guard_length),IF(" + as_kept + ",THIS_guard_plus_minus,after_THIS_guard_length_plus_minus),0)");
    lines.add(tube, "after_THIS_guard_sawn", AsCutFigure::guard_sawn,
              yes_if("IF(AND(has_THIS_guard," + no("after_guards_within", w) + "),THIS_guard_length>after_THIS_guard_judged,sawn_THIS_guard>0)", w));
}

std::string all_guards_within(const WorkOrder& order, const Wording& w)
{
    std::string all = "AND(TRUE";
    for (const Tube tube : both_tubes)
        if (order.reading.shaft.halves[tube].guard_used) all += for_tube(",OR(has_THIS_guard=FALSE," + yes("after_THIS_guard_within", w) + ")", tube);
    return yes_if(all + ")", w);
}

void add_guard_cover(Lines& lines, const WorkOrder& order, const Wording& w)
{
    std::string worst = "\"\"", stops = "FALSE";
    if (!lacks_guard(order)) {
        const std::string sawn = "(IF(" + yes("after_inner_guard_sawn", w) + ",saw_plus_minus,0)+IF(" + yes("after_outer_guard_sawn", w) + ",saw_plus_minus,0))";
        worst = "IF(AND(ISNUMBER(after_inner_guard_judged),ISNUMBER(after_outer_guard_judged),ISNUMBER(greatest_length)),"
                "ROUND(after_inner_guard_judged+after_outer_guard_judged-greatest_most-after_inner_guard_judged_plus_minus-after_outer_guard_judged_plus_minus-" + sawn + ",3),\"\")";
        if (order.reading.shaft.halves[Tube::inner].guard_shoulder && order.reading.shaft.halves[Tube::outer].guard_shoulder)
            stops = "IF(AND(ISNUMBER(after_inner_guard_judged),ISNUMBER(after_outer_guard_judged)),"
                    "ROUND(MAX(after_inner_guard_judged+outer_guard_shoulder,after_outer_guard_judged+inner_guard_shoulder)-shortest_length,3)>=0.01,FALSE)";
    }
    lines.add("after_guard_cover_worst", name_of(AsCutFact::guard_cover_worst, w), worst);
    lines.add("after_guards_stop", name_of(AsCutFact::guards_stop, w), yes_if(stops, w));
}

void add_guard_shortfall(Lines& lines, const WorkOrder& order, Tube tube, const Wording& w)
{
    const bool other_used = order.reading.shaft.halves[other(tube)].guard_used;
    const std::string blamed = "OR(" + no("after_THIS_guard_within", w) + "," + (other_used ? yes("after_OTHER_guard_within", w) : "FALSE") + ")";
    lines.add(tube, "after_THIS_guard_short", AsCutFigure::guard_short_by,
              "ROUND(MAX(0,IF(AND(ISNUMBER(after_THIS_guard_length)," + yes("after_THIS_guard_sawn", w) + "),THIS_least_guard-after_THIS_guard_judged,0),"
              "IF(ISNUMBER(after_guard_cover_worst),IF(AND(after_guard_cover_worst<=-0.01," + blamed + "),-after_guard_cover_worst,0),0)),3)");
}

void add_guards(Lines& lines, const WorkOrder& order, const Wording& w)
{
    std::vector<Tube> used;
    for (const Tube tube : both_tubes)
        if (order.reading.shaft.halves[tube].guard_used) used.push_back(tube);
    for (const Tube tube : used) add_guard_readings(lines, order, tube);
    for (const Tube tube : used) add_guard_sawn_again(lines, order, tube, w);
    lines.add("after_guards_within", name_of(AsCutFact::guards_within, w), all_guards_within(order, w));
    for (const Tube tube : used) add_guard_judged(lines, tube, w);
    add_guard_cover(lines, order, w);
    for (const Tube tube : used) add_guard_shortfall(lines, order, tube, w);
}

}  // namespace

std::vector<LengthLine> as_cut_lines(const WorkOrder& order, const Wording& w)
{
    Lines lines(w);
    lines.first(known_line(w));
    for (const Tube tube : both_tubes) add_readings(lines, order, tube);
    for (const Tube tube : both_tubes) add_sawn_again(lines, tube, w);
    for (const Tube tube : both_tubes) add_judged(lines, tube, w);
    add_clearance(lines, w);
    add_overlaps(lines, order, w);
    add_own_shortfalls(lines, order, w);
    for (const Tube tube : both_tubes) add_shortfalls(lines, tube, w);
    lines.add("after_exchanged", name_of(AsCutFact::exchanged, w), yes_if("AND(" + exchanged(Tube::inner) + "," + exchanged(Tube::outer) + ")", w));
    add_guards(lines, order, w);
    return lines.take();
}

}  // namespace shaftcut::workbook
