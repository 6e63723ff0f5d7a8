#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int last_column = 5;

// Whether every length is as it was when the order was written.
std::string changed_formula(const WorkOrder& order)
{
    std::string same;
    for (const InputLine& line : input_lines(order)) {
        const std::string issued = "issued_" + line.name;
        same += (same.empty() ? "" : ",") + (line.issued ? "IF(ISNUMBER(" + line.name + ")," + line.name + "=" + issued + ",FALSE)" : "ISBLANK(" + line.name + ")");
    }
    return "IF(AND(" + same + "),\"no\",\"yes\")";
}

std::string verdict_formula(const std::vector<std::string>& results)
{
    std::string failed = "OR(FALSE";
    for (const std::string& result : results) failed += "," + result + "=\"FAIL\"";
    return "IF(" + failed + "),\"refused\",IF(cut_is_known=\"no\",\"refused\",IF(AND(sawn_inner_tube=0,sawn_outer_tube=0,sawn_inner_guard=0,"
                            "sawn_outer_guard=0),\"fits\",\"cut\")))";
}

const char* verdict_words(Verdict verdict)
{
    switch (verdict) {
    case Verdict::cut: return "Cut as in block 3. Hold the halves side by side at the shortest position first.";
    case Verdict::fits: return "Fits as it is: nothing is cut.";
    case Verdict::refused: break;
    }
    return "DO NOT CUT. See the checks that say FAIL.";
}

// What is to be confirmed comes before the verdict's own words.
CellFormula verdict_sentence(const WorkOrder& order)
{
    static constexpr const char* before = ". See block 2 before anything is sawn.";
    const auto quoted_words = [](Verdict verdict) { return "\"" + std::string(verdict_words(verdict)) + "\""; };
    const std::string first = "IF(verdict=\"fits\",\"FITS AS IT IS\",\"CUT\")&\": CONFIRM \"&confirm_count&\" FIRST" + std::string(before) + "\"";
    return {"IF(verdict=\"refused\"," + quoted_words(Verdict::refused) + ",IF(confirm_count>0," + first + ",IF(verdict=\"fits\"," + quoted_words(Verdict::fits) + "," +
                quoted_words(Verdict::cut) + ")))",
            order.confirm.empty() ? verdict_words(order.verdict) : confirm_first(order) + before};
}

// The two rows at the top that say what it all comes to.
void add_verdict(SheetBuilder& sheet, Names& names, const WorkOrder& order)
{
    sheet.put(0, std::string("Verdict"), style::section());
    sheet.put(2, verdict_sentence(order), style::sentence(), 4);
    names.emplace_back("verdict", sheet.here(1));
    names.emplace_back("verdict_words", sheet.here(2));
    sheet.end_row(32);
    const std::string same = "The lengths are as issued.";
    const std::string changed = "LENGTHS CHANGED since issue: the cut sheet of this order no longer holds.";
    sheet.put(0, std::string("Lengths changed"), style::plain());
    CellStyle centre = style::plain();
    centre.align = CellStyle::Align::centre;
    sheet.put(1, CellFormula{changed_formula(order), std::string("no")}, centre);
    sheet.put(2, CellFormula{"IF(lengths_changed=\"yes\",\"" + changed + "\",\"" + same + "\")", same}, style::small(), 4);
    names.emplace_back("lengths_changed", sheet.here(1));
    sheet.end_row(26);
}

void add_texts(SheetBuilder& sheet, const char* heading, const std::vector<std::string>& texts)
{
    if (texts.empty()) return;
    sheet.empty_row();
    sheet.put(0, std::string(heading), style::section(), last_column + 1);
    sheet.end_row(18);
    for (const std::string& text : texts) {
        sheet.put(0, text, style::small(), last_column + 1);
        sheet.end_row();
    }
}

void add_signatures(SheetBuilder& sheet)
{
    sheet.empty_row();
    for (const char* label : {"Cut and measured by, date", "Checked on the machine by, date"}) {
        sheet.put(0, std::string(label), style::label());
        sheet.put(1, {}, style::written(), last_column);
        sheet.end_row(24);
    }
}

}  // namespace

OrderSheet order_sheet(const WorkOrder& order, const std::vector<Finding>& findings, const std::string& footer)
{
    OrderSheet made;
    const bool inches = order.units == Units::in;
    std::vector<double> widths{25, 16, 7.5, 7.5, 13, 31};
    if (inches) widths = {23, 27, 7.5, 8, 20, 22, 8.5, 8.5};
    SheetBuilder sheet("Order", widths);
    add_heading(sheet, order);
    sheet.empty_row();
    const int verdict_row = sheet.row();
    add_verdict(sheet, made.names, order);
    sheet.empty_row();
    add_inputs(sheet, made.names, order);
    sheet.empty_row();
    add_confirmations(sheet, made.names, order);
    sheet.empty_row();
    add_cut(sheet, made.names, order);
    sheet.start_page();
    add_lengths_after(sheet, made.names, order);
    sheet.empty_row();
    const auto results = add_checks(sheet, made.names, order, findings);
    CellStyle word = style::great();
    word.align = CellStyle::Align::centre;
    sheet.put_at(verdict_row, 1, CellFormula{verdict_formula(results), std::string(to_word(order.verdict))}, word);
    sheet.start_page();
    add_shaft_as_cut(sheet, made.names, order, results);
    add_texts(sheet, "Why it was refused, for the lengths as issued", order.reasons);
    add_texts(sheet, "What would serve instead, for the lengths as issued", order.ways_out);
    add_texts(sheet, "Notes, for the lengths as issued", order.notes);
    add_signatures(sheet);
    made.sheet = sheet.take("&L&9Work order " + order.order + "&R&9Order", footer, 1);
    return made;
}

}  // namespace shaftcut::workbook
