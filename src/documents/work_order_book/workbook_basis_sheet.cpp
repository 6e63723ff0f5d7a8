#include <algorithm>

#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int value_column = 1, tolerance_column = 2, name_column = 3, words_column = 4;

CellStyle lined(const CellStyle& style, CellStyle::Align align)
{
    CellStyle changed = style;
    changed.align = align;
    return changed;
}

void add_head(SheetBuilder& sheet, const std::string& section, const std::array<const char*, 5>& heads)
{
    sheet.empty_row();
    sheet.put(0, section, style::section(), 5);
    sheet.end_row();
    sheet.put_heads(heads);
    sheet.end_row();
}

CellStyle value_style(const CellContent& content)
{
    const auto* formula = std::get_if<CellFormula>(&content);
    const bool text = std::holds_alternative<std::string>(content) || (formula && std::holds_alternative<std::string>(formula->now));
    return text ? lined(style::label(), CellStyle::Align::right) : style::figure();
}

void add_line(SheetBuilder& sheet, Names& names, const LengthLine& line, const std::string& words)
{
    const CellContent value = content_of(line.formula);
    sheet.put(0, line.label, style::label());
    sheet.put(value_column, value, value_style(value));
    sheet.put(tolerance_column, line.tolerance_name.empty() ? CellContent() : content_of(line.tolerance), style::figure());
    sheet.put(name_column, line.name, style::label());
    sheet.put(words_column, words, style::label());
    names.emplace_back(line.name, sheet.here(value_column));
    if (!line.tolerance_name.empty()) names.emplace_back(line.tolerance_name, sheet.here(tolerance_column));
    sheet.end_row();
}

void add_constants(SheetBuilder& sheet, Names& names, const std::vector<ConstantLine>& lines)
{
    for (const ConstantLine& line : lines) {
        sheet.put(0, line.label, style::label());
        sheet.put(value_column, line.millimetres ? CellContent(*line.millimetres) : CellContent(std::string("not known")),
                  line.millimetres ? style::figure() : lined(style::label(), CellStyle::Align::right));
        sheet.put(tolerance_column, {}, style::figure());
        sheet.put(name_column, line.name, style::label());
        sheet.put(words_column, line.origin, style::label());
        names.emplace_back(line.name, sheet.here(value_column));
        sheet.end_row();
    }
}

std::string reading_words(const WorkOrder& order, const std::string& name)
{
    if (name == "closed_length") {
        const Length beyond = order.reading.closed.value - order.reading.shaft.closed.value;
        return beyond == Length() ? "as measured" : "as measured less " + literal(beyond) + " mm, the spacing of the wide-angle joints it starts from";
    }
    if (name.ends_with("guard_length")) return "as measured";
    if (name == "inner_length" || name == "outer_length") return "as measured; else the closed length less the other half's shoulder";
    if (order.fits.size() > 1) return "the deciding one of all tractors: the least shortest, the greatest longest";
    const bool geometry = order.fits.front().geometry.has_value();
    const Reaches& reaches = order.fits.front().reaches;
    const bool bends = reaches[End::tractor].bends() || reaches[End::implement].bends();
    if (geometry) return bends ? "as measured, read between the inner crosses; else from the machine's geometry" : "as measured; else from the machine's geometry";
    if (!bends) return "as measured";
    return name == "shortest_length" ? "read with the joints in line, which is the least it can be"
                                     : "read over joints bent by their stated angles, both the same way in one plane, which is the most it can be";
}

std::string stop_words(const WorkOrder& order, const std::string& name)
{
    for (const Tube tube : both_tubes) {
        if (name == for_tube("THIS_shoulder", tube)) return shoulder_origin(order, tube);
        if (name == for_tube("THIS_path", tube)) return for_tube("THIS half + OTHER shoulder as stated; the closed length where the one or the other follows from it", tube);
        if (name == for_tube("THIS_path_confirmed", tube)) return "yes: half measured, shoulder stated, the closed length within the ± beside it";
    }
    if (name == "modelled_closed") return "the greater path of the halves that were measured; the ± is that of its own path";
    if (name == "agreement") return "agrees: the stated shoulders shift by the difference; longer, shorter: each shoulder is the greater of what is stated and what the closed length leaves";
    if (name == "exchanged_closed") return "max(outer half + outer shoulder, inner half + inner shoulder)";
    return "";
}

// From the last to the first: each cell says what is found first from there on.
std::string words_formula(const FindingLine& line, const std::string& cell, const std::string& next)
{
    const std::string words = std::string(line.refuses ? "\"Contradiction: " : "\"Doubt: ") + line.label;
    return "IF(" + cell + "=\"yes\"," + words + (line.more.text.empty() ? "." : "\"&" + line.more.text + "&\".") + "\"," + (next.empty() ? "\"\"" : next) + ")";
}

std::string words_now(const FindingLine& line, const std::string& next)
{
    if (std::get<std::string>(line.formula.now) != "yes") return next;
    const auto* more = std::get_if<std::string>(&line.more.now);
    return (line.refuses ? "Contradiction: " : "Doubt: ") + line.label + (line.more.text.empty() || !more ? "" : *more) + ".";
}

std::vector<std::string> all_words_now(const std::vector<FindingLine>& lines)
{
    std::vector<std::string> words(lines.size() + 1);
    for (std::size_t i = lines.size(); i-- > 0;) words[i] = words_now(lines[i], words[i + 1]);
    return words;
}

