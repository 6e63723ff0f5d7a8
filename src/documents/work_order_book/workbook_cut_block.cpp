// The Order sheet's inputs, the cut, and the lengths after it.
#include <cmath>

#include "work_order_book/cut_block_words.hpp"
#include "work_order_book/input_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int figure_column = 1, unit_column = 2, tolerance_column = 3, second_column = 4, words_column = 5, mm_column = 6, second_mm_column = 7;

bool inches(const WorkOrder& order) { return order.units == Units::in; }

// Read at the saw from the printed sheet: capitals of at least 5 mm for a cut and 3.5 mm for other lengths, even where another font
// stands in for the workbook's and widens its columns, so that the sheet is printed smaller. In inches it is wider still.
CellStyle of_a_cut(CellStyle style, const WorkOrder& order)
{
    style.points = inches(order) ? 34.5 : 28;
    return style;
}

CellStyle large(CellStyle style, const WorkOrder& order)
{
    style.points = inches(order) ? 24.2 : 19.5;
    return style;
}

// A tolerance, which nobody saws by, has a narrow column.
CellStyle of_a_tolerance()
{
    CellStyle style = style::figure();
    style.points = 13;
    return style;
}

void add_head(SheetBuilder& sheet, const WorkOrder& order, const std::vector<std::string>& heads)
{
    for (std::size_t i = 0; i < heads.size(); ++i)
        if (static_cast<int>(i) < mm_column || inches(order)) sheet.put(static_cast<int>(i), heads[i], style::table_head());
    sheet.end_row();
}

CellStyle fractions(CellStyle style, const WorkOrder& order)
{
    if (inches(order)) style.numbers = fraction_format;
    return style;
}

CellStyle decimals(CellStyle style, const WorkOrder& order)
{
    if (inches(order)) style.numbers = "0.000";
    return style;
}

std::variant<double, std::string> now_shown(std::optional<Length> length, Units units)
{
    if (!length) return std::string();
    return units == Units::mm ? length->mm() : length->mm() / 25.4;
}

std::variant<double, std::string> now_in_sixteenths(std::optional<Length> length, Toward toward)
{
    if (!length) return std::string();
    return sixteenths(*length, toward);
}

// One tube of the cut: what comes off it, what is kept.
struct TubeLine {
    std::string cut_name, keep_name;
    std::string cut, keep, keep_if;  // expressions in mm; what is kept is known if
    bool used = true;                // false: a guard that is not used again is neither cut nor kept
    std::optional<Length> cut_now, keep_now;
};

TubeLine tube_line(const WorkOrder& order, Tube tube, bool guard)
{
    TubeLine line;
    line.cut_name = for_tube(guard ? "cut_THIS_guard" : "cut_THIS_tube", tube);
    line.keep_name = for_tube(guard ? "keep_THIS_guard_half" : "keep_THIS_half", tube);
    line.cut = for_tube(guard ? "sawn_THIS_guard" : "sawn_THIS_tube", tube);
    line.keep = for_tube(guard ? "left_THIS_guard" : "left_THIS_half", tube);
    line.keep_if = for_tube(guard ? "has_THIS_guard" : "TRUE", tube);
    line.used = !guard || order.reading.shaft.halves[tube].guard_used;
    if (!order.cut) return line;
    const CutPlan& plan = order.cut->plan;
    line.cut_now = guard ? plan.guard_cut[tube] : std::optional(plan.cut[tube]);
    line.keep_now = guard ? plan.guard_half[tube] : std::optional(plan.half[tube]);
    return line;
}

CellFormula how_it_is_sawn(const WorkOrder& order, Tube tube, bool guard, const Wording& w)
{
    if (guard && !order.reading.shaft.halves[tube].guard_used) return {"", how_to_saw(HowToSaw::guard_not_used, w)};
    const auto text = [&](HowToSaw how) { return text_in_formula(how_to_saw(how, w)); };
    const HowToSaw measured = guard ? HowToSaw::guard : HowToSaw::tube;
    const std::string how = guard ? for_tube("IF(has_THIS_guard,", tube) + text(measured) + "," + text(HowToSaw::guard_unmeasured) + ")" : text(measured);
    const bool known = !guard || order.reading.shaft.halves[tube].guard;
    const HowToSaw now = order.verdict == Verdict::refused ? HowToSaw::not_at_all : known ? measured : HowToSaw::guard_unmeasured;
    return {"IF(" + holds("verdict", CellWord::refused, w) + "," + text(HowToSaw::not_at_all) + "," + how + ")", how_to_saw(now, w)};
}

