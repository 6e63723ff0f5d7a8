#include "advice/advice_words.hpp"
#include "order/verdict_words.hpp"
#include "checks/check_sentences.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"
#include "work_order_book/order_sheet_words.hpp"
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int last_column = 5;

// Whether every length is as it was when the order was written.
std::string changed_formula(const WorkOrder& order, const Wording& w)
{
    std::string same;
    for (const InputLine& line : input_lines(order, w)) {
        const std::string issued = "issued_" + line.name;
        same += (same.empty() ? "" : ",") + (line.issued ? "IF(ISNUMBER(" + line.name + ")," + line.name + "=" + issued + ",FALSE)" : "ISBLANK(" + line.name + ")");
    }
    return word_if("AND(" + same + ")", CellWord::no, CellWord::yes, w);
}

std::string verdict_formula(const std::vector<std::string>& results, const Wording& w)
{
    std::string failed = "OR(FALSE";
    for (const std::string& result : results) failed += "," + holds(result, CellWord::fail, w);
    const std::string nothing_sawn = "AND(sawn_inner_tube=0,sawn_outer_tube=0,sawn_inner_guard=0,sawn_outer_guard=0)";
    const std::string refused = in_formula(CellWord::refused, w), not_refused = word_if(nothing_sawn, CellWord::fits, CellWord::cut, w);
    return "IF(" + failed + ")," + refused + ",IF(" + holds("cut_is_known", CellWord::no, w) + "," + refused + "," + not_refused + "))";
}

// What is to be confirmed comes before the verdict's own words.
CellFormula live_verdict(const WorkOrder& order, const Wording& w)
{
    const auto sentence = [&](Verdict verdict) { return text_in_formula(verdict_sentence(verdict, w)); };
    const auto name = [&](Verdict verdict) { return text_in_formula(verdict_name(verdict, w)); };
    const std::string fits_or_cut = "IF(" + holds("verdict", CellWord::fits, w) + "," + name(Verdict::fits) + "," + name(Verdict::cut) + ")";
    const std::string first = text_in_formula(confirm_first(expression_in_text(fits_or_cut), expression_in_text("confirm_count"), w));
    const std::string unless_first = "IF(" + holds("verdict", CellWord::fits, w) + "," + sentence(Verdict::fits) + "," + sentence(Verdict::cut) + ")";
    return {"IF(" + holds("verdict", CellWord::refused, w) + "," + sentence(Verdict::refused) + ",IF(confirm_count>0," + first + "," + unless_first + "))",
            order.confirm.empty() ? verdict_sentence(order.verdict, w) : confirm_first(verdict_name(order.verdict, w), std::to_string(order.confirm.size()), w)};
}

// The two rows at the top that say what it all comes to.
void add_verdict(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w)
{
    sheet.put(0, caption(OrderCaption::verdict, w), style::section());
    sheet.put(2, live_verdict(order, w), style::sentence(), 4);
    names.emplace_back("verdict", sheet.here(1));
    names.emplace_back("verdict_words", sheet.here(2));
    sheet.end_row(32);
    const std::string same = lengths_changed_words(false, w);
    sheet.put(0, caption(OrderCaption::lengths_changed, w), style::plain());
    CellStyle centre = style::plain();
    centre.align = CellStyle::Align::centre;
    sheet.put(1, CellFormula{changed_formula(order, w), yes_or_no(false, w)}, centre);
    const std::string words = "IF(" + holds("lengths_changed", CellWord::yes, w) + "," + text_in_formula(lengths_changed_words(true, w)) + "," + text_in_formula(same) + ")";
    sheet.put(2, CellFormula{words, same}, style::small(), 4);
    names.emplace_back("lengths_changed", sheet.here(1));
    sheet.end_row(26);
}

void add_texts(SheetBuilder& sheet, OrderCaption heading, const std::vector<std::string>& texts, const Wording& w)
{
    if (texts.empty()) return;
    sheet.empty_row();
    sheet.put(0, caption(heading, w), style::section(), last_column + 1);
    sheet.end_row(18);
    for (const std::string& text : texts) {
        sheet.put(0, text, style::small(), last_column + 1);
        sheet.end_row();
    }
}

void add_signatures(SheetBuilder& sheet, const Wording& w)
{
    sheet.empty_row();
    for (const OrderCaption label : {OrderCaption::cut_and_measured_by, OrderCaption::checked_by}) {
        sheet.put(0, caption(label, w), style::label());
        sheet.put(1, {}, style::written(), last_column);
        sheet.end_row(24);
    }
}

std::vector<double> column_widths(const WorkOrder& order)
{
    if (order.units == Units::in) return {23, 27, 7.5, 8, 20, 22, 8.5, 8.5};
    return {25, 16, 7.5, 7.5, 13, 31};
}

// The sheet behind the order's; gives the cells of the checks' results.
std::vector<std::string> checks_of(SheetBuilder& sheet, Names& names, const WorkOrder& order, const std::vector<Finding>& findings, const Wording& w)
{
    sheet.put(0, work_order_title(order.order, w), style::title(), last_column + 1);
    sheet.end_row(22);
    add_lengths_after(sheet, names, order, w);
    sheet.empty_row();
    const auto results = add_checks(sheet, names, order, findings, w);
    sheet.empty_row();
    add_shaft_as_cut(sheet, names, order, w);
    return results;
}

}  // namespace

OrderSheets order_sheets(const WorkOrder& order, const std::vector<Finding>& findings, const std::string& footer, const Wording& w)
{
    OrderSheets made;
    SheetBuilder checks(checks_sheet_id, column_widths(order));
    const auto results = checks_of(checks, made.names, order, findings, w);
    SheetBuilder sheet(order_sheet_id, column_widths(order));
    add_heading(sheet, order, w);
    sheet.empty_row();
    const int verdict_row = sheet.row();
    add_verdict(sheet, made.names, order, w);
    CellStyle word = style::great();
    word.align = CellStyle::Align::centre;
    sheet.put_at(verdict_row, 1, CellFormula{verdict_formula(results, w), cell_word(word_of(order.verdict), w)}, word);
    sheet.empty_row();
    add_inputs(sheet, made.names, order, w);
    sheet.empty_row();
    add_confirmations(sheet, made.names, order, w);
    sheet.empty_row();
    add_cut(sheet, made.names, order, w);
    sheet.empty_row();
    add_parts_as_cut(sheet, made.names, order, w);
    add_texts(sheet, OrderCaption::refused_because, reasons_to_refuse(order.checks, w), w);
    add_texts(sheet, OrderCaption::ways_out, say_all(order.ways_out, w), w);
    add_texts(sheet, OrderCaption::notes, say_all(order.notes, w), w);
    add_signatures(sheet, w);
    made.order = sheet.take(head_of_pages(order, order_sheet_id, w), footer, 0);
    made.checks = checks.take(head_of_pages(order, checks_sheet_id, w), footer, 0);
    made.order.one_page = made.checks.one_page = true;
    return made;
}

}  // namespace shaftcut::workbook
