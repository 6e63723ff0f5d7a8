// The Order sheet's block of what is confirmed before anything is sawn: a row for each thing that this order can ask for, so that a
// changed length asks for as much as a new job would.
#include <algorithm>

#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int expected_column = 1, unit_column = 2, doubt_column = 3, measured_column = 4, words_column = 5, mm_column = 6;
constexpr const char* not_asked = "—";
constexpr const char* look = "look";

const Confirmation* asked_now(const WorkOrder& order, Confirmed what)
{
    const auto found = std::find_if(order.confirm.begin(), order.confirm.end(), [&](const Confirmation& one) { return one.what == what; });
    return found == order.confirm.end() ? nullptr : &*found;
}

// A text or figure where the confirmation is asked, else what stands for none.
CellFormula if_asked(const ConfirmLine& line, const std::string& expression, const char* otherwise, const Confirmation* asked, std::variant<double, std::string> now)
{
    const std::string none = "\"" + std::string(otherwise) + "\"";
    return {"IF(verdict=\"refused\"," + none + ",IF(" + line.asked + "," + expression + "," + none + "))", asked ? std::move(now) : std::string(otherwise)};
}

std::variant<double, std::string> shown_now(const std::optional<Length>& length, Units units)
{
    if (!length) return std::string(look);
    return units == Units::mm ? length->mm() : length->mm() / 25.4;
}

// Why it is asked, until something is written into its box.
CellFormula words_of(const WorkOrder& order, const ConfirmLine& line, const std::string& asked_cell, const std::string& box, const std::string& doubt_cell)
{
    const std::string why = line.why.text.empty() ? "\"" + std::get<std::string>(line.why.now) + "\"" : line.why.text;
    const std::string differs = "IF(ROUND(ABS(" + box + "-" + asked_cell + ")-" + doubt_cell + ",3)>=0.01,\"NOT AS EXPECTED: do not saw; write a new job\",\"as expected\")";
    const std::string judged = line.expected.empty() ? why : "IF(ISNUMBER(" + box + ")," + differs + "," + why + ")";
    return {"IF(" + asked_cell + "=\"" + not_asked + "\",\"\"," + judged + ")", asked_now(order, line.what) ? line.why.now : std::string()};
}

CellStyle numbers(CellStyle style, const WorkOrder& order)
{
    if (order.units == Units::in) style.numbers = "0.000";
    return style;
}

void add_line(SheetBuilder& sheet, Names& names, const WorkOrder& order, const ConfirmLine& line)
{
    const Confirmation* asked = asked_now(order, line.what);
    const Confirmation now = asked ? *asked : Confirmation();
    const std::string cell = sheet.here(expected_column), name = std::string("confirm_") + to_word(line.what);
    CellStyle figure = numbers(style::figure(), order);
    figure.bold = true;
    sheet.put(0, line.label + ": " + line.where, style::label());
    const std::string figure_of = line.expected.empty() ? "\"" + std::string(look) + "\"" : shown(line.expected, order.units);
    sheet.put(expected_column, if_asked(line, figure_of, not_asked, asked, shown_now(now.expected, order.units)), figure);
    sheet.put(unit_column, std::string(line.expected.empty() ? "" : unit_word(order.units)), style::label());
    if (line.expected.empty()) sheet.put(doubt_column, {}, style::figure());
    else sheet.put(doubt_column, if_asked(line, shown(line.doubt, order.units), "", asked, shown_now(now.plus_minus, order.units)), numbers(style::figure(), order));
    sheet.put(measured_column, {}, line.expected.empty() ? style::written() : style::input());
    if (!line.expected.empty()) sheet.allow_numbers(measured_column, 0, longest_input(order.units), "A length, 0 or more.");
    sheet.put(words_column, words_of(order, line, cell, sheet.here(measured_column), sheet.here(doubt_column)), style::label());
    if (order.units == Units::in && !line.expected.empty())
        sheet.put(mm_column, if_asked(line, line.expected, "", asked, now_in_mm(now.expected)), style::figure());
    names.emplace_back(name, cell);
    if (!line.expected.empty()) names.emplace_back(name + "_plus_minus", sheet.here(doubt_column));
    sheet.end_row(25);
}

}  // namespace

std::string confirm_first(const WorkOrder& order)
{
    if (order.confirm.empty()) return "";
    return std::string(order.verdict == Verdict::fits ? "FITS AS IT IS" : "CUT") + ": CONFIRM " + std::to_string(order.confirm.size()) + " FIRST";
}

void add_confirmations(SheetBuilder& sheet, Names& names, const WorkOrder& order)
{
    const auto lines = confirm_lines(order);
    CellStyle count = style::section();
    count.align = CellStyle::Align::centre;
    const int row = sheet.row();
    sheet.put(0, std::string("2  Confirm before sawing"), style::section(), 2);
    sheet.put(doubt_column, std::string("asked now; a figure outside its ± means a new job, not a new guess"), style::small(), 3);
    names.emplace_back("confirm_count", sheet.here(unit_column));
    sheet.end_row(18);
    static constexpr std::array heads{"What is measured or looked at", "Expected", "Unit", "±", "Found", "Why"};
    sheet.put_heads(heads);
    if (order.units == Units::in) sheet.put(mm_column, std::string("mm"), style::table_head());
    sheet.end_row();
    std::string sum;
    for (const ConfirmLine& line : lines) {
        sum += "+IF(" + sheet.here(expected_column) + "=\"" + not_asked + "\",0,1)";
        add_line(sheet, names, order, line);
    }
    sheet.put_at(row, unit_column, CellFormula{sum.substr(1), static_cast<double>(order.confirm.size())}, count);
}

}  // namespace shaftcut::workbook
