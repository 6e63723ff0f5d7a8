// The Order sheet's block for the shaft as it is after the cut: four lengths measured anew give clearance, overlaps and a
// verdict. Sawn lengths are right within the saw's ±, so the clearance may fall short of the one asked by that much.
#include "checks/check_rules.hpp"
#include "work_order_book/as_cut_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int figure_column = 1, unit_column = 2, limit_column = 3, result_column = 4;

struct AsCutLine {
    std::string name, label;
    std::string known;
    std::string value, limit;  // expressions in mm
    std::string fails, warns;
    std::string sure = "TRUE";  // false where it can fail and cannot pass
};

std::string part_of_overlap(const WorkOrder& order, Limit limit)
{
    const Fraction part = order.limits.fraction(limit);
    return "ROUND(after_closed_overlap*" + std::to_string(part.numerator) + "/" + std::to_string(part.denominator) + ",3)";
}

void add_expressions(Names& names, const WorkOrder& order, const Wording& w)
{
    for (const Tube tube : both_tubes) {
        names.emplace_back(for_tube("after_THIS_length", tube), in_mm(for_tube("after_THIS_half", tube), order.units));
        names.emplace_back(for_tube("after_THIS_guard_length", tube), in_mm(for_tube("after_THIS_guard_half", tube), order.units));
    }
    names.emplace_back("after_halves_known", "AND(ISNUMBER(after_inner_half),ISNUMBER(after_outer_half)," + holds("cut_is_known", CellWord::yes, w) + ")");
    names.emplace_back("after_guards_known", "AND(ISNUMBER(after_inner_guard_half),ISNUMBER(after_outer_guard_half),after_halves_known)");
    names.emplace_back("after_closes", "MAX(after_inner_length+outer_stop,after_outer_length+inner_stop)");
    names.emplace_back("after_halves", "ROUND(after_inner_length+after_outer_length,3)");
    names.emplace_back("after_closed_overlap", "ROUND(after_halves-after_closes,3)");
    names.emplace_back("after_clearance_value", "ROUND(shortest_length-after_closes,3)");
    names.emplace_back("after_clearance_least", "ROUND(closing_clearance-saw_plus_minus,3)");
    for (const Range range : all_ranges)
        names.emplace_back(std::string("after_") + to_word(range) + "_value", std::string("ROUND(after_halves-") + to_word(range) + "_length,3)");
    names.emplace_back("after_working_limit", part_of_overlap(order, Limit::overlap_working));
    names.emplace_back("after_turning_limit", "MAX(" + part_of_overlap(order, Limit::overlap_turning) + ",least_overlap_turning)");
    names.emplace_back("after_standing_limit", "least_overlap_standing");
    names.emplace_back("after_guards_close", "MAX(after_inner_guard_length+outer_guard_shoulder,after_outer_guard_length+inner_guard_shoulder)");
    names.emplace_back("after_guard_clearance_value", "ROUND(shortest_length-after_guards_close,3)");
    for (const Tube tube : both_tubes)
        names.emplace_back(for_tube("after_setback_THIS", tube), for_tube("ROUND(after_THIS_length-after_THIS_guard_length,3)", tube));
    names.emplace_back("after_least_setback", "MIN(after_setback_inner,after_setback_outer)");
    names.emplace_back("after_greatest_setback", "MAX(after_setback_inner,after_setback_outer)");
    // A guard that is longer than its tube first: below 0.
    names.emplace_back("after_setback_value", "IF(after_least_setback<0,after_least_setback,after_greatest_setback)");
    names.emplace_back("after_guard_cover_value", "ROUND(after_inner_guard_length+after_outer_guard_length-greatest_length,3)");
    names.emplace_back("after_guard_cover_worst", "ROUND(after_guard_cover_value-inner_guard_plus_minus-outer_guard_plus_minus-(greatest_most-greatest_length),3)");
}

