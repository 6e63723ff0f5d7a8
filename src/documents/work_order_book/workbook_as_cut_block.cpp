// The shaft as it is after the cut: four lengths measured anew, what each part is by them, and what the shaft then gives. The Basis sheet
// computes it.
#include <algorithm>

#include "order/after_cut_words.hpp"
#include "work_order_book/as_cut_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int figure_column = 1, unit_column = 2, by_column = 3, result_column = 4;

struct AsCutLine {
    std::string name, label;
    std::string known;
    std::string value, limit;  // expressions in mm
    std::string fails, warns;
    std::string sure = "TRUE";  // false where it can fail and cannot pass
};

std::string is(const std::string& name, const Wording& w) { return holds(name, CellWord::yes, w); }

CellStyle figure_style(const WorkOrder& order)
{
    CellStyle figure = style::figure();
    if (order.units == Units::in) figure.numbers = "0.000";
    return figure;
}

CellStyle small_result()
{
    CellStyle result = style::result();
    result.points = 9;
    return result;
}

void put_heads(SheetBuilder& sheet, const std::vector<std::string>& heads)
{
    for (int column = 0; column <= result_column; ++column) sheet.put(column, heads[static_cast<std::size_t>(column)], style::table_head(), column == result_column ? 2 : 1);
    sheet.end_row();
}

AsCutLine overlap_line(const WorkOrder& order, Range range, AsCutName name, const Wording& w)
{
    const std::string word = to_word(range), value = "after_" + word + "_value", limit = "after_" + word + "_limit";
    return {"after_overlap_" + word, name_of(name, w), "ISNUMBER(" + value + ")", value, limit, clearly_below_expression(value, limit), "FALSE", is_sure(order, range)};
}

// The guards' figures where both guards are known.
AsCutLine guards_line(const std::string& name, const std::string& label, const std::string& expression, const std::string& limit, const std::string& fails)
{
    return {name, label, "AND(ISNUMBER(after_inner_guard_judged),ISNUMBER(after_outer_guard_judged))", expression, limit, fails, "ROUND(" + limit + "-" + expression + ",3)>=0.01"};
}

AsCutLine setback_line(const Wording& w)
{
    const std::string inner = "ROUND(after_inner_judged-after_inner_guard_judged,3)", outer = "ROUND(after_outer_judged-after_outer_guard_judged,3)";
    // A guard that is longer than its tube first: below 0.
    const std::string value = "IF(MIN(" + inner + "," + outer + ")<0,MIN(" + inner + "," + outer + "),MAX(" + inner + "," + outer + "))";
    AsCutLine line = guards_line("after_guard_setback", name_of(AsCutName::guard_setback, w), value, "guard_setback", "FALSE");
    line.warns = "OR(ROUND(" + value + ",3)<=-0.01,ROUND(" + value + "-guard_setback,3)>=0.01)";
    return line;
}

std::vector<AsCutLine> shaft_lines(const WorkOrder& order, const Wording& w)
{
    const auto& halves = order.reading.shaft.halves;
    std::vector<AsCutLine> lines;
    const std::string clearance = "ROUND(shortest_length-after_closes,3)";
    lines.push_back({"after_clearance", name_of(AsCutName::clearance, w), is("after_known", w), clearance, "closing_clearance", is("after_stops_early", w),
                     "ROUND(closing_clearance-" + clearance + ",3)>=0.01"});
    lines.push_back(overlap_line(order, Range::working, AsCutName::overlap_working, w));
    lines.push_back(overlap_line(order, Range::turning, AsCutName::overlap_turning, w));
    lines.push_back(overlap_line(order, Range::standing, AsCutName::overlap_standing, w));
    if (lacks_guard(order)) return lines;
    if (halves[Tube::inner].guard_shoulder && halves[Tube::outer].guard_shoulder)
        lines.push_back(guards_line("after_guard_clearance", name_of(AsCutName::guard_clearance, w),
                                    "ROUND(shortest_length-MAX(after_inner_guard_judged+outer_guard_shoulder,after_outer_guard_judged+inner_guard_shoulder),3)", "closing_clearance",
                                    is("after_guards_stop", w)));
    lines.push_back(guards_line("after_guard_cover", name_of(AsCutName::guard_cover, w), "ROUND(after_inner_guard_judged+after_outer_guard_judged-greatest_length,3)", "guard_overlap",
                                "IF(ISNUMBER(after_guard_cover_worst),after_guard_cover_worst<=-0.01,FALSE)"));
    lines.back().known = "ISNUMBER(after_guard_cover_worst)";
    lines.push_back(setback_line(w));
    return lines;
}