void add_tube(SheetBuilder& sheet, Names& names, const WorkOrder& order, Tube tube, bool guard, const Wording& w)
{
    const TubeLine line = tube_line(order, tube, guard);
    const auto keep_if = [&](const std::string& expression) { return "IF(" + line.keep_if + "," + expression + ",\"\")"; };
    const auto put = [&](int column, const std::string& expression, std::variant<double, std::string> now, const CellStyle& style) {
        sheet.put(column, unless_refused(order, line.used ? expression : "\"\"", std::move(now), w), style);
    };
    CellStyle kept = large(style::figure(), order);
    kept.bold = true;
    sheet.put(0, piece_name({order.reading.shaft.halves[tube].end, tube, guard}, w), style::label());
    sheet.put(unit_column, std::string(unit_word(order.units)), style::label());
    sheet.put(tolerance_column, in_units(order.saw.plus_minus, order.units), decimals(of_a_tolerance(), order));
    if (inches(order)) {
        put(figure_column, sixteenths_expression(line.cut, Toward::nearest), now_in_sixteenths(line.cut_now, Toward::nearest), fractions(of_a_cut(style::great(), order), order));
        put(second_column, keep_if(sixteenths_expression(line.keep, Toward::down)), now_in_sixteenths(line.keep_now, Toward::down), fractions(kept, order));
        put(mm_column, line.cut, now_in_mm(line.cut_now), style::figure());
        put(second_mm_column, keep_if(line.keep), now_in_mm(line.keep_now), style::figure());
    } else {
        put(figure_column, line.cut, now_in_mm(line.cut_now), of_a_cut(style::great(), order));
        put(second_column, keep_if(line.keep), now_in_mm(line.keep_now), kept);
    }
    sheet.put(words_column, content_of(how_it_is_sawn(order, tube, guard, w)), style::label());
    names.emplace_back(line.cut_name, sheet.here(figure_column));
    names.emplace_back(line.keep_name, sheet.here(second_column));
    sheet.end_row(20);
}

struct AfterLine {
    const char* name;
    std::string label;
    std::string expression;  // in mm; empty text where not known
    std::string known;
    std::optional<Length> now;
    std::string words;
    bool shown_if_refused = false;
};

void add_after(SheetBuilder& sheet, Names& names, const WorkOrder& order, const AfterLine& line, const Wording& w)
{
    const auto put = [&](int column, const std::string& expression, std::variant<double, std::string> now, const CellStyle& style) {
        const std::string guarded = "IF(" + line.known + "," + expression + ",\"\")";
        sheet.put(column, line.shown_if_refused ? CellFormula{guarded, std::move(now)} : unless_refused(order, guarded, std::move(now), w), style);
    };
    sheet.put(0, line.label, style::label());
    put(figure_column, shown(line.expression, order.units), now_shown(line.now, order.units), decimals(large(style::figure(), order), order));
    sheet.put(unit_column, std::string(unit_word(order.units)), style::label());
    sheet.put(tolerance_column, line.words, style::label(), 3);
    if (inches(order)) put(mm_column, line.expression, now_in_mm(line.now), style::figure());
    names.emplace_back(line.name, sheet.here(figure_column));
    sheet.end_row();
}

std::vector<AfterLine> after_lines(const WorkOrder& order, const Wording& w)
{
    const Length beyond = order.reading.closed.value - order.reading.shaft.closed.value;
    const bool cut = order.cut.has_value();
    const auto overlap = [&](Range range) { return cut ? order.cut->overlap.longest[range] : std::nullopt; };
    const auto& clearance = check_of(order.checks, CheckId::closing_clearance).value;
    std::vector<AfterLine> lines;
    lines.push_back({"closed_after", name_of(AfterName::closed, w), "closes_after", "TRUE", cut ? std::optional(order.cut->plan.closed) : std::nullopt,
                     remark(AfterRemark::inner_crosses, w)});
    if (beyond != Length())
        lines.push_back({"closed_after_at_reference", name_of(AfterName::closed, w), "ROUND(closes_after+" + literal(beyond) + ",3)", "TRUE",
                         cut ? std::optional(order.cut->closed_at[order.reading.reference]) : std::nullopt, remark(AfterRemark::outer_cross, w)});
    lines.push_back({"clearance", name_of(AfterName::clearance, w), "clearance_value", holds("cut_is_known", CellWord::yes, w),
                     clearance ? std::optional(Length::micrometres(*clearance)) : std::nullopt, remark(AfterRemark::clearance, w), true});
    lines.push_back({"overlap_closed_before", name_of(AfterName::overlap_closed_before, w), "ROUND(inner_length+outer_length-closed_length,3)", holds("stops_known", CellWord::yes, w),
                     order.overlap_closed_before, remark(AfterRemark::overlap_closed_before, w), true});
    lines.push_back({"overlap_closed_after", name_of(AfterName::overlap_closed, w), "overlap_left_closed", "TRUE", cut ? std::optional(order.cut->overlap.closed) : std::nullopt,
                     remark(AfterRemark::overlap_closed, w)});
    lines.push_back({"overlap_shortest", name_of(AfterName::overlap_shortest, w), "ROUND(halves_left-shortest_length,3)", "TRUE",
                     cut ? order.cut->overlap.shortest : std::nullopt, ""});
    lines.push_back({"overlap_working", name_of(AfterName::overlap_working, w), "working_overlap_value", is_sure(order, Range::working), overlap(Range::working), ""});
    lines.push_back({"overlap_turning", name_of(AfterName::overlap_turning, w), "turning_overlap_value", is_sure(order, Range::turning), overlap(Range::turning), ""});
    lines.push_back({"overlap_standing", name_of(AfterName::overlap_standing, w), "standing_overlap_value", is_sure(order, Range::standing), overlap(Range::standing), ""});
    return lines;
}

}  // namespace

