#include <algorithm>

#include "checks/check_sentences.hpp"
#include "checks/limit_words.hpp"
#include "work_order_book/basis_sheet_words.hpp"
#include "work_order_book/finding_words.hpp"
#include "work_order_book/sheet_words.hpp"
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

void add_section(SheetBuilder& sheet, BasisBlock block, const Wording& w)
{
    sheet.empty_row();
    sheet.put(0, heading(block, w), style::section(), 5);
    sheet.end_row();
}

void add_head(SheetBuilder& sheet, BasisBlock block, const Wording& w)
{
    add_section(sheet, block, w);
    sheet.put_heads(heads(block, w));
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

void add_constants(SheetBuilder& sheet, Names& names, const std::vector<ConstantLine>& lines, const Wording& w)
{
    for (const ConstantLine& line : lines) {
        sheet.put(0, line.label, style::label());
        sheet.put(value_column, line.millimetres ? CellContent(*line.millimetres) : CellContent(not_known(w)),
                  line.millimetres ? style::figure() : lined(style::label(), CellStyle::Align::right));
        sheet.put(tolerance_column, {}, style::figure());
        sheet.put(name_column, line.name, style::label());
        sheet.put(words_column, line.origin, style::label());
        names.emplace_back(line.name, sheet.here(value_column));
        sheet.end_row();
    }
}

std::string reading_words(const WorkOrder& order, const std::string& name, const Wording& w)
{
    if (name == "closed_length") {
        const Length beyond = order.reading.closed.value - order.reading.shaft.closed.value;
        return beyond == Length() ? how_it_is_read(LengthRead::as_measured, w) : less_joint_spacing(literal(beyond), w);
    }
    if (name.ends_with("guard_length")) return how_it_is_read(LengthRead::as_measured, w);
    if (name == "inner_length" || name == "outer_length") return how_it_is_read(LengthRead::half_or_derived, w);
    if (order.fits.size() > 1) return how_it_is_read(LengthRead::deciding, w);
    const bool geometry = order.fits.front().geometry.has_value();
    const Reaches& reaches = order.fits.front().reaches;
    const bool bends = reaches[End::tractor].bends() || reaches[End::implement].bends();
    if (geometry) return how_it_is_read(bends ? LengthRead::of_geometry_inner_crosses : LengthRead::of_geometry, w);
    if (!bends) return how_it_is_read(LengthRead::as_measured, w);
    return how_it_is_read(name == "shortest_length" ? LengthRead::joints_in_line : LengthRead::joints_bent, w);
}

std::string stop_words(const WorkOrder& order, const std::string& name, const Wording& w)
{
    for (const Tube tube : both_tubes) {
        if (name == for_tube("THIS_shoulder", tube)) return shoulder_origin(order, tube, w);
        if (name == for_tube("THIS_path", tube)) return how_path_is_found(tube, w);
        if (name == for_tube("THIS_path_confirmed", tube)) return how_it_is_found(StopFound::path_confirmed, w);
    }
    if (name == "modelled_closed") return how_it_is_found(StopFound::modelled_closed, w);
    if (name == "agreement") return how_it_is_found(StopFound::agreement, w);
    if (name == "exchanged_closed") return how_it_is_found(StopFound::exchanged_closed, w);
    return "";
}

// From the last to the first: each cell says what is found first from there on.
std::string words_formula(const FindingLine& line, const std::string& cell, const std::string& next, const Wording& w)
{
    const std::string more = line.more.text.empty() ? "" : expression_in_text(line.more.text);
    const std::string words = text_in_formula(contradiction_or_doubt(line.refuses, line.label, more, w));
    return "IF(" + holds(cell, CellWord::yes, w) + "," + words + "," + (next.empty() ? "\"\"" : next) + ")";
}

std::string words_now(const FindingLine& line, const std::string& next, const Wording& w)
{
    if (std::get<std::string>(line.formula.now) != cell_word(CellWord::yes, w)) return next;
    const auto* more = std::get_if<std::string>(&line.more.now);
    return contradiction_or_doubt(line.refuses, line.label, line.more.text.empty() || !more ? "" : *more, w);
}

std::vector<std::string> all_words_now(const std::vector<FindingLine>& lines, const Wording& w)
{
    std::vector<std::string> words(lines.size() + 1);
    for (std::size_t i = lines.size(); i-- > 0;) words[i] = words_now(lines[i], words[i + 1], w);
    return words;
}

void add_findings(BasisSheet& basis, SheetBuilder& sheet, const WorkOrder& order, const Wording& w)
{
    add_head(sheet, BasisBlock::findings, w);
    const auto lines = finding_lines(order, w);
    const auto words = all_words_now(lines, w);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const FindingLine& line = lines[i];
        sheet.put(0, line.label, style::label());
        sheet.put(value_column, content_of(line.formula), lined(style::label(), CellStyle::Align::right));
        sheet.put(tolerance_column, {}, style::figure());
        sheet.put(name_column, consequence(line.refuses, w), style::label());
        const std::string next = i + 1 < lines.size() ? absolute_cell(sheet.row() + 1, words_column) : "";
        sheet.put(words_column, CellFormula{words_formula(line, absolute_cell(sheet.row(), value_column), next, w), words[i]}, style::label());
        if (i == 0) basis.names.emplace_back("consistency_words", sheet.here(words_column));
        basis.findings.push_back({sheet.here(value_column), line.refuses, words[i]});
        sheet.end_row();
    }
}