AsCutLine overlap_line(const WorkOrder& order, Range range, AsCutName name, const Wording& w)
{
    const std::string word = to_word(range);
    const std::string value = "after_" + word + "_value";
    const std::string limit = "after_" + word + "_limit";
    return {"after_overlap_" + word, name_of(name, w), "AND(after_halves_known,ISNUMBER(" + word + "_length))", value, limit,
            clearly_below_expression(value, limit), "FALSE", is_sure(order, range)};
}

std::vector<AsCutLine> as_cut_lines(const WorkOrder& order, const Wording& w)
{
    const auto& halves = order.reading.shaft.halves;
    std::vector<AsCutLine> lines;
    lines.push_back({"after_clearance", name_of(AsCutName::clearance, w), "after_halves_known", "after_clearance_value", "closing_clearance",
                     "OR(" + clearly_below_expression("after_clearance_value", "after_clearance_least") + ",after_clearance_value<0.01)",
                     clearly_below_expression("after_clearance_value", "closing_clearance")});
    lines.push_back(overlap_line(order, Range::working, AsCutName::overlap_working, w));
    lines.push_back(overlap_line(order, Range::turning, AsCutName::overlap_turning, w));
    lines.push_back(overlap_line(order, Range::standing, AsCutName::overlap_standing, w));
    if (halves[Tube::inner].guard_shoulder && halves[Tube::outer].guard_shoulder)
        lines.push_back({"after_guard_clearance", name_of(AsCutName::guard_clearance, w), "after_guards_known", "after_guard_clearance_value", "closing_clearance",
                         clearly_below_expression("after_guard_clearance_value", "0"), clearly_below_expression("after_guard_clearance_value", "closing_clearance")});
    lines.push_back({"after_guard_cover", name_of(AsCutName::guard_cover, w), "after_guards_known", "after_guard_cover_value", "guard_overlap",
                     clearly_below_expression("after_guard_cover_worst", "0"), clearly_below_expression("after_guard_cover_value", "guard_overlap")});
    lines.push_back({"after_guard_setback", name_of(AsCutName::guard_setback, w), "after_guards_known", "after_setback_value", "guard_setback", "FALSE",
                     "OR(" + clearly_below_expression("after_setback_value", "0") + "," + clearly_below_expression("guard_setback", "after_setback_value") + ")"});
    return lines;
}

// A half that is shorter than it was must keep the series' least tube and its lubrication hole, its guard the least that holds it.
std::string too_short(const WorkOrder& order)
{
    std::string text = "OR(FALSE";
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        const std::string shorter = clearly_below_expression(for_tube("after_THIS_length", tube), for_tube("THIS_length", tube));
        if (half.seat && half.least_tube)
            text += ",AND(" + shorter + "," + clearly_below_expression(for_tube("after_THIS_length", tube), for_tube("THIS_seat+THIS_least_tube", tube)) + ")";
        const std::string guard = for_tube("after_THIS_guard_half", tube), guard_length = for_tube("after_THIS_guard_length", tube);
        text += ",IF(AND(ISNUMBER(" + guard + "),ISNUMBER(" + for_tube("THIS_guard_length", tube) + ")),AND(" +
                clearly_below_expression(guard_length, for_tube("THIS_guard_length", tube)) + "," + clearly_below_expression(guard_length, for_tube("THIS_least_guard", tube)) + "),FALSE)";
        if (half.lubrication_hole) text += "," + clearly_below_expression(for_tube("after_THIS_length", tube), for_tube("THIS_hole", tube));
    }
    return text + ")";
}

void add_lengths(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w)
{
    for (const End end : both_ends)
        for (const bool guard : {false, true}) {
            const Tube tube = tube_on(order.shaft, end);
            sheet.put(0, guard ? guard_name(end, tube, w) : half_label(order, tube, w), style::label());
            sheet.put(figure_column, {}, style::input());
            sheet.allow_numbers(figure_column, 0, longest_input(order.units), takes_a_length(w));
            sheet.put(unit_column, std::string(unit_word(order.units)), style::label());
            sheet.put(limit_column, measured_between(guard ? Measured::guard : Measured::half, w), style::label(), 3);
            names.emplace_back(for_tube(guard ? "after_THIS_guard_half" : "after_THIS_half", tube), sheet.here(figure_column));
            sheet.end_row(17);
        }
}