void add_findings(BasisSheet& basis, SheetBuilder& sheet, const WorkOrder& order)
{
    add_head(sheet, "Contradictions and doubts (the check on consistency)", {"What is looked for", "Found", "", "If found", "What is found first, from here on"});
    const auto lines = finding_lines(order);
    const auto words = all_words_now(lines);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const FindingLine& line = lines[i];
        sheet.put(0, line.label, style::label());
        sheet.put(value_column, content_of(line.formula), lined(style::label(), CellStyle::Align::right));
        sheet.put(tolerance_column, {}, style::figure());
        sheet.put(name_column, std::string(line.refuses ? "the job is refused" : "a warning"), style::label());
        const std::string next = i + 1 < lines.size() ? absolute_cell(sheet.row() + 1, words_column) : "";
        sheet.put(words_column, CellFormula{words_formula(line, absolute_cell(sheet.row(), value_column), next), words[i]}, style::label());
        if (i == 0) basis.names.emplace_back("consistency_words", sheet.here(words_column));
        basis.findings.push_back({sheet.here(value_column), line.refuses, words[i]});
        sheet.end_row();
    }
}

void add_other_limits(SheetBuilder& sheet, const WorkOrder& order)
{
    for (const LimitRow& row : limit_rows()) {
        if (row.kind == LimitKind::length) continue;
        sheet.put(0, std::string(row.name), style::label());
        sheet.put(value_column, limit_text(row.limit, order.limits[row.limit].value, order.units), lined(style::label(), CellStyle::Align::right));
        sheet.put(tolerance_column, {}, style::figure());
        sheet.put(name_column, {}, style::label());
        sheet.put(words_column, order.limits.basis(row.limit), style::label());
        sheet.end_row();
    }
}

void add_check_bases(SheetBuilder& sheet, const WorkOrder& order)
{
    sheet.empty_row();
    sheet.put(0, std::string("Basis of each check (as issued)"), style::section(), 5);
    sheet.end_row();
    for (const Check& check : order.checks) {
        sheet.put(0, std::string(to_word(check.id)), style::label());
        sheet.put(1, check.basis, style::label(), 4);
        sheet.end_row();
    }
}

void add_expressions(SheetBuilder& sheet, const Names& names)
{
    sheet.empty_row();
    sheet.put(0, std::string("Named expressions: what the formulas mean by these names (mm)"), style::section(), 5);
    sheet.end_row();
    for (const auto& [name, expression] : names) {
        sheet.put(0, name, style::label());
        sheet.put(1, expression, style::label(), 4);
        sheet.end_row();
    }
}

void add_introduction(SheetBuilder& sheet, const WorkOrder& order)
{
    sheet.put(0, "Basis of work order " + order.order, style::title(), 5);
    sheet.end_row(22);
    sheet.put(0, std::string("Everything here is in millimetres. The Order sheet's pale cells are turned into the lengths below, between the crosses that carry "
                             "the tube yokes, each rounded to 0.001 mm. The cut and what it leaves are computed by named expressions, so that no cell holds "
                             "them while the job is refused. Comparisons with a limit, and rounding up to the saw's step, ignore less than 0.01 mm. Worst "
                             "cases are the value less the sum of the ± of what enters it; of the clearance it is that of the worse way of stopping and of marking a cut. Limits and fixed figures are those in force when the order was "
                             "written; to change them, run the program again."),
              style::small(), 5);
    sheet.end_row();
}

}  // namespace

CellContent content_of(const CellFormula& formula)
{
    if (!formula.text.empty()) return formula;
    return std::visit([](const auto& now) { return CellContent(now); }, formula.now);
}

BasisSheet basis_sheet(const WorkOrder& order, const std::string& footer)
{
    BasisSheet basis;
    SheetBuilder sheet("Basis", {31, 11, 8, 23, 36});
    add_introduction(sheet, order);
    add_head(sheet, "Lengths between the crosses", {"Length", "mm", "± mm", "Name", "How it is read"});
    for (const LengthLine& line : length_lines(order)) add_line(sheet, basis.names, line, reading_words(order, line.name));
    add_findings(basis, sheet, order);
    basis.names.emplace_back("lengths_unreadable", basis.findings.front().cell);
    add_head(sheet, "Where the tubes stop", {"Figure", "mm", "± mm", "Name", "How it is found"});
    for (const LengthLine& line : stop_lines(order)) add_line(sheet, basis.names, line, stop_words(order, line.name));
    add_head(sheet, "What the checks compare", {"Figure", "mm", "", "Name", ""});
    for (const LengthLine& line : figure_lines(order)) add_line(sheet, basis.names, line, "");
    add_head(sheet, "Fixed figures", {"Figure", "mm", "", "Name", "Where it comes from"});
    add_constants(sheet, basis.names, shaft_constants(order));
    add_head(sheet, "Limits in force", {"Limit", "mm", "", "Name", "Basis"});
    add_constants(sheet, basis.names, limit_constants(order));
    add_other_limits(sheet, order);
    add_check_bases(sheet, order);
    Names expressions = cut_expressions(order);
    for (const Names& more : {closing_expressions(), check_expressions(order)}) expressions.insert(expressions.end(), more.begin(), more.end());
    add_expressions(sheet, expressions);
    basis.names.insert(basis.names.end(), expressions.begin(), expressions.end());
    basis.sheet = sheet.take("&L&9Work order " + order.order + "&R&9Basis", footer, 1);
    return basis;
}

}  // namespace shaftcut::workbook