void add_other_limits(SheetBuilder& sheet, const WorkOrder& order, const Wording& w)
{
    for (const LimitRow& row : limit_rows()) {
        if (row.kind == LimitKind::length) continue;
        sheet.put(0, std::string(row.name), style::label());
        sheet.put(value_column, limit_text(row.limit, order.limits[row.limit].value, w), lined(style::label(), CellStyle::Align::right));
        sheet.put(tolerance_column, {}, style::figure());
        sheet.put(name_column, {}, style::label());
        sheet.put(words_column, say(order.limits.basis(row.limit), w), style::label());
        sheet.end_row();
    }
}

void add_check_bases(SheetBuilder& sheet, const WorkOrder& order, const Wording& w)
{
    add_section(sheet, BasisBlock::checks, w);
    for (const Check& check : order.checks) {
        sheet.put(0, std::string(to_word(check.id)), style::label());
        sheet.put(1, basis(check, w), style::label(), 4);
        sheet.end_row();
    }
}

void add_expressions(SheetBuilder& sheet, const Names& names, const Wording& w)
{
    add_section(sheet, BasisBlock::expressions, w);
    for (const auto& [name, expression] : names) {
        sheet.put(0, name, style::label());
        sheet.put(1, expression, style::label(), 4);
        sheet.end_row();
    }
}

void add_introduction(SheetBuilder& sheet, const WorkOrder& order, const Wording& w)
{
    sheet.put(0, basis_title(order.order, w), style::title(), 5);
    sheet.end_row(22);
    sheet.put(0, basis_introduction(w), style::small(), 5);
    sheet.end_row();
}

}  // namespace

std::string head_of_pages(const WorkOrder& order, const std::string& sheet, const Wording& w) { return "&L&9" + work_order_title(order.order, w) + "&R&9" + sheet; }

CellContent content_of(const CellFormula& formula)
{
    if (!formula.text.empty()) return formula;
    return std::visit([](const auto& now) { return CellContent(now); }, formula.now);
}

BasisSheet basis_sheet(const WorkOrder& order, const std::string& footer, const Wording& w)
{
    BasisSheet basis;
    SheetBuilder sheet(basis_sheet_id, {31, 11, 8, 23, 36});
    add_introduction(sheet, order, w);
    add_head(sheet, BasisBlock::lengths, w);
    for (const LengthLine& line : length_lines(order, w)) add_line(sheet, basis.names, line, reading_words(order, line.name, w));
    add_findings(basis, sheet, order, w);
    basis.names.emplace_back("lengths_unreadable", basis.findings.front().cell);
    add_head(sheet, BasisBlock::stops, w);
    for (const LengthLine& line : stop_lines(order, w)) add_line(sheet, basis.names, line, stop_words(order, line.name, w));
    add_head(sheet, BasisBlock::compared, w);
    for (const LengthLine& line : figure_lines(order, w)) add_line(sheet, basis.names, line, "");
    add_head(sheet, BasisBlock::as_cut, w);
    for (const LengthLine& line : as_cut_lines(order, w)) add_line(sheet, basis.names, line, "");
    add_head(sheet, BasisBlock::fixed, w);
    add_constants(sheet, basis.names, shaft_constants(order, w), w);
    add_head(sheet, BasisBlock::limits, w);
    add_constants(sheet, basis.names, limit_constants(order, w), w);
    add_other_limits(sheet, order, w);
    add_check_bases(sheet, order, w);
    Names expressions = cut_expressions(order);
    for (const Names& more : {closing_expressions(w), check_expressions(order)}) expressions.insert(expressions.end(), more.begin(), more.end());
    add_expressions(sheet, expressions, w);
    basis.names.insert(basis.names.end(), expressions.begin(), expressions.end());
    basis.sheet = sheet.take(head_of_pages(order, basis_sheet_id, w), footer, 1);
    return basis;
}

}  // namespace shaftcut::workbook
