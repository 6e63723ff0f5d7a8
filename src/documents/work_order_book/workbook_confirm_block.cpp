// The Order sheet's block of what is confirmed before anything is sawn: a row for each thing that this order can ask for, so that a
// changed length asks for as much as a new job would.
#include <algorithm>

#include "work_order_book/confirm_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int expected_column = 1, unit_column = 2, doubt_column = 3, measured_column = 4, words_column = 5, mm_column = 6;

const Confirmation* asked_now(const WorkOrder& order, Confirmed what)
{
    const auto found = std::find_if(order.confirm.begin(), order.confirm.end(), [&](const Confirmation& one) { return one.what == what; });
    return found == order.confirm.end() ? nullptr : &*found;
}

// A text or figure where the confirmation is asked, else what stands for none.
CellFormula if_asked(const ConfirmLine& line, const std::string& expression, const std::string& otherwise, const Confirmation* asked, std::variant<double, std::string> now, const Wording& w)
{
    const std::string none = text_in_formula(otherwise);
    return {"IF(" + holds("verdict", CellWord::refused, w) + "," + none + ",IF(" + line.asked + "," + expression + "," + none + "))", asked ? std::move(now) : otherwise};
}

std::variant<double, std::string> shown_now(const std::optional<Length>& length, Units units, const Wording& w)
{
    if (!length) return cell_word(CellWord::look, w);
    return units == Units::mm ? length->mm() : length->mm() / 25.4;
}

// Why it is asked, until something is written into its box.
CellFormula words_of(const WorkOrder& order, const ConfirmLine& line, const std::string& asked_cell, const std::string& box, const std::string& doubt_cell, const Wording& w)
{
    const std::string why = line.why.text.empty() ? text_in_formula(std::get<std::string>(line.why.now)) : line.why.text;
    const std::string apart = "ROUND(ABS(" + box + "-" + asked_cell + ")-" + doubt_cell + ",3)>=0.01";
    const std::string differs = "IF(" + apart + "," + text_in_formula(found_as_expected(false, w)) + "," + text_in_formula(found_as_expected(true, w)) + ")";
    const std::string judged = line.expected.empty() ? why : "IF(ISNUMBER(" + box + ")," + differs + "," + why + ")";
    return {"IF(" + holds(asked_cell, CellWord::not_asked, w) + ",\"\"," + judged + ")", asked_now(order, line.what) ? line.why.now : std::string()};
}

CellStyle numbers(CellStyle style, const WorkOrder& order)
{
    if (order.units == Units::in) style.numbers = "0.000";
    return style;
}

void add_line(SheetBuilder& sheet, Names& names, const WorkOrder& order, const ConfirmLine& line, const Wording& w)
{
    const Confirmation* asked = asked_now(order, line.what);
    const Confirmation none;
    const Confirmation& now = asked ? *asked : none;
    const std::string cell = sheet.here(expected_column), name = std::string("confirm_") + to_word(line.what);
    CellStyle figure = numbers(style::figure(), order);
    figure.bold = true;
    sheet.put(0, line.label, style::label());
    const std::string figure_of = line.expected.empty() ? in_formula(CellWord::look, w) : shown(line.expected, order.units);
    sheet.put(expected_column, if_asked(line, figure_of, cell_word(CellWord::not_asked, w), asked, shown_now(now.expected, order.units, w), w), figure);
    sheet.put(unit_column, std::string(line.expected.empty() ? "" : unit_word(order.units)), style::label());
    if (line.expected.empty()) sheet.put(doubt_column, {}, style::figure());
    else sheet.put(doubt_column, if_asked(line, shown(line.doubt, order.units), "", asked, shown_now(now.plus_minus, order.units, w), w), numbers(style::figure(), order));
    sheet.put(measured_column, {}, line.expected.empty() ? style::written() : style::input());
    if (!line.expected.empty()) sheet.allow_numbers(measured_column, 0, longest_input(order.units), takes_a_length(w));
    sheet.put(words_column, words_of(order, line, cell, sheet.here(measured_column), sheet.here(doubt_column), w), style::label());
    if (order.units == Units::in && !line.expected.empty())
        sheet.put(mm_column, if_asked(line, line.expected, "", asked, now_in_mm(now.expected), w), style::figure());
    names.emplace_back(name, cell);
    if (!line.expected.empty()) names.emplace_back(name + "_plus_minus", sheet.here(doubt_column));
    sheet.end_row(25);
}

}  // namespace

void add_confirmations(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w)
{
    const auto lines = confirm_lines(order, w);
    CellStyle count = style::section();
    count.align = CellStyle::Align::centre;
    const int row = sheet.row();
    sheet.put(0, confirm_heading(w), style::section(), 2);
    sheet.put(doubt_column, confirm_remark(w), style::small(), 3);
    names.emplace_back("confirm_count", sheet.here(unit_column));
    sheet.end_row(18);
    sheet.put_heads(confirm_heads(w));
    if (order.units == Units::in) sheet.put(mm_column, std::string(unit_word(Units::mm)), style::table_head());
    sheet.end_row();
    std::string sum;
    for (const ConfirmLine& line : lines) {
        sum += "+IF(" + holds(sheet.here(expected_column), CellWord::not_asked, w) + ",0,1)";
        add_line(sheet, names, order, line, w);
    }
    sheet.put_at(row, unit_column, CellFormula{sum.substr(1), static_cast<double>(order.confirm.size())}, count);
}

}  // namespace shaftcut::workbook