void add_line(SheetBuilder& sheet, Names& names, const WorkOrder& order, const AsCutLine& line, const Wording& w)
{
    const auto if_known = [&](const std::string& then, const std::string& otherwise) {
        return CellFormula{"IF(" + line.known + "," + then + "," + text_in_formula(otherwise) + ")", otherwise};
    };
    sheet.put(0, line.label, style::label());
    sheet.put(figure_column, if_known(shown(line.value, order.units), ""), figure_style(order));
    sheet.put(unit_column, std::string(unit_word(order.units)), style::label());
    sheet.put(by_column, if_known(shown(line.limit, order.units), ""), figure_style(order));
    const std::string unless_failed = "IF(" + line.sure + "," + word_if(line.warns, CellWord::warn, CellWord::pass, w) + "," + in_formula(CellWord::not_checked, w) + ")";
    sheet.put(result_column, if_known("IF(" + line.fails + "," + in_formula(CellWord::fail, w) + "," + unless_failed + ")", cell_word(CellWord::not_checked, w)), small_result(), 2);
    names.emplace_back(line.name, sheet.here(figure_column));
    names.emplace_back(line.name + "_result", sheet.here(result_column));
    sheet.end_row();
}

// A tube or a guard: its names, and what its result is made of.
struct AsCutPart {
    Tube tube = Tube::inner;
    bool guard = false;

    std::string name(const char* ending) const { return for_tube(std::string("after_THIS_") + (guard ? "guard_" : "") + ending, tube); }
    std::string input() const { return name("half"); }
};

class Block {
public:
    Block(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w) : sheet_(sheet), names_(names), order_(order), w_(w)
    {
        for (const End end : both_ends)
            for (const bool guard : {false, true}) parts_.push_back({tube_on(order.shaft, end), guard});
    }

    void add_parts()
    {
        put_heads(sheet_, as_cut_part_heads(w_));
        for (const AsCutPart& part : parts_) add_part(part);
    }

    // Each worse than the one before.
    void add_verdict()
    {
        sheet_.put(0, as_cut_verdict(w_), style::section());
        CellStyle verdict = style::great();
        verdict.align = CellStyle::Align::centre;
        sheet_.put(figure_column, by_verdict([&](AfterCutVerdict one) { return verdict_words(one, w_); }, cell_word(CellWord::measure, w_)), verdict);
        sheet_.put(unit_column, by_verdict([&](AfterCutVerdict one) { return next_step(one, w_); }, next_step(std::nullopt, w_)), style::sentence(), 4);
        names_.emplace_back("after_verdict", sheet_.here(figure_column));
        sheet_.end_row(32);
    }

private:
    bool is_used(const AsCutPart& part) const { return !part.guard || order_.reading.shaft.halves[part.tube].guard_used; }

    std::string quoted(AfterCutVerdict result) const { return in_formula(word_of(result), w_); }

    std::string any_is(AfterCutVerdict result) const
    {
        std::string any = "OR(FALSE";
        for (const AsCutPart& part : parts_)
            if (is_used(part)) any += "," + part.name("half_result") + "=" + quoted(result);
        return any + ")";
    }

    std::string any_too_short() const
    {
        std::string any = "OR(FALSE";
        for (const AsCutPart& part : parts_)
            if (is_used(part)) any += "," + part.name("short") + ">=0.01";
        return any + ")";
    }

    std::string stops() const { return "OR(" + is("after_stops_early", w_) + "," + is("after_guards_stop", w_) + ")"; }

