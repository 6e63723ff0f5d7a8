// The Order sheet's checks, each with result, value, worst case and limit.
#include <algorithm>

#include "work_order_book/check_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int result_column = 1, value_column = 2, worst_column = 3, limit_column = 4, words_column = 5;

std::string name_of(CheckId id, const char* what)
{
    std::string name = std::string("check_") + to_word(id) + "_" + what;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

CellStyle figure_style(const WorkOrder& order, CheckUnit unit)
{
    CellStyle style = style::figure();
    style.points = 9;
    if (unit == CheckUnit::deg) style.numbers = "General\"°\"";
    if (unit == CheckUnit::kilowatt) style.numbers = "General\" kW\"";
    if (unit == CheckUnit::percent) style.numbers = "0.0\" %\"";
    if (unit == CheckUnit::mm && order.units == Units::in) style.numbers = "0.000";
    return style;
}

std::variant<double, std::string> now_of(const WorkOrder& order, const Check& check, std::optional<std::int64_t> thousandths)
{
    if (!thousandths) return std::string();
    const double figure = static_cast<double>(*thousandths) / 1000.0;
    return check.unit == CheckUnit::mm && order.units == Units::in ? figure / 25.4 : figure;
}

void put_figure(SheetBuilder& sheet, const WorkOrder& order, const Check& check, int column, const std::optional<CellFormula>& formula,
                std::optional<std::int64_t> thousandths)
{
    const auto now = now_of(order, check, thousandths);
    const CellStyle style = figure_style(order, formula ? CheckUnit::mm : check.unit);
    if (formula) sheet.put(column, CellFormula{formula->text, now}, style);
    else sheet.put(column, thousandths ? CellContent(std::get<double>(now)) : CellContent(), style);
}

void put_figures(SheetBuilder& sheet, const WorkOrder& order, const Check& check, const std::optional<LiveCheck>& live)
{
    const auto formula = [&](const std::string& name, const std::string& known) {
        return live && !name.empty() ? std::optional(CellFormula{"IF(" + known + "," + shown(name, order.units) + ",\"\")", {}}) : std::nullopt;
    };
    const auto figure = [&](const std::string& name) { return formula(name, "ISNUMBER(" + name + ")"); };
    put_figure(sheet, order, check, value_column, figure(live ? live->value : ""), check.value);
    put_figure(sheet, order, check, worst_column, figure(live ? live->worst : ""), check.worst);
    put_figure(sheet, order, check, limit_column, formula(live ? live->limit : "", live ? live->known : ""), check.limit);
}

std::string any_yes(const std::vector<Finding>& findings, bool refuses, const Wording& w)
{
    std::string text = "OR(FALSE";
    for (const Finding& finding : findings)
        if (finding.refuses == refuses) text += "," + holds(finding.cell, CellWord::yes, w);
    return text + ")";
}

CellFormula words_of(const std::vector<Finding>& findings, const Wording& w)
{
    const std::string& now = findings.front().words_from_here;
    return {"IF(consistency_words=\"\"," + text_in_formula(lengths_agree(w)) + ",consistency_words)", now.empty() ? lengths_agree(w) : now};
}

// Beside lengths that contradict each other no length passes; one that is known only as at least so much never does.
std::string result_formula(const LiveCheck& live, const Wording& w)
{
    const std::string passes = word_if(live.warns, CellWord::warn, CellWord::pass, w), not_checked = in_formula(CellWord::not_checked, w);
    std::string doubted = live.of_length ? "IF(" + holds("check_consistency_result", CellWord::fail, w) + "," + not_checked + "," + passes + ")" : passes;
    if (live.sure != "TRUE") doubted = "IF(" + live.sure + "," + doubted + "," + not_checked + ")";
    return "IF(" + live.known + ",IF(" + live.fails + "," + in_formula(CellWord::fail, w) + "," + doubted + ")," + (live.unknown.empty() ? not_checked : live.unknown) + ")";
}

void put_result(SheetBuilder& sheet, const Check& check, const std::optional<LiveCheck>& live, const std::vector<Finding>& findings, const Wording& w)
{
    CellStyle style = style::result();
    style.points = 9;
    const std::string now = cell_word(word_of(check.result), w);
    if (check.id == CheckId::consistency) {
        const std::string doubted = word_if(any_yes(findings, false, w), CellWord::warn, CellWord::pass, w);
        sheet.put(result_column, CellFormula{"IF(" + any_yes(findings, true, w) + "," + in_formula(CellWord::fail, w) + "," + doubted + ")", now}, style);
        return;
    }
    sheet.put(result_column, live ? CellContent(CellFormula{result_formula(*live, w), now}) : CellContent(now), style);
}

}  // namespace

std::vector<std::string> add_checks(SheetBuilder& sheet, Names& names, const WorkOrder& order, const std::vector<Finding>& findings, const Wording& w)
{
    sheet.put(0, checks_heading(w), style::section(), 6);
    sheet.end_row(18);
    sheet.put_heads(check_heads(w));
    sheet.end_row();
    std::vector<std::string> results;
    for (const Check& check : order.checks) {
        const auto live = live_check(order, check.id, w);
        sheet.put(0, std::string(to_word(check.id)), style::label());
        put_result(sheet, check, live, findings, w);
        put_figures(sheet, order, check, live);
        if (check.id == CheckId::consistency) sheet.put(words_column, words_of(findings, w), style::label());
        else sheet.put(words_column, what_is_asked(order, check.id, w), style::label());
        names.emplace_back(name_of(check.id, "result"), sheet.here(result_column));
        names.emplace_back(name_of(check.id, "value"), sheet.here(value_column));
        names.emplace_back(name_of(check.id, "worst"), sheet.here(worst_column));
        names.emplace_back(name_of(check.id, "limit"), sheet.here(limit_column));
        results.push_back(sheet.here(result_column));
        sheet.end_row(16);
    }
    return results;
}

}  // namespace shaftcut::workbook