std::string add_line(SheetBuilder& sheet, Names& names, const WorkOrder& order, const AsCutLine& line, const Wording& w)
{
    CellStyle figure = style::figure();
    if (order.units == Units::in) figure.numbers = "0.000";
    CellStyle result = style::result();
    result.points = 9;
    const auto if_known = [&](const std::string& then, const std::string& otherwise) {
        return CellFormula{"IF(" + line.known + "," + then + "," + text_in_formula(otherwise) + ")", otherwise};
    };
    sheet.put(0, line.label, style::label());
    sheet.put(figure_column, if_known(shown(line.value, order.units), ""), figure);
    sheet.put(unit_column, std::string(unit_word(order.units)), style::label());
    sheet.put(limit_column, if_known(shown(line.limit, order.units), ""), figure);
    const std::string unless_failed = "IF(" + line.sure + "," + word_if(line.warns, CellWord::warn, CellWord::pass, w) + "," + in_formula(CellWord::not_checked, w) + ")";
    sheet.put(result_column, if_known("IF(" + line.fails + "," + in_formula(CellWord::fail, w) + "," + unless_failed + ")", cell_word(CellWord::not_checked, w)), result, 2);
    names.emplace_back(line.name, sheet.here(figure_column));
    names.emplace_back(line.name + "_result", sheet.here(result_column));
    std::string cell = sheet.here(result_column);
    sheet.end_row();
    return cell;
}

}  // namespace

void add_shaft_as_cut(SheetBuilder& sheet, Names& names, const WorkOrder& order, const std::vector<std::string>& results, const Wording& w)
{
    sheet.put(0, as_cut_heading(w), style::section(), 6);
    sheet.end_row(18);
    add_expressions(names, order, w);
    add_lengths(sheet, names, order, w);
    const auto heads = as_cut_heads(w);
    for (int column = 0; column <= result_column; ++column) sheet.put(column, heads[static_cast<std::size_t>(column)], style::table_head(), column == result_column ? 2 : 1);
    sheet.end_row();
    std::string failed = "OR(FALSE", warned = "OR(FALSE";
    for (const AsCutLine& line : as_cut_lines(order, w)) {
        const std::string result = add_line(sheet, names, order, line, w);
        failed += "," + holds(result, CellWord::fail, w);
        warned += "," + holds(result, CellWord::warn, w);
    }
    // What lengths do not decide stays as it was before the cut.
    for (const CheckRule& rule : check_rules)
        if (!rule.follows_lengths) failed += "," + holds(results[static_cast<std::size_t>(rule.id)], CellWord::fail, w);
    sheet.put(0, as_cut_legend(w), style::small(), 6);
    sheet.end_row();
    sheet.put(0, as_cut_verdict(w), style::section());
    CellStyle verdict = style::great();
    verdict.align = CellStyle::Align::centre;
    const std::string measured = "IF(" + failed + ")," + in_formula(CellWord::refused, w) + "," + word_if(too_short(order), CellWord::refused, CellWord::fits, w) + ")";
    sheet.put(figure_column, CellFormula{"IF(after_halves_known," + measured + "," + in_formula(CellWord::measure, w) + ")",
                                         cell_word(CellWord::measure, w)}, verdict);
    const auto next = [&](AsCutNext step) { return text_in_formula(next_step(step, w)); };
    sheet.put(unit_column, CellFormula{"IF(" + holds("after_verdict", CellWord::fits, w) + ",IF(" + warned + ")," + next(AsCutNext::fits_with_warning) + "," + next(AsCutNext::fits) +
                                           "),IF(" + holds("after_verdict", CellWord::refused, w) + "," + next(AsCutNext::refused) + "," + next(AsCutNext::measure) + "))",
                                       next_step(AsCutNext::measure, w)},
              style::sentence(), 4);
    names.emplace_back("after_verdict", sheet.here(figure_column));
    sheet.end_row(32);
}

}  // namespace shaftcut::workbook