    // Nothing is sawn on readings that may be each other's, nor where a check would still fail that no part explains.
    std::string result_of(const AsCutPart& part) const
    {
        const std::string unsure = "AND(" + stops() + ",NOT(" + any_too_short() + "))";
        const std::string saw_more = "IF(" + unsure + "," + quoted(AfterCutVerdict::measure) + "," + quoted(AfterCutVerdict::saw_more) + ")";
        const std::string read = "IF(ISNUMBER(" + part.input() + "),IF(" + part.name("again") + ">0," + saw_more + "," + quoted(AfterCutVerdict::right) + ")," + quoted(AfterCutVerdict::measure) + ")";
        const std::string sure = "IF(" + part.name("short") + ">=0.01," + quoted(AfterCutVerdict::too_short) + "," + read + ")";
        return part.guard ? sure : "IF(" + is("after_exchanged", w_) + "," + quoted(AfterCutVerdict::measure) + "," + sure + ")";
    }

    std::string by_how_much(const AsCutPart& part) const
    {
        const std::string result = part.name("half_result");
        return "IF(" + result + "=" + quoted(AfterCutVerdict::too_short) + "," + shown(part.name("short"), order_.units) + ",IF(" + result + "=" + quoted(AfterCutVerdict::saw_more) + "," +
               shown(part.name("again"), order_.units) + ",\"\"))";
    }

    void add_part(const AsCutPart& part)
    {
        const bool used = is_used(part);
        const std::string where = measured_between(!part.guard ? Measured::half : used ? Measured::guard : Measured::guard_not_used, w_);
        sheet_.put(0, part.guard ? guard_name(order_.reading.shaft.halves[part.tube].end, part.tube, w_) : half_label(order_, part.tube, w_), style::label());
        sheet_.put(figure_column, {}, style::input());
        sheet_.allow_numbers(figure_column, 0, longest_input(order_.units), takes_a_length(w_));
        sheet_.put(unit_column, std::string(unit_word(order_.units)), style::label());
        const auto if_known = [&](const std::string& formula, const std::string& otherwise) {
            return CellFormula{"IF(" + is("after_known", w_) + "," + formula + "," + text_in_formula(otherwise) + ")", otherwise};
        };
        sheet_.put(by_column, used ? CellContent(if_known(by_how_much(part), "")) : CellContent(), figure_style(order_));
        sheet_.put(result_column, used ? CellContent(if_known(result_of(part), where)) : CellContent(where), small_result(), 2);
        names_.emplace_back(part.input(), sheet_.here(figure_column));
        if (used) names_.emplace_back(part.name("half_by"), sheet_.here(by_column));
        if (used) names_.emplace_back(part.name("half_result"), sheet_.here(result_column));
        sheet_.end_row(17);
    }

    template <class Said>
    CellFormula by_verdict(Said said, const std::string& unknown) const
    {
        const auto text = [&](AfterCutVerdict one) { return text_in_formula(said(one)); };
        const std::string measure = "OR(" + any_is(AfterCutVerdict::measure) + "," + stops() + ")";
        const std::string sawn = "IF(" + any_is(AfterCutVerdict::saw_more) + "," + text(AfterCutVerdict::saw_more) + "," + text(AfterCutVerdict::right) + ")";
        const std::string all = "IF(" + any_is(AfterCutVerdict::too_short) + "," + text(AfterCutVerdict::too_short) + ",IF(" + measure + "," + text(AfterCutVerdict::measure) + "," + sawn + "))";
        return {"IF(" + is("after_known", w_) + "," + all + "," + text_in_formula(unknown) + ")", unknown};
    }

    SheetBuilder& sheet_;
    Names& names_;
    const WorkOrder& order_;
    const Wording& w_;
    std::vector<AsCutPart> parts_;
};

}  // namespace

void add_parts_as_cut(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w)
{
    sheet.put(0, as_cut_heading(w), style::section(), 6);
    sheet.end_row(18);
    Block block(sheet, names, order, w);
    block.add_parts();
    sheet.put(0, as_cut_legend(w), style::small(), 6);
    sheet.end_row();
    block.add_verdict();
}

void add_shaft_as_cut(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w)
{
    sheet.put(0, as_cut_gives_heading(w), style::section(), 6);
    sheet.end_row(18);
    put_heads(sheet, as_cut_heads(w));
    for (const AsCutLine& line : shaft_lines(order, w)) add_line(sheet, names, order, line, w);
}

}  // namespace shaftcut::workbook