CellFormula unless_refused(const WorkOrder& order, const std::string& expression, std::variant<double, std::string> now, const Wording& w)
{
    if (order.verdict == Verdict::refused) now = std::string();
    return {"IF(" + holds("verdict", CellWord::refused, w) + ",\"\"," + expression + ")", std::move(now)};
}

std::string sixteenths_expression(const std::string& millimetres, Toward toward)
{
    const std::string nearest = "ROUND(" + millimetres + "/1.5875,0)";
    if (toward == Toward::nearest) return nearest + "/16";
    // A whole count of sixteenths is stored rounded to 0.001 mm, which must not cost one of them.
    return "IF(ABS(" + nearest + "*1.5875-" + millimetres + ")<0.0012," + nearest + ",ROUND(" + millimetres + "/1.5875-0.5,0))/16";
}

double sixteenths(Length length, Toward toward)
{
    const double count = length.mm() / 1.5875;
    const double nearest = std::round(count);
    const bool whole = std::abs(nearest * 1.5875 - length.mm()) < 0.0012;
    return (whole || toward == Toward::nearest ? nearest : std::floor(count)) / 16.0;
}

void add_inputs(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w)
{
    sheet.put(0, inputs_heading(w), style::section(), 6);
    sheet.end_row(18);
    add_head(sheet, order, input_heads(w));
    for (const InputLine& line : input_lines(order, w)) {
        const CellContent issued = line.issued ? CellContent(in_units(*line.issued, order.units)) : CellContent();
        sheet.put(0, line.label, style::label());
        sheet.put(figure_column, issued, large(line.used ? style::input() : style::figure(), order));
        if (line.used)
            sheet.allow_numbers(figure_column, 0, longest_input(order.units), takes_a_length_in(unit_word(order.units), w));
        sheet.put(unit_column, std::string(unit_word(order.units)), style::label());
        const double plus_minus = in_units(line.plus_minus, order.units);
        sheet.put(tolerance_column, line.plus_minus_expression.empty() ? CellContent(plus_minus) : CellContent(CellFormula{shown(line.plus_minus_expression, order.units), now_shown(line.plus_minus, order.units)}),
                  decimals(of_a_tolerance(), order));
        sheet.put(second_column, issued, large(style::figure(), order));
        sheet.put(words_column, line.measured, style::label());
        if (inches(order))
            sheet.put(mm_column, CellFormula{"IF(ISNUMBER(" + line.name + "),ROUND(" + line.name + "*25.4,3),\"\")", now_in_mm(line.issued)}, style::figure());
        names.emplace_back(line.name, sheet.here(figure_column));
        names.emplace_back("issued_" + line.name, sheet.here(second_column));
        sheet.end_row(17);
    }
}

void add_cut(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w)
{
    sheet.put(0, cut_heading(w), style::section(), 6);
    sheet.end_row(18);
    add_head(sheet, order, cut_heads(w));
    for (const End end : both_ends)
        for (const bool guard : {true, false}) add_tube(sheet, names, order, tube_on(order.shaft, end), guard, w);
}

void add_lengths_after(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w)
{
    sheet.put(0, after_heading(w), style::section(), 6);
    sheet.end_row(18);
    for (const AfterLine& line : after_lines(order, w)) add_after(sheet, names, order, line, w);
}

}  // namespace shaftcut::workbook
